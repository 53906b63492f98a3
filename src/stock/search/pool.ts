import { type BlankType, pinsOf } from '../wood/blankType.ts';
import type { Bin } from './bin.ts';
import { packingOf, uncounted } from './packing.ts';
import { type Pattern, patternsOf } from './patterns.ts';

/** How many blanks of each type a pattern gives. */
export type Yield = Uint8Array;

export interface Choice {
  readonly yields: Yield;
  readonly pattern: Pattern;
}

/** What may be cut out of a bin. No choice gives all that another gives. */
export interface Pool {
  readonly bin: Bin;
  /** Steps that it took to find. */
  readonly steps: number;
  readonly choices: Choice[];
  /** Whether nothing can be cut out of the bin that is not in some choice. */
  readonly complete: boolean;
}

export interface PoolSearch {
  readonly types: readonly BlankType[];
  /** At most so many of each type. */
  readonly most: readonly number[];
  readonly prices: readonly number[];
  readonly breadth: number;
  readonly steps: number;
}

/** More choices than these are no help where not all can be kept. */
const KEPT = 50;

/** What a search finds of a bin's patterns. */
export const poolOf = (bin: Bin, { types, most, prices, breadth, steps }: PoolSearch): Pool => {
  const isPinned = (type: number) => {
    const own = types[type];
    return own !== undefined && pinsOf(own).some(({ at }) => at !== undefined);
  };
  const order = types
    .map((_, type) => type)
    .sort((a, b) => Number(isPinned(b)) - Number(isPinned(a)) || (prices[b] ?? 0) - (prices[a] ?? 0));
  const able = new Set(bin.ways.flatMap(({ view }) => view.shapes.map(({ type }) => type)));
  const packing = packingOf(
    most.map((number, type) => (able.has(type) ? number : 0)),
    order,
    isPinned,
  );
  const searches = bin.ways.map(({ view, stages }) =>
    patternsOf(view, {
      prices,
      packing,
      stages,
      breadth,
      thorough: breadth === Number.POSITIVE_INFINITY,
      most: steps,
    }),
  );
  const patterns = searches.flatMap(({ patterns }) => patterns);
  const complete =
    breadth === Number.POSITIVE_INFINITY && packing.whole && searches.every(({ finished }) => finished);
  // All that a part of a pattern gives is there too: what has room for one more is not the most.
  const firsts = new Map<number, number>();
  patterns.forEach(({ counts }, i) => {
    if (!firsts.has(counts)) firsts.set(counts, i);
  });
  const maximal = patterns.filter(({ counts }, i) => {
    if (firsts.get(counts) !== i) return false;
    return !types.some((_, type) => firsts.has(packing.add(counts, type) ?? -1));
  });
  const onlyPins = most.map((number, type) => (isPinned(type) ? number : 0));
  if (
    patterns.length === 0 &&
    !complete &&
    onlyPins.some((number) => number > 0) &&
    `${onlyPins}` !== `${most}`
  ) {
    // Nothing was found beside what is pinned here: that alone can be cut.
    const alone = {
      types,
      most: onlyPins,
      prices,
      breadth: Number.POSITIVE_INFINITY,
      steps: Number.POSITIVE_INFINITY,
    };
    return { ...poolOf(bin, alone), complete };
  }
  const kept = complete ? maximal : [...maximal].sort((a, b) => b.value - a.value).slice(0, KEPT);
  return {
    bin,
    steps: searches.reduce((sum, { steps }) => sum + steps, 0),
    complete,
    choices: kept.map((pattern) => ({
      pattern,
      yields: Uint8Array.from(types, (_, type) => packing.countOf(pattern.counts, type)),
    })),
  };
};

/** The most that the blanks of a bin can be worth at some prices, were there any number of each type; never below the truth. */
export const mostWorth = (bin: Bin, prices: readonly number[], steps: number): number => {
  const packing = uncounted();
  return bin.ways.reduce((most, { view, stages }) => {
    const { patterns, finished } = patternsOf(view, {
      prices,
      packing,
      stages,
      breadth: 1,
      thorough: true,
      most: steps,
    });
    if (!finished) return Number.POSITIVE_INFINITY;
    return Math.max(most, ...patterns.map(({ value }) => value));
  }, 0);
};
