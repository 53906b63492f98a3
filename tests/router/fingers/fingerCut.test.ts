import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { checkBar, fingerCut } from '../../../src/router/fingers/fingerCut.ts';
import { fingerSetting } from '../../../src/router/fingers/fingerSetting.ts';
import { checkFingers, type Fingers, leastGuardedTail } from '../../../src/router/fingers/fingers.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { complaintsOf, told, value } from '../../value.ts';

/** Of slope 1:7: 2 L tan a is 4 where L is 14. */
const CUTTER = { diameter: 12.7, angle: (Math.atan(1 / 7) * 180) / Math.PI, length: 20 };
const FINGERS: Fingers = { together: 14, bush: 16 };

const lapped = (change: Partial<JointSpec> = {}): JointSpec =>
  ({
    kind: 'lapped',
    width: 100,
    tailBoard: 11,
    pinBoard: 20,
    lap: 6,
    pin: 10,
    halfPin: { lower: 6, upper: 9 },
    spacing: { kind: 'listed', tails: [25, 40] },
    ...change,
  }) as JointSpec;

const cut = (wish: JointSpec, fingers = FINGERS) =>
  fingerCut(value(layOutForCutter(wish, CUTTER, fingers)), CUTTER, fingers, 8, 11);

describe('the setting of the fingers', () => {
  it('has a pair over each tail, t + D - 2 L tan a - B wide, its edges (B - D) / 2 inside the base', () => {
    const { pairs, gaps } = cut(lapped({ width: 90 })).setting;
    // Bases from 8 to 29 and from 43 to 79; 1.65 inside them.
    expect(pairs.map(({ from, to }) => [from, to])).toEqual([
      [expect.closeTo(9.65, 9), expect.closeTo(27.35, 9)],
      [expect.closeTo(44.65, 9), expect.closeTo(77.35, 9)],
    ]);
    // 25 + 12.7 - 4 - 16 = 17.7, and 40 + 12.7 - 4 - 16 = 32.7.
    expect(pairs.map(({ spacer }) => spacer)).toEqual([expect.closeTo(3.7, 9), expect.closeTo(18.7, 9)]);
    // The bush, and what the pin is wider than the cutter's 8.7.
    expect(gaps).toEqual([expect.closeTo(16 + 1.3, 9)]);
  });

  it('needs no spacer where a pair is less than a twentieth of a mm wider than together', () => {
    const { tails } = value(layOutForCutter(lapped({ width: 90 }), CUTTER));
    const spacers = (together: number) =>
      fingerSetting({ tails }, CUTTER, { together, bush: 16 }).pairs.map(({ spacer }) => spacer);
    expect(spacers(17.7 - 0.04)[0]).toBe(0);
    expect(spacers(17.7 - 0.06)[0]).toBeCloseTo(0.06, 9);
  });

  it('guards no tail that is narrower than a pair pushed together', () => {
    // 14 + 16 - 12.7 + 4.
    expect(leastGuardedTail(FINGERS, CUTTER, 14)).toBeCloseTo(21.3, 9);
    const even = lapped({ width: 86, spacing: { kind: 'even', tails: 3 } });
    expect(complaintsOf(layOutForCutter(even, CUTTER, FINGERS))).toEqual([
      'tails: a tail is 17 mm wide; the pair of fingers that guards it would be 9.7 mm wide, and is 14 mm pushed together, so it must be 21.3 mm or more; use fewer and wider tails, or narrower fingers: 9.7 mm together; the nearest that works: 2 tails of 30.5 mm, pins of 10 mm, slope 1:7, lap 6 mm',
    ]);
    // Without a number, the usual 3 give way to 2.
    const open = lapped({ width: 86, spacing: { kind: 'even' } });
    expect(value(layOutForCutter(open, CUTTER)).tails).toHaveLength(2);
    const wide = lapped({ width: 127, spacing: { kind: 'even' } });
    expect(value(layOutForCutter(wide, CUTTER)).tails).toHaveLength(3);
    expect(value(layOutForCutter(wide, CUTTER, { ...FINGERS, together: 25 })).tails).toHaveLength(2);
  });

  it('has no more tails than pairs', () => {
    const wide = lapped({ width: 127, spacing: { kind: 'even' } });
    expect(value(layOutForCutter(wide, CUTTER, { ...FINGERS, pairs: 2 })).tails).toHaveLength(2);
    const asked = lapped({ width: 127, spacing: { kind: 'even', tails: 3 } });
    expect(complaintsOf(layOutForCutter(asked, CUTTER, { ...FINGERS, pairs: 2 }))).toEqual([
      'tails: 3 tails need as many pairs of fingers, and there are 2; use fewer tails; the nearest that works: 2 tails of 51 mm, pins of 10 mm, slope 1:7, lap 6 mm',
    ]);
  });

  it('is within the bar from the first outer edge to the last', () => {
    const { setting } = cut(lapped({ width: 90 }));
    // 77.35 - 9.65.
    expect(told(checkBar(setting, { ...FINGERS, bar: 67.7 }))).toEqual([]);
    expect(told(checkBar(setting, { ...FINGERS, bar: 67 }))).toEqual([
      "fingers.bar: from the first pair's outer edge to the last's there are 67.7 mm, more than the bar's 67 mm; try 67.7mm",
    ]);
  });
});

