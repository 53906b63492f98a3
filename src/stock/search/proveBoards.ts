import { worth } from './fillInTurn.ts';
import type { Choice, Pool } from './pool.ts';

/** Sums of floats that differ by less than this share are equal. */
const NEAR = 1e-9;

/** The best choice of a pool at some prices. */
const best = (
  { choices }: Pool,
  demand: readonly number[],
  prices: readonly number[],
): [number, Choice | undefined] => {
  let found: Choice | undefined;
  let most = 0;
  for (const choice of choices) {
    const value = worth(choice, demand, prices);
    if (value > most) [most, found] = [value, choice];
  }
  return [most, found];
};

/**
 * Prices at which so many boards cannot hold the worth of all that is asked for, whichever they are; or nothing where none
 * were found. Every pool must be complete. The dual of choosing boards, by subgradients.
 */
export const pricesAgainst = (
  pools: readonly Pool[],
  demand: readonly number[],
  areas: readonly number[],
  boards: number,
  rounds: number,
): readonly number[] | undefined => {
  let prices = [...areas];
  for (let round = 1; round <= rounds; round++) {
    const each = pools.map((pool) => ({ free: pool.bin.free, best: best(pool, demand, prices) }));
    const costly = each.filter(({ free }) => !free).sort((a, b) => b.best[0] - a.best[0]);
    const used = [...each.filter(({ free }) => free), ...costly.slice(0, boards)];
    const wanted = demand.reduce((sum, n, type) => sum + n * (prices[type] ?? 0), 0);
    const held = used.reduce((sum, { best: [value] }) => sum + value, 0);
    if (held < wanted * (1 - NEAR)) return prices;
    const given = demand.map((_, type) =>
      used.reduce(
        (sum, { best: [, choice] }) => sum + Math.min(choice?.yields[type] ?? 0, demand[type] ?? 0),
        0,
      ),
    );
    prices = prices.map((price, type) => {
      const lack = ((demand[type] ?? 0) - (given[type] ?? 0)) / Math.max(1, demand[type] ?? 0);
      return Math.max(0, price + ((areas[type] ?? 0) * lack) / (1 + round / 4));
    });
  }
  return undefined;
};
