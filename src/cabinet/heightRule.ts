import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { mm, say } from '../units/phrase.ts';

/** What decides how high the rows of a cabinet are; lengths in mm. */
export type HeightRule =
  | { readonly kind: 'equal' }
  /** Row by row; those that are not given share alike what is left. */
  | { readonly kind: 'listed'; readonly heights: readonly (number | undefined)[] }
  /** With the rail's thickness as its step unless something else fixes it (common practice). */
  | { readonly kind: 'arithmetic'; readonly by?: FixedBy<'first' | 'step' | 'overall'> }
  | { readonly kind: 'geometric'; readonly by: FixedBy<'first' | 'ratio' | 'overall'> };

/**
 * The one number that, with the height to be filled, fixes a progression: its first row, the step down from row to row, the
 * ratio of each row to the one above, or of the last to the first.
 */
export interface FixedBy<Key extends 'first' | 'step' | 'ratio' | 'overall'> {
  readonly key: Key;
  readonly value: number;
}

/** Heights of rows from the top, before they are rounded, and which of them may not be moved. In mm. */
export interface RowHeights {
  readonly heights: readonly number[];
  readonly given: readonly boolean[];
}

/**
 * Heights that share `total` mm among `count` rows by a rule.
 *
 * An arithmetic progression of n rows with first row a and step d sums to n a + d n (n - 1)/2; a geometric one with ratio q
 * to a (q^n - 1)/(q - 1), or n a where q is 1 (closed formulas).
 * @param rail thickness of the rail between two rows, in mm
 * @returns complaints with places in the rule: a list that does not fit, a row that would have no height
 */
export const rowHeights = (
  rule: HeightRule,
  count: number,
  total: number,
  rail: number,
): Result<RowHeights> => {
  switch (rule.kind) {
    case 'listed':
      return listed(rule.heights, count, total);
    case 'equal':
      return accept({
        heights: Array<number>(count).fill(total / count),
        given: Array<boolean>(count).fill(false),
      });
    case 'arithmetic':
      return progression(arithmetic, rule.by ?? { key: 'step', value: rail }, count, total);
    case 'geometric':
      return progression(geometric, rule.by, count, total);
  }
};

/** The first row of a progression, and how each row follows from the first. */
interface Series {
  readonly first: number;
  row(first: number, index: number): number;
}

const arithmetic = (
  { key, value }: FixedBy<'first' | 'step' | 'overall'>,
  count: number,
  total: number,
): Series => {
  const between = (count * (count - 1)) / 2;
  const by = (first: number, step: number): Series => ({ first, row: (from, i) => from + i * step });
  if (key === 'first') return by(value, (total - count * value) / between);
  if (key === 'step') return by((total - value * between) / count, value);
  const first = (2 * total) / (count * (1 + value));
  return by(first, (first * (value - 1)) / (count - 1));
};

const geometric = (
  { key, value }: FixedBy<'first' | 'ratio' | 'overall'>,
  count: number,
  total: number,
): Series => {
  const by = (first: number, ratio: number): Series => ({ first, row: (from, i) => from * ratio ** i });
  if (key === 'first') return by(value, ratioOf(total / value, count));
  const ratio = key === 'ratio' ? value : value ** (1 / (count - 1));
  return by(total / sumOfPowers(ratio, count), ratio);
};

const progression = <By extends FixedBy<'first' | 'step' | 'ratio' | 'overall'>>(
  series: (by: By, count: number, total: number) => Series,
  by: By,
  count: number,
  total: number,
): Result<RowHeights> => {
  const first = by.key === 'first';
  if (count === 1) return first ? onlyRow(by.value, total) : accept({ heights: [total], given: [false] });
  if (first && by.value >= total - EPSILON) return refuse(tooHigh(by.value, total));
  const { first: top, row } = series(by, count, total);
  const heights = Array.from({ length: count }, (_, i) => row(top, i));
  const none = heights.findIndex((height) => !(height > EPSILON));
  return none < 0
    ? accept({ heights, given: heights.map((_, i) => first && i === 0) })
    : refuse({
        at: [by.key],
        says: say`row ${none + 1} from the top would be ${mm(heights[none] ?? 0)} high; every row must have some height`,
      });
};

const onlyRow = (first: number, total: number): Result<RowHeights> =>
  Math.abs(first - total) < EPSILON
    ? accept({ heights: [first], given: [true] })
    : refuse({
        at: ['first'],
        says: say`the only row would be ${mm(first)} high, and the cabinet has room for ${mm(total)}`,
        hint: say`${mm(total)}`,
      });

const tooHigh = (first: number, total: number): Complaint => ({
  at: ['first'],
  says: say`the first row takes ${mm(first)}, and all rows together have ${mm(total)}; nothing is left for the others`,
});

/** 1 + q + ... + q^(n - 1). */
export const sumOfPowers = (ratio: number, count: number): number =>
  Array.from({ length: count }, (_, i) => ratio ** i).reduce((sum, power) => sum + power, 0);

/** The ratio whose first n powers, from 0, sum to `sum`, more than 1; found by halving, as the sum grows with the ratio. */
const ratioOf = (sum: number, count: number): number => {
  let [low, high] = [0, Math.max(1, sum)];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (sumOfPowers(middle, count) < sum) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const listed = (list: readonly (number | undefined)[], count: number, total: number): Result<RowHeights> => {
  if (list.length !== count)
    return refuse({
      at: [],
      says: say`${list.length} ${list.length === 1 ? 'height is' : 'heights are'} listed for ${count} ${count === 1 ? 'row' : 'rows'}`,
      remedy: say`list one for each row, from the top`,
    });
  const sum = list.reduce<number>((all, height) => all + (height ?? 0), 0);
  const free = list.filter((height) => height === undefined).length;
  const left = total - sum;
  if (free === 0 ? Math.abs(left) > EPSILON : left <= EPSILON)
    return refuse({
      at: [],
      says:
        free > 0
          ? say`the rows that are given take ${mm(sum)} of the ${mm(total)} between the rails, and nothing is left for the others`
          : left > 0
            ? say`the rows take ${mm(sum)} of the ${mm(total)} between the rails; ${mm(left)} is left over`
            : say`the rows take ${mm(sum)}, and between the rails there is ${mm(total)}; that is ${mm(-left)} too much`,
      remedy:
        free > 0
          ? say`give them less`
          : say`change one of them, or write auto for those that are to share what is left`,
    });
  return accept({
    heights: list.map((height) => height ?? left / free),
    given: list.map((height) => height !== undefined),
  });
};
