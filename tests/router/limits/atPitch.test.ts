import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/joint/joint.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { layOut } from '../../../src/joint/layOut.ts';
import { atPitch } from '../../../src/router/limits/atPitch.ts';
import { speak } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';

const laid = (wish: JointSpec, pitch: number): Joint => {
  const spec = value(atPitch(wish, pitch));
  return value(layOut(spec));
};

const complaintsOf = (pitch: number): string[] => {
  const result = atPitch(SIDE, pitch);
  return result.ok ? [] : result.complaints.map(({ says }) => speak(says, 'mm'));
};

const SIDE: JointSpec = {
  kind: 'through',
  width: 150,
  tailBoard: 8,
  pinBoard: 8,
  pin: 5,
  spacing: { kind: 'even' },
};

describe('atPitch', () => {
  it('sets tails and pins at the pitch and leaves both half pins alike', () => {
    const { tails, pins } = laid(SIDE, 25.4);
    tails.slice(1).forEach(({ tip }, i) => {
      expect(tip[0] - (tails[i]?.tip[0] ?? 0)).toBeCloseTo(25.4, 9);
    });
    // Six tails leave (150 - 6 x 25.4 + 5) / 2 = 1.3 mm at either edge, five 14: 1.3 is nearer to a pin of 5.
    expect(tails.length).toBe(6);
    expect(pins.at(0)?.narrow[1]).toBeCloseTo(1.3, 9);
    expect((pins.at(-1)?.narrow[1] ?? 0) - (pins.at(-1)?.narrow[0] ?? 0)).toBeCloseTo(1.3, 9);
  });

  it('refuses a pitch that leaves no tail, or that the board is too narrow for', () => {
    for (const pitch of [5, 9, 160, Number.NaN, -3]) {
      const result = atPitch(SIDE, pitch);
      expect(result.ok ? [] : result.complaints.map(({ at }) => at)).toEqual([['pitch']]);
    }
  });

  it('accepts every pitch from the least tail to one pin and two half pins of 1 mm, and no other', () => {
    // The widest: 150 - 2 x 1 + 5 = 153. The least tail is 3 at its base, and 8 / 8 wider on either side.
    expect(laid(SIDE, 153).tails).toHaveLength(1);
    expect(laid(SIDE, 10).tails.length).toBeGreaterThan(12);
    for (const pitch of [9.99, 153.01]) {
      const [complaint] = complaintsOf(pitch);
      expect(complaint).toContain('it must be 10 mm to 153 mm here');
    }
  });

  it('chooses the count whose half pins are nearest to a pin', () => {
    // (150 - 5) / 28 = 5.18: five tails leave half pins of (150 - 140 + 5) / 2 = 7.5.
    const { tails, pins } = laid(SIDE, 28);
    expect(tails).toHaveLength(5);
    expect(pins[0]?.narrow[1]).toBeCloseTo(7.5, 9);
    // (150 - 5) / 26 = 5.58 is nearest to six, which leave -0.5: five it is.
    expect(laid(SIDE, 26).tails).toHaveLength(5);
    // Six leave half pins of 1 exactly: (150 - 6 x 25.5 + 5) / 2.
    expect(laid(SIDE, 25.5).tails).toHaveLength(6);
    // Eleven would leave 1.05, ten leave 8: nearer to 5.
    expect(laid(SIDE, 13.9).tails).toHaveLength(10);
  });

  it('lays out whatever it accepts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 500, noNaN: true }),
        fc.double({ min: 8, max: 60, noNaN: true }),
        (width, pitch) => {
          const wish = { ...SIDE, width };
          if (atPitch(wish, pitch).ok) expect(laid(wish, pitch).width).toBe(width);
        },
      ),
    );
  });
});
