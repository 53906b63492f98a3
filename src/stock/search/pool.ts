import type { Bin } from './bin.ts';
import type { BlankType } from './blankType.ts';
import { packingOf } from './packing.ts';
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
  readonly choices: readonly Choice[];
  /** Whether nothing can be cut out of the bin that is not in some choice. */
  readonly complete: boolean;
}

const covers = (a: Yield, b: Yield): boolean => {
  for (let i = 0; i < a.length; i++) if ((a[i] ?? 0) < (b[i] ?? 0)) return false;
  return true;
};

/** Those that no other covers; of equal ones, the first. */
export const undominated = (choices: readonly Choice[]): Choice[] => {
  const total = ({ yields }: Choice) => yields.reduce((sum, n) => sum + n, 0);
  const sorted = choices.map((choice) => ({ choice, total: total(choice) }));
  sorted.sort((a, b) => b.total - a.total);
  const kept: Choice[] = [];
  for (const { choice } of sorted)
    if (!kept.some(({ yields }) => covers(yields, choice.yields))) kept.push(choice);
  return kept;
};

export interface PoolSearch {
  readonly types: readonly BlankType[];
  /** At most so many of each type. */
  readonly most: readonly number[];
  readonly prices: readonly number[];
  readonly breadth: number;
  readonly steps: number;
}

/** What a search finds of a bin's patterns, and the steps that it took. */
export const poolOf = (bin: Bin, { types, most, prices, breadth, steps }: PoolSearch): Pool => {
  const order = types.map((_, type) => type).sort((a, b) => (prices[b] ?? 0) - (prices[a] ?? 0));
  const able = new Set(bin.ways.flatMap(({ view }) => view.shapes.map(({ type }) => type)));
  const packing = packingOf(
    most.map((number, type) => (able.has(type) ? number : 0)),
    order,
  );
  let complete = breadth === Number.POSITIVE_INFINITY && packing.whole;
  const choices = bin.ways.flatMap(({ view, stages }) => {
    const before = view.steps;
    const patterns = patternsOf(view, { prices, packing, stages, breadth, most: steps });
    if (view.steps - before > steps) complete = false;
    return patterns.map(
      (pattern): Choice => ({
        pattern,
        yields: Uint8Array.from(types, (_, type) => packing.countOf(pattern.counts, type)),
      }),
    );
  });
  return { bin, choices: undominated(choices), complete };
};
