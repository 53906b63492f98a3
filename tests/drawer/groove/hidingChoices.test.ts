import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Groove } from '../../../src/drawer/drawerSpec.ts';
import { grooveMargins, grooveMiss, hidingChoices } from '../../../src/drawer/groove/hidingChoices.ts';
import { withDefaults } from '../../../src/joint/defaults.ts';
import type { JointSpec, Spacing } from '../../../src/joint/jointSpec.ts';
import { layOut } from '../../../src/joint/layOut.ts';
import { value } from '../../value.ts';

const side = (change: Partial<JointSpec> = {}): JointSpec =>
  ({
    kind: 'lapped',
    width: 75,
    tailBoard: 11,
    pinBoard: 20,
    lap: 6,
    slope: { run: 7 },
    pin: 5,
    halfPin: { lower: 6, upper: 6 },
    spacing: { kind: 'even' },
    ...change,
  }) as JointSpec;
const even: Spacing = { kind: 'even' };
const groove: Groove = { offset: 11, width: 5, depth: 5 };

/** Whether a joint that can be cut shows 1 mm of its lowest tail's base on either side of the groove. */
const hides = (spec: JointSpec, { offset, width }: Groove): boolean => {
  const joint = layOut(spec);
  const base = joint.ok ? joint.value.tails[0]?.base : undefined;
  return base !== undefined && base[0] + 1 <= offset + 1e-9 && base[1] - 1 >= offset + width - 1e-9;
};

describe('the groove rule', () => {
  // The slope takes 14 / 7 = 2 mm off either side of a tail; the lower half pin may be at most 11 - 1 - 2 = 8.
  it('keeps the wished half pin where the lowest tail hides the groove with it', () => {
    const found = hidingChoices(withDefaults(side()), even, groove);
    expect(found[1]).toEqual({ tails: 2, tip: (75 - 12 - 5) / 2, lowerHalfPin: 6 });
    expect(found[2]).toEqual({ tails: 3, tip: (75 - 12 - 10) / 3, lowerHalfPin: 6 });
  });

  it('moves the lower half pin no further than it must', () => {
    // 4 tails: 17 + 2 <= h + (75 - h - 6 - 15) / 4, so h >= 22 / 3, and the tips are (54 - 22 / 3) / 4.
    const four = hidingChoices(withDefaults(side()), even, groove)[3];
    expect(four?.lowerHalfPin).toBeCloseTo(22 / 3, 12);
    expect(four?.tip).toBeCloseTo((54 - 22 / 3) / 4, 12);
    // A wish of 9 is too wide for a groove that starts at 11.
    const wide = hidingChoices(withDefaults(side({ halfPin: { lower: 9, upper: 6 } })), even, groove);
    expect(wide.map(({ lowerHalfPin }) => lowerHalfPin).slice(0, 2)).toEqual([8, 8]);
  });

  it('leaves out the counts that cannot hide it', () => {
    expect(hidingChoices(withDefaults(side()), even, groove).map(({ tails }) => tails)).toEqual([1, 2, 3, 4]);
    expect(hidingChoices(withDefaults(side()), even, { ...groove, offset: 3.9 })).toEqual([]);
    expect(hidingChoices(withDefaults(side()), even, { ...groove, offset: 4 })[0]?.lowerHalfPin).toBeCloseTo(
      1,
      12,
    );
  });

  it('says by how much a groove lies too low or reaches too high', () => {
    const miss = (spec: JointSpec, where: Groove) => grooveMiss(withDefaults(spec), where);
    expect(miss(side(), { ...groove, offset: 3 })).toEqual({ low: 1, high: 0 });
    // One tail's base ends at 75 - 6 - 2 = 67, and the band needs 70 + 5 + 1.
    expect(miss(side(), { ...groove, offset: 70 })).toEqual({ low: 0, high: 9 });
    // Listed: the lowest base runs from 8 to 24.
    const listed = side({ spacing: { kind: 'listed', tails: [20, 38] } });
    expect(miss(listed, { ...groove, offset: 7 })).toEqual({ low: 2, high: 0 });
    expect(miss(listed, { ...groove, offset: 20 })).toEqual({ low: 0, high: 2 });
    expect(Math.min(...grooveMargins(withDefaults(listed), { ...groove, offset: 9 }))).toBe(0);
  });

  it('agrees with trying every half pin, for any spacing', () => {
    const spacings: fc.Arbitrary<Exclude<Spacing, { kind: 'listed' }>> = fc.oneof(
      fc.constant({ kind: 'even' } as const),
      fc.record({
        kind: fc.constant('graded' as const),
        ratio: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
        from: fc.constantFrom('edge' as const, 'middle' as const),
      }),
    );
    const wishes = fc.record({
      spacing: spacings,
      width: fc.double({ min: 30, max: 120, noNaN: true }),
      run: fc.double({ min: 4, max: 12, noNaN: true }),
      pin: fc.double({ min: 2, max: 8, noNaN: true }),
      lower: fc.double({ min: 1, max: 14, noNaN: true }),
      offset: fc.double({ min: 2, max: 20, noNaN: true }),
      grooveWidth: fc.double({ min: 3, max: 8, noNaN: true }),
    });
    const step = 0.25;
    fc.assert(
      fc.property(wishes, ({ spacing, width, run, pin, lower, offset, grooveWidth }) => {
        const where = { offset, width: grooveWidth, depth: 5 };
        const wish = side({ width, slope: { run }, pin, halfPin: { lower, upper: pin }, spacing });
        const found = hidingChoices(withDefaults(wish), spacing, where);
        const tried = (tails: number, h: number) =>
          side({ ...wish, halfPin: { lower: h, upper: pin }, spacing: { ...spacing, tails } } as JointSpec);
        for (const { tails, tip, lowerHalfPin } of found) {
          const spec = tried(tails, lowerHalfPin);
          expect(hides(spec, where)).toBe(true);
          const joint = value(layOut(spec));
          const sum = joint.tails.reduce((all, tail) => all + tail.tip[1] - tail.tip[0], 0);
          expect(sum / tails).toBeCloseTo(tip, 9);
        }
        for (let tails = 1; tails <= 12; tails++) {
          const nearest = found.find((choice) => choice.tails === tails);
          for (let h = 1; h < offset; h += step)
            if (hides(tried(tails, h), where)) {
              expect(nearest, `${tails} tails with a half pin of ${h}`).toBeDefined();
              expect(Math.abs((nearest?.lowerHalfPin ?? 0) - lower)).toBeLessThanOrEqual(
                Math.abs(h - lower) + 1e-9,
              );
            }
        }
      }),
      { numRuns: 300 },
    );
  });
});
