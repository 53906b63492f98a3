import type { Choice, Pool } from './pool.ts';

/** One choice for some of the bins, in the order in which they were filled, and how many of each type are still open. */
export interface Filling {
  readonly chosen: ReadonlyMap<Pool, Choice>;
  readonly open: readonly number[];
  /** Bins of boards that were whole. */
  readonly boards: number;
}

/** What a choice is worth where no more of each type than is open counts. */
export const worth = ({ yields }: Choice, open: readonly number[], prices: readonly number[]): number => {
  let sum = 0;
  for (let type = 0; type < open.length; type++)
    sum += Math.min(yields[type] ?? 0, open[type] ?? 0) * (prices[type] ?? 0);
  return sum;
};

/** The rest of what is open. */
export const after = ({ yields }: Choice, open: readonly number[]): number[] =>
  open.map((number, type) => Math.max(0, number - (yields[type] ?? 0)));

export type Improve = (pool: Pool, open: readonly number[], prices: readonly number[]) => Choice | undefined;

/** Fills one bin after the other, each time the one that takes the most worth of what is open; free ones first. */
export const fillInTurn = (
  pools: readonly Pool[],
  demand: readonly number[],
  prices: readonly number[],
  /** A bin's worth is multiplied by this. */
  bias: (pool: Pool) => number = () => 1,
  /** Looks for a better choice for a bin, for what is open. */
  improve: Improve = () => undefined,
): Filling => {
  const chosen = new Map<Pool, Choice>();
  let open: readonly number[] = demand;
  let boards = 0;
  for (;;) {
    let best: { pool: Pool; choice: Choice; score: number } | undefined;
    for (const pool of pools) {
      if (chosen.has(pool)) continue;
      const factor = (pool.bin.free ? 1e6 : 1) * bias(pool);
      for (const choice of pool.choices) {
        const score = factor * worth(choice, open, prices);
        if (score > (best?.score ?? 0)) best = { pool, choice, score };
      }
    }
    if (best === undefined) return { chosen, open, boards };
    const other = improve(best.pool, open, prices);
    const better = other !== undefined && worth(other, open, prices) > worth(best.choice, open, prices);
    const choice = better ? other : best.choice;
    chosen.set(best.pool, choice);
    open = after(choice, open);
    if (!best.pool.bin.free) boards++;
  }
};

const less = (a: Filling, b: Filling, areas: readonly number[]): boolean => {
  const missing = ({ open }: Filling) => open.reduce((sum, n, type) => sum + n * (areas[type] ?? 0), 0);
  return missing(a) - missing(b) || a.boards - b.boards
    ? missing(a) < missing(b) || (missing(a) === missing(b) && a.boards < b.boards)
    : false;
};

/**
 * The best of many fillings: after each, the prices of types that came out of badly used boards rise. After Belov and
 * Scheithauer, sequential value correction, as told for one-dimensional stock (2007); their figures, found by trial here.
 */
export const correctValues = (
  pools: readonly Pool[],
  demand: readonly number[],
  areas: readonly number[],
  improve: Improve,
  enough: (best: Filling, round: number) => boolean,
): Filling => {
  const most = new Map(
    pools.map((pool) => [pool, Math.max(0, ...pool.choices.map((choice) => worth(choice, demand, areas)))]),
  );
  let prices = [...areas];
  let best = fillInTurn(pools, demand, prices);
  for (let round = 1; !enough(best, round); round++) {
    const filling = fillInTurn(
      pools,
      demand,
      prices,
      (pool) => 1 + ((round * 7 + pool.bin.plank * 13) % 10) / 60,
      improve,
    );
    if (less(filling, best, areas)) best = filling;
    let open: readonly number[] = demand;
    const next = [...prices];
    for (const [pool, choice] of filling.chosen) {
      const used = worth(choice, open, areas);
      const waste = Math.min(3, (most.get(pool) ?? 0) / Math.max(1, used));
      const share = 0.3 + ((round * 5) % 7) / 14;
      demand.forEach((_, type) => {
        if (Math.min(choice.yields[type] ?? 0, open[type] ?? 0) > 0)
          next[type] = (1 - share) * (next[type] ?? 0) + share * (areas[type] ?? 0) ** 1.02 * waste;
      });
      open = after(choice, open);
    }
    demand.forEach((_, type) => {
      if ((filling.open[type] ?? 0) > 0) next[type] = (next[type] ?? 0) * 1.3;
    });
    prices = next;
  }
  return best;
};
