import type { Range } from '../../units/range.ts';
import { type CountRange, halfPinsFor, SAME_CHANGE } from './countRanges.ts';

/** How often an interval is halved: until it is as short as floats can tell. */
const HALVINGS = 60;

/** The width within a range at which the sum of changes is least, and that sum: as a sum of convex functions it is convex. */
const bottomOf = (counts: readonly CountRange[], { least, most }: Range) => {
  const growth = (tip: number): number =>
    counts.reduce((sum, count) => sum + halfPinsFor(count, tip).growth, 0);
  let [low, high] = [least, most];
  if (growth(low) >= 0) high = low;
  else if (growth(high) <= 0) low = high;
  for (let i = 0; i < HALVINGS && low < high; i++) {
    const middle = (low + high) / 2;
    if (growth(middle) < 0) low = middle;
    else high = middle;
  }
  const tip = (low + high) / 2;
  return { tip, change: counts.reduce((sum, count) => sum + halfPinsFor(count, tip).change, 0) };
};

/**
 * One tail width for all drawers, within a range, and each drawer's count, with the least sum of changes of half pins; undefined where
 * none is below a bound. All counts are tried that could be best, drawer by drawer.
 * @param drawers for each drawer the counts that have every width of the range
 */
export const leastChange = (
  drawers: readonly (readonly CountRange[])[],
  range: Range,
  bound: number,
): { readonly tip: number; readonly tails: readonly number[] } | undefined => {
  const ranked = drawers.map((counts) =>
    counts
      .map((count) => ({ count, least: bottomOf([count], range).change }))
      .sort((a, b) => a.least - b.least || a.count.tails - b.count.tails),
  );
  /** What the drawers from each on add at least. */
  const rest = new Array<number>(ranked.length + 1).fill(0);
  for (let i = ranked.length - 1; i >= 0; i--)
    rest[i] = (rest[i + 1] ?? 0) + (ranked[i]?.[0]?.least ?? Number.POSITIVE_INFINITY);
  let best:
    | { readonly tip: number; readonly change: number; readonly counts: readonly CountRange[] }
    | undefined;
  const extend = (chosen: readonly CountRange[], sofar: number): void => {
    const limit = best?.change ?? bound;
    if (!(sofar + (rest[chosen.length] ?? 0) <= limit + SAME_CHANGE)) return;
    if (chosen.length === ranked.length) {
      const bottom = bottomOf(chosen, range);
      const gain = limit - bottom.change;
      if (gain > SAME_CHANGE || (gain > -SAME_CHANGE && fewer(chosen, best?.counts)))
        best = { ...bottom, counts: chosen };
      return;
    }
    for (const { count, least } of ranked[chosen.length] ?? []) extend([...chosen, count], sofar + least);
  };
  extend([], 0);
  return best && { tip: best.tip, tails: best.counts.map(({ tails }) => tails) };
};

/** Whether of two equally good choices of counts one has fewer tails in the first drawer that differs. */
const fewer = (chosen: readonly CountRange[], than: readonly CountRange[] | undefined): boolean => {
  if (than === undefined) return true;
  const i = chosen.findIndex(({ tails }, at) => tails !== than[at]?.tails);
  return i >= 0 && (chosen[i]?.tails ?? 0) < (than[i]?.tails ?? 0);
};
