import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commonPin, familyTarget, nearestChoice } from '../../src/drawer/familyTarget.ts';

/** Every way to give each drawer one of its tips. */
const assignments = (tips: readonly (readonly number[])[]): number[][] =>
  tips.reduce<number[][]>(
    (ways, choices) => ways.flatMap((way) => choices.map((tip) => [...way, tip])),
    [[]],
  );

const cost = (target: number, way: readonly number[]) =>
  way.reduce((sum, tip) => sum + Math.log(tip / target) ** 2, 0);

const costOfSet = (target: number, tips: readonly (readonly number[])[]) =>
  tips.reduce((sum, choices) => sum + Math.min(...choices.map((tip) => Math.log(tip / target) ** 2)), 0);

/** The best target of one way, by itself: the tips' geometric mean, or the end of the range that is nearest to it. */
const bestTarget = (way: readonly number[], pin: number) => {
  const mean = Math.exp(way.reduce((sum, tip) => sum + Math.log(tip), 0) / way.length);
  return Math.min(4 * pin, Math.max(2 * pin, mean));
};

describe('the family rule', () => {
  it('is the geometric mean of the tips where no drawer has a choice', () => {
    expect(familyTarget([[10], [20]], 5)).toBeCloseTo(Math.sqrt(200), 12);
    expect(familyTarget([[12], [15], [18]], 5)).toBeCloseTo((12 * 15 * 18) ** (1 / 3), 12);
  });

  it('is two to four pins', () => {
    expect(familyTarget([[50]], 5)).toBeCloseTo(20, 12);
    expect(familyTarget([[5]], 5)).toBeCloseTo(10, 12);
  });

  it('is, of equally good targets, the one nearest to three pins in ratio', () => {
    expect(familyTarget([[12, 16]], 5)).toBeCloseTo(16, 12);
    expect(familyTarget([[12, 19]], 5)).toBeCloseTo(12, 12);
    expect(
      familyTarget(
        [
          [11, 13, 18],
          [18, 13],
        ],
        5,
      ),
    ).toBeCloseTo(13, 12);
  });

  it('is, of two as near to three pins in ratio, the narrower', () => {
    // 12.5 and 18 are 1.2 times 15 either way.
    expect(familyTarget([[12.5, 18]], 5)).toBeCloseTo(12.5, 12);
    expect(familyTarget([[18, 12.5]], 5)).toBeCloseTo(12.5, 12);
  });

  it('does not depend on the order of the drawers or of their choices', () => {
    const tip = fc.double({ min: 5, max: 30, noNaN: true });
    const sets = fc.array(fc.array(tip, { minLength: 1, maxLength: 4 }), { minLength: 2, maxLength: 8 });
    const orders = sets.chain((tips) =>
      fc.tuple(fc.constant(tips), fc.shuffledSubarray(tips, { minLength: tips.length })),
    );
    fc.assert(
      fc.property(orders, ([tips, other]) => {
        expect(familyTarget(other, 5)).toBe(familyTarget(tips, 5));
        expect(
          familyTarget(
            tips.map((choices) => [...choices].reverse()),
            5,
          ),
        ).toBe(familyTarget(tips, 5));
      }),
      { numRuns: 1000 },
    );
    // Two targets as good and as near to three pins: 12.5 and 18.
    expect(
      familyTarget(
        [
          [12.5, 18],
          [18, 12.5],
          [12.5, 18],
        ],
        5,
      ),
    ).toBeCloseTo(12.5, 12);
  });

  it('aims at three pins where no drawer has to choose', () => {
    expect(familyTarget([], 5)).toBe(15);
  });

  it('finds what an exhaustive search finds, for thousands of sets', () => {
    const sets = fc.record({
      pin: fc.double({ min: 2, max: 12, noNaN: true }),
      // Tips as the pins and the boards' widths give them: (W - h - (k - 1) p) / k, with some counts ruled out.
      drawers: fc.array(
        fc.record({
          width: fc.double({ min: 6, max: 40, noNaN: true }),
          kept: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
        }),
        { minLength: 1, maxLength: 5 },
      ),
    });
    fc.assert(
      fc.property(sets, ({ pin, drawers }) => {
        const tips = drawers.map(({ width, kept }) => {
          const all = kept.map((_, i) => (width * pin - (i + 2) * pin) / (i + 1)).filter((tip) => tip > 0);
          const some = all.filter((_, i) => kept[i]);
          return some.length > 0 ? some : all;
        });
        const found = familyTarget(tips, pin);
        expect(found).toBeGreaterThanOrEqual(2 * pin * (1 - 1e-12));
        expect(found).toBeLessThanOrEqual(4 * pin * (1 + 1e-12));
        const least = assignments(tips).reduce(
          (best, way) => Math.min(best, cost(bestTarget(way, pin), way)),
          Number.POSITIVE_INFINITY,
        );
        expect(costOfSet(found, tips)).toBeCloseTo(least, 10);
      }),
      { numRuns: 3000 },
    );
  });

  it('finds no better target anywhere on a fine grid, for a large set', () => {
    const tips = Array.from({ length: 500 }, (_, i) => {
      const width = 60 + ((i * 37) % 190) + i / 500;
      return Array.from({ length: 9 }, (_, k) => (width - 12 - 5 * k) / (k + 1)).filter((tip) => tip > 6);
    });
    const found = costOfSet(familyTarget(tips, 5), tips);
    for (let target = 10; target <= 20; target += 0.01)
      expect(found).toBeLessThanOrEqual(costOfSet(target, tips) + 1e-9);
  });
});

describe('a drawer in its family', () => {
  const choices = [
    { tails: 1, tip: 30 },
    { tails: 2, tip: 20 },
    { tails: 3, tip: 10 },
  ];

  it('is the count whose tip is nearest to the target in ratio', () => {
    expect(nearestChoice(choices, 14)?.tails).toBe(3);
    expect(nearestChoice(choices, 14.2)?.tails).toBe(2);
    expect(nearestChoice(choices, 100)?.tails).toBe(1);
    expect(nearestChoice([], 14)).toBeUndefined();
  });

  it('is the fewer tails where two are as near', () => {
    expect(
      nearestChoice(
        [
          { tails: 2, tip: 40 },
          { tails: 3, tip: 10 },
        ],
        20,
      )?.tails,
    ).toBe(2);
  });
});

describe("the set's pin", () => {
  it('is the one that most drawers have, or the narrowest of those as frequent', () => {
    expect(commonPin([5, 6, 6])).toBe(6);
    expect(commonPin([5, 6, 6, 5])).toBe(5);
    expect(commonPin([6, 5, 5, 6])).toBe(5);
    // Three times 0.1 and 0.3 are the same pin.
    expect(commonPin([2, 2, 10 * 0.3, 10 * (0.1 + 0.2), 3])).toBeCloseTo(3, 12);
    expect(commonPin([])).toBeUndefined();
  });
});
