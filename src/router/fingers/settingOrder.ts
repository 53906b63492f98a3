import { EPSILON } from '../../units/epsilon.ts';
import type { FingerPair } from './fingerSetting.ts';

/** Where the pairs of one setting lie on the bar, in mm from the stop that the reference edge is against. */
export type PairsOnBar = readonly Pick<FingerPair, 'from' | 'to'>[];

/** What it takes to make one setting into another. */
export interface FingersMoved {
  /** How many fingers; a pair more or fewer is two. */
  readonly fingers: number;
  /** How far those on the bar before and after, in all, in mm. */
  readonly distance: number;
}

/** The pairs are counted from the stop. */
export const fingersMoved = (before: PairsOnBar, after: PairsOnBar): FingersMoved => {
  const moves = before
    .slice(0, after.length)
    .flatMap(({ from, to }, i) => [
      Math.abs((after[i]?.from ?? from) - from),
      Math.abs((after[i]?.to ?? to) - to),
    ])
    .filter((move) => move > EPSILON);
  return {
    fingers: moves.length + 2 * Math.abs(before.length - after.length),
    distance: moves.reduce((sum, move) => sum + move, 0),
  };
};

/** The most settings whose every order is weighed; of more, each next one is the nearest. */
const MOST_WEIGHED = 12;

/** More than all fingers of a bar are ever moved, in mm: one finger fewer is worth any distance. */
const ANY_DISTANCE = 1e8;

/**
 * The order of settings that moves the fewest fingers, and of such orders the one that moves them the least, as places in
 * the list. Each subset's best order to each last setting follows from smaller subsets (Held and Karp, 1962).
 * @param start what is set on the bar before; no pair unless given
 */
export const settingOrder = (settings: readonly PairsOnBar[], start: PairsOnBar = []): number[] => {
  const cost = (before: PairsOnBar, after: PairsOnBar): number => {
    const { fingers, distance } = fingersMoved(before, after);
    return fingers * ANY_DISTANCE + distance;
  };
  const costs = settings.map((before) => settings.map((after) => cost(before, after)));
  const first = settings.map((setting) => cost(start, setting));
  return settings.length > MOST_WEIGHED ? nearestNext(costs, first) : leastPath(costs, first);
};

const leastPath = (costs: readonly (readonly number[])[], first: readonly number[]): number[] => {
  const n = costs.length;
  if (n === 0) return [];
  const all = 2 ** n - 1;
  const sums = first.map(() => new Float64Array(all + 1).fill(Number.POSITIVE_INFINITY));
  const sumOf = (last: number, set: number): number => sums[last]?.[set] ?? Number.POSITIVE_INFINITY;
  const places = costs.map((_, i) => i);
  /** The setting before the last of a set. */
  const before = (last: number, set: number): number => {
    const rest = set & ~(1 << last);
    return least(
      places.filter((i) => rest & (1 << i)),
      (i) => sumOf(i, rest) + (costs[i]?.[last] ?? 0),
    );
  };
  for (let set = 1; set <= all; set++)
    for (const last of places.filter((i) => set & (1 << i))) {
      const rest = set & ~(1 << last);
      const from = rest === 0 ? undefined : before(last, set);
      const sum = sums[last];
      if (sum)
        sum[set] = from === undefined ? (first[last] ?? 0) : sumOf(from, rest) + (costs[from]?.[last] ?? 0);
    }
  const order: number[] = [];
  for (let [set, last] = [all, least(places, (i) => sumOf(i, all))]; ; ) {
    order.unshift(last);
    const rest = set & ~(1 << last);
    if (rest === 0) return order;
    [set, last] = [rest, before(last, set)];
  }
};

const nearestNext = (costs: readonly (readonly number[])[], first: readonly number[]): number[] => {
  const left = new Set(costs.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const to = order.at(-1);
    const next = least([...left], (i) => (to === undefined ? first[i] : costs[to]?.[i]) ?? 0);
    order.push(next);
    left.delete(next);
  }
  return order;
};

/** The first of those that cost the least. */
const least = (places: readonly number[], costOf: (place: number) => number): number =>
  places.reduce((best, place) => (costOf(place) < costOf(best) ? place : best), places[0] ?? 0);
