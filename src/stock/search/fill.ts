import type { Bin } from './bin.ts';
import type { BlankType } from './blankType.ts';
import { chooseBoards } from './chooseBoards.ts';
import { correctValues, type Filling, fillInTurn } from './fillInTurn.ts';
import { type Choice, type Pool, poolOf, undominated } from './pool.ts';
import { pricesAgainst } from './proveBoards.ts';

/** What may be spent, in steps: questions where a blank may lie, or choices tried. */
export interface Steps {
  /** On the patterns of all bins together. */
  readonly patterns: number;
  /** On choosing among them, each time. */
  readonly choosing: number;
  /** Fillings tried. */
  readonly rounds: number;
}

export interface Fill {
  readonly filling: Filling;
  /** No filling cuts into fewer whole boards; absent where something stays open. */
  readonly bound: number | undefined;
}

const FIRST_STEPS = 4000;
/** What is kept of a bin's patterns where all of them are too many. */
const BREADTH = 6;

const isDone = ({ open }: Filling): boolean => open.every((number) => number === 0);

const joined = (pools: readonly Pool[]): Pool => {
  const [first] = pools as [Pool];
  const choices: Choice[] = undominated(pools.flatMap(({ choices }) => choices));
  return { bin: first.bin, choices, complete: pools.some(({ complete }) => complete) };
};

/** The first filling that comes to hand. */
export const fillAtOnce = (
  bins: readonly Bin[],
  types: readonly BlankType[],
  demand: readonly number[],
): Filling => {
  const prices = types.map(({ length, width }) => length * width);
  const search = { types, most: demand, prices, breadth: 1, steps: FIRST_STEPS };
  return fillInTurn(
    bins.map((bin) => poolOf(bin, search)),
    demand,
    prices,
  );
};

/** The pools of some bins: complete ones where the steps suffice for that. */
export const poolsOf = (
  bins: readonly Bin[],
  types: readonly BlankType[],
  demand: readonly number[],
  steps: number,
): Pool[] => {
  const areas = types.map(({ length, width }) => length * width);
  const share = steps / Math.max(1, bins.length);
  const same = new Map<string, Pool>();
  return bins.map((bin) => {
    const known = same.get(bin.likeness);
    if (known !== undefined) return { ...known, bin };
    const all = poolOf(bin, {
      types,
      most: demand,
      prices: areas,
      breadth: Number.POSITIVE_INFINITY,
      steps: share / 2,
    });
    const steep = areas.map((area) => area ** 1.2);
    const some = (prices: readonly number[]) =>
      poolOf(bin, { types, most: demand, prices, breadth: BREADTH, steps: share / 4 });
    const pool = all.complete ? all : joined([all, some(areas), some(steep)]);
    same.set(bin.likeness, pool);
    return pool;
  });
};

/** As few boards as can be found, and how few there can be. */
export const fill = (
  pools: readonly Pool[],
  /** Pools of boards that hold at least as much, all complete, by which a bound is proved; or none. */
  looser: readonly Pool[] | undefined,
  types: readonly BlankType[],
  demand: readonly number[],
  steps: Steps,
): Fill => {
  const areas = types.map(({ length, width }) => length * width);
  const whole = pools.filter(({ bin }) => !bin.free).length;
  const least = looser === undefined ? 0 : leastBoards(looser, demand, areas, whole);
  let filling = correctValues(
    pools,
    demand,
    areas,
    steps.rounds,
    (found) => isDone(found) && found.boards <= least,
  );
  let bound = least;
  for (;;) {
    const fewer = isDone(filling) ? filling.boards - 1 : whole;
    if (fewer < bound) break;
    const prices = [areas, types.map(({ length }) => length), types.map(({ width }) => width)];
    const tried = chooseBoards(pools, demand, prices, fewer, steps.choosing);
    if (tried.filling !== undefined) filling = tried.filling;
    else {
      if (tried.exhausted && pools === looser) bound = fewer + 1;
      break;
    }
  }
  if (looser !== undefined && looser !== pools && bound < filling.boards) {
    const prices = [areas, types.map(({ length }) => length), types.map(({ width }) => width)];
    if (chooseBoards(looser, demand, prices, filling.boards - 1, steps.choosing).exhausted)
      bound = filling.boards;
  }
  return { filling, bound: isDone(filling) ? bound : undefined };
};

/** The fewest boards that prices do not rule out. */
const leastBoards = (
  pools: readonly Pool[],
  demand: readonly number[],
  areas: readonly number[],
  whole: number,
): number => {
  for (let boards = 0; boards < whole; boards++)
    if (pricesAgainst(pools, demand, areas, boards, 60) === undefined) return boards;
  return whole;
};
