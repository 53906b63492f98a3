import { type HeightRule, sumOfPowers } from './heightRule.ts';

/**
 * The progression of the same kind, fixed by the same key, whose first `upper` of `count` rows together are `height` mm
 * high; undefined of a rule that is no progression. Arithmetic with first row a and step d: m a + d m (m - 1)/2 for m rows;
 * geometric with ratio q: (q^m - 1)/(q^n - 1) of the whole (closed formulas).
 * @param total all rows together, in mm
 */
export const ruleThrough = (
  rule: HeightRule,
  { upper, height, count, total }: { upper: number; height: number; count: number; total: number },
): { readonly key: 'first' | 'step' | 'ratio' | 'overall'; readonly value: number } | undefined => {
  if (rule.kind === 'arithmetic') {
    const between = (rows: number): number => (rows * (rows - 1)) / 2;
    const step = (total * upper - height * count) / (between(count) * upper - between(upper) * count);
    const first = (total - step * between(count)) / count;
    const { key } = rule.by ?? { key: 'step' };
    return {
      key,
      value: { first, step, overall: (first + (count - 1) * step) / first }[key],
    };
  }
  if (rule.kind !== 'geometric') return undefined;
  const ratio = ratioThrough(height / total, upper, count);
  const { key } = rule.by;
  return {
    key,
    value: { first: total / sumOfPowers(ratio, count), ratio, overall: ratio ** (count - 1) }[key],
  };
};

/** The ratio at which the upper rows take a share of all; found by halving, as the share shrinks with the ratio. */
const ratioThrough = (share: number, upper: number, count: number): number => {
  let [low, high] = [0, 100];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (sumOfPowers(middle, upper) / sumOfPowers(middle, count) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