describe('the sockets of a lapped corner', () => {
  const ways = (wish: JointSpec, fingers: Fingers) => {
    const { pins } = cut(wish, fingers);
    return pins.kind === 'round' ? pins.way : undefined;
  };

  it('are under channels t + B - D wide, over the middle of each tail', () => {
    const { pins } = cut(lapped({ width: 90 }));
    if (pins.kind !== 'round') throw new Error('a lapped corner');
    // Tips from 6 to 31 and from 41 to 81.
    expect(pins.channels).toEqual([
      [expect.closeTo(6 - 1.65, 9), expect.closeTo(31 + 1.65, 9)],
      [expect.closeTo(41 - 1.65, 9), expect.closeTo(81 + 1.65, 9)],
    ]);
  });

  it('are cut with pairs over the pins where p + D - B is no less than together', () => {
    // 10 + 12.7 - 16 = 6.7.
    expect(ways(lapped({ width: 90 }), { ...FINGERS, together: 6.7 })).toBe('pairs');
    expect(ways(lapped({ width: 90 }), { ...FINGERS, together: 6.8 })).toBe('none');
    // A single tail has no whole pin beside it.
    const single = lapped({ width: 55, spacing: { kind: 'listed', tails: [40] } });
    expect(ways(single, FINGERS)).toBe('pairs');
  });

  it('are cut half a pitch along where every tail is as wide as a pin at its base', () => {
    // 20 + 4.
    const even = (tail: number) =>
      lapped({
        width: 15 + 2 * tail + 20,
        pin: 20,
        spacing: { kind: 'listed', tails: [tail, tail] },
      });
    expect(ways(even(24), FINGERS)).toBe('half pitch');
    expect(ways(even(24.05), FINGERS)).toBe('pairs');
    // 20 + 12.7 - 16 = 16.7.
    expect(ways(even(28), { together: 17, bush: 16 })).toBe('none');
  });

  it('are cut between the fingers of an end whose channel is 2 (B - D) + 2 L tan a wider than a pair', () => {
    const wish = lapped({ width: 90 });
    // 14 + 6.6 + 4.
    expect(ways(wish, { ...FINGERS, lapped: { channel: 24.6 } })).toBe('channel');
    expect(ways(wish, { ...FINGERS, lapped: { channel: 24.7 } })).toBe('none');
    // The fingers stay where they are, though pairs would have room over the pins.
    expect(ways(wish, { together: 6, bush: 16, lapped: { channel: 16.6 } })).toBe('channel');
  });
});

describe('the pins of a through corner', () => {
  const through = (fingers: Fingers) => {
    const { pins } = cut(
      {
        kind: 'through',
        width: 90,
        tailBoard: 11,
        pinBoard: 14,
        pin: 10,
        halfPin: { lower: 6, upper: 9 },
        spacing: { kind: 'listed', tails: [25, 40] },
      },
      fingers,
    );
    return pins.kind === 'straight' ? pins.beyond : 'round';
  };

  it('stand beyond the mark of tapered fingers by what the channel lacks there', () => {
    // Across a lean of 1:7 the bush's 3 mm are 3 √(50) / 7; with 16 - 12.7, that is the channel's excess. 2 / 7 for each mm.
    const excess = (3 * Math.sqrt(50)) / 7 + 3.3;
    expect(through({ ...FINGERS, through: { channel: 14 + excess } })).toBeCloseTo(0, 9);
    expect(through({ ...FINGERS, through: { channel: 14 + excess - 2 } })).toBeCloseTo(7, 9);
    expect(through({ ...FINGERS, through: { channel: 14 + excess + 1 } })).toBeCloseTo(-3.5, 9);
  });

  it('have no place on fingers that are not tapered', () => {
    expect(through(FINGERS)).toBeUndefined();
  });
});

describe('fingers that guide nothing', () => {
  it.each<[Partial<Fingers>, string]>([
    [
      { together: -3 },
      'fingers.together: a pair of fingers pushed together is -3 mm; it must be 1 mm to 200 mm; try 20mm',
    ],
    [
      { bush: 12 },
      'fingers.bush: the guide bush is 12 mm outside; the dovetail cutter of 12.7 mm must pass through it, so it must be 12.7 mm or more; try 16mm',
    ],
    [
      { pairs: 2.5 },
      'fingers.pairs: 2.5 is no number of pairs of fingers; it must be a whole number, 1 to 1000',
    ],
    [
      { bar: 10 },
      'fingers.bar: the bar is 10 mm long; one pair of fingers takes 14 mm of it, so it must be 14 mm or more; try 14mm',
    ],
    [
      { through: { channel: 26, taper: 14 } },
      "fingers.through.taper: fingers tapered by 14 degrees do not guide pins for a cutter of 8 degrees: it must be the cutter's angle; try 8, or remove `through`, and cut the pins along a guide board or by hand",
    ],
  ])('are refused by name: %j', (change, says) => {
    expect(told(checkFingers({ ...FINGERS, ...change }, { ...CUTTER, angle: 8 }))).toEqual([says]);
  });
});
