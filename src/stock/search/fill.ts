import { areaOf, type BlankType } from '../wood/blankType.ts';
import type { Bin } from './bin.ts';
import { chooseBoards } from './chooseBoards.ts';
import { correctValues, type Filling, fillInTurn, type Improve, worth } from './fillInTurn.ts';
import { type Pool, poolOf } from './pool.ts';
import { leastBoards } from './proveBoards.ts';
import { squeeze } from './squeeze.ts';
import { ofPart, type Told } from './told.ts';

/** What may be spent, in steps: questions where a blank may lie, or choices tried. */
export interface Steps {
  /** On the patterns of all bins together. */
  readonly patterns: number;
  /** On choosing among them, each time. */
  readonly choosing: number;
  /** On filling boards in turn: choices looked at. */
  readonly rounds: number;
}

export interface Fill {
  readonly filling: Filling;
  /** No filling cuts into fewer whole boards; absent where something stays open. */
  readonly bound: number | undefined;
}

/** Prices seldom tell anything new after so many corrections. */
const MOST_ROUNDS = 400;
/** So many of the least used boards are tried to be saved. */
const TRIES = 3;
const FIRST_STEPS = 4000;
/** What is kept of a bin's patterns where all of them are too many. */
const BREADTH = 3;

/** What share of the work on a filling is done when there is a bound, when values are corrected, and when it is squeezed. */
const [PROVED, FILLED, SQUEEZED] = [0.5, 0.8, 0.9];

const isDone = ({ open }: Filling): boolean => open.every((number) => number === 0);

/** The choices of all searches of one bin. */
const joined = (pools: readonly Pool[], { bin }: { readonly bin: Bin }): Pool => {
  const choices = new Map(pools.flatMap(({ choices }) => choices.map((each) => [each.yields.join(), each])));
  return {
    bin,
    steps: pools.reduce((sum, { steps }) => sum + steps, 0),
    choices: [...choices.values()],
    complete: false,
  };
};

/** The first filling that comes to hand. */
export const fillAtOnce = (
  bins: readonly Bin[],
  types: readonly BlankType[],
  demand: readonly number[],
): Filling => {
  const prices = types.map(areaOf);
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
  told: Told,
): Pool[] => {
  const areas = types.map(areaOf);
  const share = steps / Math.max(1, bins.length);
  const same = new Map<string, Pool>();
  /** The smallest wood of which not all patterns could be had. */
  let tooLarge = Number.POSITIVE_INFINITY;
  const sizeOf = ({ piece: { at } }: Bin) => (at.x1 - at.x0) * (at.y1 - at.y0);
  const search = { types, most: demand };
  return bins.map((bin, i) => {
    told(i / bins.length);
    const known = same.get(bin.likeness);
    if (known !== undefined) return { ...known, choices: [...known.choices], bin };
    let pool: Pool | undefined;
    if (sizeOf(bin) < tooLarge) {
      pool = poolOf(bin, { ...search, prices: areas, breadth: Number.POSITIVE_INFINITY, steps: share / 3 });
      if (!pool.complete) tooLarge = Math.min(tooLarge, 0.8 * sizeOf(bin));
    }
    if (!pool?.complete) {
      const some = [1, 1.2, 0.8].map((power) => {
        const prices = areas.map((area) => area ** power);
        return poolOf(bin, { ...search, prices, breadth: BREADTH, steps: share / 9 });
      });
      pool = joined([...(pool === undefined ? [] : [pool]), ...some], { bin });
    }
    same.set(bin.likeness, pool);
    return pool;
  });
};

/** Looks for patterns of what is still open while some steps last, and keeps them in their pools; `spent` is the share of steps. */
const improver = (
  types: readonly BlankType[],
  steps: number,
): { readonly improve: Improve; readonly spent: () => number } => {
  let left = steps;
  return {
    spent: () => Math.min(1, 1 - left / steps),
    improve: (pool, open, prices) => {
      if (pool.complete || left <= 0) return undefined;
      const found = poolOf(pool.bin, { types, most: open, prices, breadth: 2, steps: 20_000 });
      left -= found.steps;
      const [best] = found.choices;
      if (best !== undefined) pool.choices.push(best);
      return best;
    },
  };
};

