import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeightRule, rowHeights } from '../../src/cabinet/heightRule.ts';
import { complaintsOf, value } from '../value.ts';

const RAIL = 18;
const rows = (rule: HeightRule, count: number, total: number) =>
  value(rowHeights(rule, count, total, RAIL)).heights;
const rounded = (list: readonly number[]) => list.map((each) => Number(each.toFixed(6)));
const sum = (list: readonly number[]) => list.reduce((all, each) => all + each, 0);

describe('rowHeights', () => {
  it('steps an arithmetic progression by the rail where nothing else fixes it', () => {
    // 4 rows in 400 with steps of 18: 400 = 4 a + 6 x 18.
    expect(rows({ kind: 'arithmetic' }, 4, 400)).toEqual([73, 91, 109, 127]);
  });

  it('finds the step of an arithmetic progression from its first row', () => {
    // 688 = 5 x 76 + 10 d.
    expect(rounded(rows({ kind: 'arithmetic', by: { key: 'first', value: 76 } }, 5, 688))).toEqual([
      76, 106.8, 137.6, 168.4, 199.2,
    ]);
  });

  it('lets the last row of either progression be so many times the first', () => {
    // Arithmetic: a mean of 150 with ends in the ratio 2 is 100 and 200. Geometric: 1 + 2 + 4 = 7.
    expect(rounded(rows({ kind: 'arithmetic', by: { key: 'overall', value: 2 } }, 3, 450))).toEqual([
      100, 150, 200,
    ]);
    expect(rounded(rows({ kind: 'geometric', by: { key: 'overall', value: 4 } }, 3, 700))).toEqual([
      100, 200, 400,
    ]);
  });

  it('lowers rows downwards by a step less than 0', () => {
    expect(rows({ kind: 'arithmetic', by: { key: 'step', value: -10 } }, 3, 300)).toEqual([110, 100, 90]);
  });

  it('finds the ratio of a geometric progression from its first row, growing or shrinking', () => {
    expect(rounded(rows({ kind: 'geometric', by: { key: 'first', value: 100 } }, 3, 475))).toEqual([
      100, 150, 225,
    ]);
    expect(rounded(rows({ kind: 'geometric', by: { key: 'first', value: 225 } }, 3, 475))).toEqual([
      225, 150, 100,
    ]);
    expect(rounded(rows({ kind: 'geometric', by: { key: 'first', value: 100 } }, 3, 300))).toEqual([
      100, 100, 100,
    ]);
  });

  it('sums any progression to its total, by the closed formulas', () => {
    const some = fc.record({
      count: fc.integer({ min: 2, max: 12 }),
      total: fc.double({ min: 300, max: 3000, noNaN: true }),
      ratio: fc.double({ min: 0.5, max: 2, noNaN: true }),
      kind: fc.constantFrom('arithmetic', 'geometric'),
    });
    fc.assert(
      fc.property(some, ({ count, total, ratio, kind }) => {
        const found = rows({ kind, by: { key: 'overall', value: ratio } } as HeightRule, count, total);
        const [first = 0, last = 0] = [found[0], found.at(-1)];
        expect(last / first).toBeCloseTo(ratio, 9);
        const q = ratio ** (1 / (count - 1));
        // n (a + l) / 2, and a (q^n - 1)/(q - 1), from any textbook of algebra.
        const closed =
          kind === 'arithmetic'
            ? (count * (first + last)) / 2
            : Math.abs(q - 1) < 1e-6
              ? count * first
              : (first * (q ** count - 1)) / (q - 1);
        expect(sum(found) / total).toBeCloseTo(1, 9);
        expect(closed / total).toBeCloseTo(1, 4);
      }),
    );
  });

  it('shares what is left among the rows of a list that are not given', () => {
    const found = value(
      rowHeights({ kind: 'listed', heights: [76, undefined, 150, undefined] }, 4, 500, RAIL),
    );
    expect(found.heights).toEqual([76, 137, 150, 137]);
    expect(found.given).toEqual([true, false, true, false]);
  });

  it.each<[string, HeightRule, string]>([
    [
      'too few heights',
      { kind: 'listed', heights: [100, 100] },
      ': 2 heights are listed for 3 rows; list one for each row, from the top',
    ],
    [
      'heights that leave room',
      { kind: 'listed', heights: [100, 100, 90] },
      ': the rows take 290 mm of the 300 mm between the rails; 10 mm is left over; change one of them, or write auto for those that are to share what is left',
    ],
    [
      'heights that are too much',
      { kind: 'listed', heights: [100, 100, 110] },
      ': the rows take 310 mm, and between the rails there is 300 mm; that is 10 mm too much; change one of them, or write auto for those that are to share what is left',
    ],
    [
      'a step that leaves a row nothing',
      { kind: 'arithmetic', by: { key: 'step', value: 100 } },
      'step: row 1 from the top would be 0 mm high; every row must have some height',
    ],
    [
      'a first row that leaves the others nothing',
      { kind: 'geometric', by: { key: 'first', value: 300 } },
      'first: the first row takes 300 mm, and all rows together have 300 mm; nothing is left for the others',
    ],
  ])('refuses %s', (_, rule, says) => {
    expect(complaintsOf(rowHeights(rule, 3, 300, RAIL))).toEqual([says]);
  });
});
