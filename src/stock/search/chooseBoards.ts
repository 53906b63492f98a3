import { after, type Filling, worth } from './fillInTurn.ts';
import type { Choice, Pool } from './pool.ts';
import type { Told } from './told.ts';

export interface Chosen {
  readonly filling: Filling | undefined;
  /** Whether every way was tried: then there is no filling where none is told. */
  readonly exhausted: boolean;
}

/**
 * A filling that leaves nothing open with at most so many boards, by branch and bound: bin after bin, each of its choices or
 * none, as long as the best of the bins to come can hold what is open, at each of some lists of prices.
 */
export const chooseBoards = (
  pools: readonly Pool[],
  demand: readonly number[],
  priceLists: readonly (readonly number[])[],
  boards: number,
  steps: number,
  told: Told = () => {},
): Chosen => {
  const mostOf = (pool: Pool, prices: readonly number[]) =>
    Math.max(0, ...pool.choices.map((choice) => worth(choice, demand, prices)));
  const [first = []] = priceLists;
  const order = pools
    .map((pool) => ({ pool, value: mostOf(pool, first) }))
    .sort((a, b) => Number(b.pool.bin.free) - Number(a.pool.bin.free) || b.value - a.value)
    .map(({ pool }) => pool);
  const values = priceLists.map((prices) => order.map((pool) => mostOf(pool, prices)));
  /** The most that bins from one on can hold, with so many boards. */
  const holds = values.map((own) =>
    order.map((_, i) => {
      const rest = own
        .slice(i)
        .filter((_, k) => !order[i + k]?.bin.free)
        .sort((a, b) => b - a);
      const free = own.slice(i).reduce((sum, value, k) => sum + (order[i + k]?.bin.free ? value : 0), 0);
      const sums = [free];
      for (const value of rest) sums.push((sums.at(-1) ?? 0) + value);
      return sums;
    }),
  );
  const failed = new Set<string>();
  const chosen = new Map<Pool, Choice>();
  let left = steps;
  const search = (i: number, open: readonly number[], most: number): readonly number[] | undefined => {
    if (open.every((number) => number === 0)) return open;
    const pool = order[i];
    if (pool === undefined || left <= 0) return undefined;
    for (const [list, prices] of priceLists.entries()) {
      const wanted = open.reduce((sum, n, type) => sum + n * (prices[type] ?? 0), 0);
      const sums = holds[list]?.[i] ?? [];
      if ((sums[Math.min(most, sums.length - 1)] ?? 0) < wanted * (1 - 1e-9)) return undefined;
    }
    const key = `${i} ${most} ${open.join()}`;
    if (failed.has(key)) return undefined;
    if (pool.bin.free || most > 0) {
      left -= pool.choices.length;
      told(1 - left / steps);
      const seen = new Set<string>();
      const tries = pool.choices
        .map((choice) => ({ choice, rest: after(choice, open), value: worth(choice, open, first) }))
        .sort((a, b) => b.value - a.value);
      for (const { choice, rest, value } of tries) {
        const same = rest.join();
        if (value === 0 || seen.has(same)) continue;
        seen.add(same);
        chosen.set(pool, choice);
        const end = search(i + 1, rest, most - (pool.bin.free ? 0 : 1));
        if (end !== undefined) return end;
        chosen.delete(pool);
      }
    }
    const without = search(i + 1, open, most);
    if (without === undefined && left > 0) failed.add(key);
    return without;
  };
  const open = search(0, demand, boards);
  if (open === undefined) return { filling: undefined, exhausted: left > 0 };
  const used = [...chosen.keys()].filter(({ bin }) => !bin.free).length;
  return { filling: { chosen, open, boards: used }, exhausted: false };
};