interface Squeezing {
  readonly types: readonly BlankType[];
  readonly demand: readonly number[];
  /** No fewer boards suffice. */
  readonly least: number;
  readonly steps: number;
  readonly told: Told;
}

/** What is open squeezed in; or with nothing open, what lies in one of the least used boards into the others. */
const squeezed = (
  filling: Filling,
  pools: readonly Pool[],
  { types, demand, least, steps, told }: Squeezing,
): Filling => {
  if (!isDone(filling)) return squeeze(filling.chosen, pools, types, demand, steps / 2, told);
  const areas = types.map(areaOf);
  let best = filling;
  for (let tries = 0; tries < TRIES && best.boards > least; ) {
    const [...used] = best.chosen;
    const others = used
      .filter(([{ bin }]) => !bin.free)
      .sort((a, b) => worth(a[1], demand, areas) - worth(b[1], demand, areas))
      .map(([pool]) => pool);
    const without = others[tries];
    if (without === undefined) break;
    const rest = used.map(([pool]) => pool).filter((pool) => pool !== without);
    const fewer = squeeze(
      new Map(used.filter(([pool]) => pool !== without)),
      rest,
      types,
      demand,
      steps / 6 / TRIES,
      ofPart(told, tries / TRIES, (tries + 1) / TRIES),
    );
    if (isDone(fewer)) best = fewer;
    else tries++;
  }
  return best;
};

/** As few boards as can be found, and how few there can be. */
export const fill = (
  pools: readonly Pool[],
  /** Pools of boards that hold at least as much, by which a bound is proved. */
  looser: readonly Pool[],
  types: readonly BlankType[],
  demand: readonly number[],
  steps: Steps,
  told: Told,
): Fill => {
  const areas = types.map(areaOf);
  const whole = pools.filter(({ bin }) => !bin.free).length;
  const least = leastBoards(looser, types, demand, steps.patterns, ofPart(told, 0, PROVED));
  const proves = looser.every(({ complete }) => complete);
  const { improve, spent } = improver(types, steps.patterns / 2);
  told(PROVED);
  const looks = pools.reduce((sum, { choices }) => sum + choices.length, 1) * Math.sqrt(pools.length);
  const rounds = Math.min(MOST_ROUNDS, steps.rounds / looks);
  const ofRounds = ofPart(told, PROVED, FILLED);
  let filling = correctValues(pools, demand, areas, improve, (found, round) => {
    ofRounds(Math.max(round / rounds, spent()));
    return (isDone(found) && found.boards <= least) || round > rounds || (spent() === 1 && round > 20);
  });
  told(FILLED);
  filling = squeezed(filling, pools, {
    ...{ types, demand, least },
    steps: steps.patterns,
    told: ofPart(told, FILLED, SQUEEZED),
  });
  told(SQUEEZED);
  let bound = least;
  for (;;) {
    const fewer = isDone(filling) ? filling.boards - 1 : whole;
    if (fewer < bound) break;
    const prices = [areas, types.map(({ length }) => length), types.map(({ width }) => width)];
    const tried = chooseBoards(pools, demand, prices, fewer, steps.choosing, ofPart(told, SQUEEZED, 1));
    if (tried.filling !== undefined) filling = tried.filling;
    else {
      if (tried.exhausted && pools === looser && proves) bound = fewer + 1;
      break;
    }
  }
  if (proves && looser !== pools && isDone(filling) && bound < filling.boards) {
    const prices = [areas, types.map(({ length }) => length), types.map(({ width }) => width)];
    if (chooseBoards(looser, demand, prices, filling.boards - 1, steps.choosing).exhausted)
      bound = filling.boards;
  }
  return { filling, bound: isDone(filling) ? bound : undefined };
};
