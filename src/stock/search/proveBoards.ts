import { areaOf, type BlankType } from '../wood/blankType.ts';
import { worth } from './fillInTurn.ts';
import { lineWorths } from './lineWorth.ts';
import { mostWorth, type Pool } from './pool.ts';
import { ofPart, type Told } from './told.ts';

/** Sums of floats that differ by less than this share are equal. */
const NEAR = 1e-9;

/** Steps of the subgradient. */
const ROUNDS = 60;

/** The most that the blanks of a bin can be worth, and how many of each type it then gives. */
interface Most {
  readonly worth: number;
  readonly counts: ArrayLike<number>;
}

/** What share of a proof is done when lines have been tried. */
const BY_LINES = 0.5;

/** What the best choice of a pool is worth at some prices. */
const mostOf = ({ choices }: Pool, demand: readonly number[], prices: readonly number[]): Most => {
  let most: Most = { worth: 0, counts: [] };
  for (const choice of choices) {
    const value = worth(choice, demand, prices);
    if (value > most.worth) most = { worth: value, counts: choice.yields };
  }
  return most;
};

const worthOf = (demand: readonly number[], prices: readonly number[]): number =>
  demand.reduce((sum, n, type) => sum + n * (prices[type] ?? 0), 0);

/** What all bins that may be cut into hold together, where so many of the whole boards are. */
const heldBy = (each: readonly { readonly free: boolean; readonly most: Most }[], boards: number) => {
  const costly = each.filter(({ free }) => !free).sort((a, b) => b.most.worth - a.most.worth);
  const used = [...each.filter(({ free }) => free), ...costly.slice(0, boards)].map(({ most }) => most);
  return { used, worth: used.reduce((sum, { worth }) => sum + worth, 0) };
};

/**
 * A number of whole boards under which nothing that is asked for can be cut whole: as long as there are prices at which so many
 * boards cannot hold the worth of all that is asked for, whichever they are. The dual of choosing boards, by subgradients. What
 * is not known of a bin's patterns is bounded by lines, and by patterns with any number of each type.
 */
export const leastBoards = (
  pools: readonly Pool[],
  types: readonly BlankType[],
  demand: readonly number[],
  steps: number,
  told: Told = () => {},
): number => {
  const areas = types.map(areaOf);
  const incomplete = pools.filter(({ complete }) => !complete);
  const byLines = lineWorths(
    incomplete.map(({ bin }) => bin),
    types,
    demand,
  );
  const mostAt = (prices: readonly number[]) => {
    const lines = new Map(byLines(prices).map((most, i) => [incomplete[i], most]));
    return pools.map((pool) => ({
      pool,
      free: pool.bin.free,
      most: lines.get(pool) ?? mostOf(pool, demand, prices),
    }));
  };
  const lacks = (worth: number, prices: readonly number[]) => worth < worthOf(demand, prices) * (1 - NEAR);
  const whole = pools.filter(({ bin }) => !bin.free).length;
  const ofLines = ofPart(told, 0, BY_LINES);
  const isTooFew = (boards: number): boolean => {
    let prices = areas;
    for (let round = 1; round <= ROUNDS; round++) {
      ofLines((boards + round / ROUNDS) / whole);
      const { used, worth } = heldBy(mostAt(prices), boards);
      if (lacks(worth, prices)) return true;
      const given = demand.map((number, type) =>
        used.reduce((sum, { counts }) => sum + Math.min(counts[type] ?? 0, number), 0),
      );
      prices = prices.map((price, type) => {
        const lack = ((demand[type] ?? 0) - (given[type] ?? 0)) / Math.max(1, demand[type] ?? 0);
        return Math.max(0, price + ((areas[type] ?? 0) * lack) / (1 + round / 4));
      });
    }
    return false;
  };
  let boards = 0;
  while (boards < whole && isTooFew(boards)) boards++;
  const priceLists = incomplete.length === 0 ? [] : [areas, areas.map((area) => area ** 1.25)];
  priceLists.forEach((prices, list) => {
    const each = mostAt(prices).map(({ pool, free, most }, i) => {
      told(BY_LINES + ((1 - BY_LINES) * (list + i / pools.length)) / priceLists.length);
      if (pool.complete) return { free, most };
      const worth = Math.min(most.worth, mostWorth(pool.bin, prices, steps / pools.length));
      return { free, most: { ...most, worth } };
    });
    while (boards < whole && lacks(heldBy(each, boards).worth, prices)) boards++;
  });
  return boards;
};
