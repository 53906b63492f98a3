import { worth } from './fillInTurn.ts';
import { type Choice, mostWorth, type Pool } from './pool.ts';

/** Sums of floats that differ by less than this share are equal. */
const NEAR = 1e-9;

/** Steps of the subgradient. */
const ROUNDS = 60;

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
 * Whether there are prices at which so many boards cannot hold the worth of all that is asked for, whichever they are. Every
 * pool must be complete. The dual of choosing boards, by subgradients.
 */
const tooFew = (
  pools: readonly Pool[],
  demand: readonly number[],
  areas: readonly number[],
  boards: number,
): boolean => {
  let prices = areas;
  for (let round = 1; round <= ROUNDS; round++) {
    const each = pools.map((pool) => ({ free: pool.bin.free, best: best(pool, demand, prices) }));
    const costly = each.filter(({ free }) => !free).sort((a, b) => b.best[0] - a.best[0]);
    const used = [...each.filter(({ free }) => free), ...costly.slice(0, boards)];
    const held = used.reduce((sum, { best: [value] }) => sum + value, 0);
    if (held < worthOf(demand, prices) * (1 - NEAR)) return true;
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
  return false;
};

const worthOf = (demand: readonly number[], prices: readonly number[]): number =>
  demand.reduce((sum, n, type) => sum + n * (prices[type] ?? 0), 0);

/** A number of whole boards under which nothing that is asked for can be cut whole. */
export const leastBoards = (
  pools: readonly Pool[],
  demand: readonly number[],
  areas: readonly number[],
  steps: number,
): number => {
  const whole = pools.filter(({ bin }) => !bin.free).length;
  const complete = pools.every(({ complete }) => complete);
  let boards = 0;
  if (complete) while (boards < whole && tooFew(pools, demand, areas, boards)) boards++;
  if (complete) return boards;
  for (const prices of [areas, areas.map((area) => area ** 1.25)]) {
    const values = pools.map((pool) => ({
      free: pool.bin.free,
      value: pool.complete
        ? best(pool, demand, prices)[0]
        : mostWorth(pool.bin, prices, steps / pools.length),
    }));
    let lack = worthOf(demand, prices) * (1 - NEAR);
    for (const { free, value } of values) if (free) lack -= value;
    const costly = values.filter(({ free }) => !free).sort((a, b) => b.value - a.value);
    const enough = costly.findIndex(({ value }) => {
      const before = lack;
      lack -= value;
      return before <= 0;
    });
    boards = Math.max(boards, enough < 0 ? whole : enough);
  }
  return boards;
};
