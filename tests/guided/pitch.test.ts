import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atPitch } from '../../src/guided/pitch.ts';
import type { Joint } from '../../src/joint/joint.ts';
import { layOut } from '../../src/joint/layOut.ts';
import type { JointSpec } from '../../src/joint/spec.ts';

const laid = (wish: JointSpec, pitch: number): Joint => {
  const spec = atPitch(wish, pitch);
  if (!spec.ok) throw new Error(JSON.stringify(spec.complaints));
  const joint = layOut(spec.value);
  if (!joint.ok) throw new Error(JSON.stringify(joint.complaints));
  return joint.value;
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
