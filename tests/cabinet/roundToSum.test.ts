import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundToSum } from '../../src/cabinet/roundToSum.ts';

const free = (...heights: number[]) => ({ heights, given: heights.map(() => false) });

describe('roundToSum', () => {
  it('gives one mark more where most was lost, the lower row first among equals', () => {
    // 100 in three: 33 each and one mark of 0.5 twice, for the lower two (33.33 loses 0.33 in each).
    expect(roundToSum(free(100 / 3, 100 / 3, 100 / 3), 0.5)).toEqual([33, 33.5, 33.5]);
    expect(roundToSum(free(10.4, 10.1, 10.5), 1)).toEqual([10, 10, 11]);
  });

  it('never moves a height that is given, and gives the lowest of the others what lies beyond a mark', () => {
    expect(roundToSum({ heights: [76.3, 60.1, 60.1], given: [true, false, false] }, 0.5)).toEqual([
      76.3, 60, 60.2,
    ]);
    expect(roundToSum({ heights: [60.1, 60.1, 76.3], given: [false, false, true] }, 0.5)).toEqual([
      60, 60.2, 76.3,
    ]);
  });

  it('keeps the sum, moves nothing by more than a mark but the lowest, and rounds all others to marks', () => {
    const some = fc.array(
      fc.record({ height: fc.double({ min: 10, max: 400, noNaN: true }), given: fc.boolean() }),
      {
        minLength: 1,
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(some, fc.constantFrom(0.5, 25.4 / 16), (rows, mark) => {
        const heights = rows.map(({ height }) => height);
        const given = rows.map((row) => row.given);
        const found = roundToSum({ heights, given }, mark);
        const sum = (list: readonly number[]) => list.reduce((all, each) => all + each, 0);
        expect(sum(found)).toBeCloseTo(sum(heights), 8);
        const lowest = given.lastIndexOf(false);
        found.forEach((height, i) => {
          if (given[i] === true) expect(height).toBe(heights[i]);
          else {
            expect(Math.abs(height - (heights[i] ?? 0))).toBeLessThan(i === lowest ? 2 * mark : mark);
            if (i !== lowest) expect(Math.abs(height / mark - Math.round(height / mark))).toBeLessThan(1e-8);
          }
        });
      }),
    );
  });
});
