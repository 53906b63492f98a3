import type { Plank } from '../plank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { type BlankType, blankTypes, runType } from '../wood/blankType.ts';
import { looserPlank } from '../wood/looserPlank.ts';
import { type Bin, binsOf } from './bin.ts';
import { chooseBoards } from './chooseBoards.ts';
import { componentsOf } from './components.ts';
import { fill, fillAtOnce, poolsOf, type Steps } from './fill.ts';
import { after, type Filling } from './fillInTurn.ts';
import { intoBent } from './intoBent.ts';
import type { Choice, Pool } from './pool.ts';
import { ofPart, type Told } from './told.ts';

/** The task: boards, what is to be cut out of them, and the saw. */
export interface Task {
  readonly planks: readonly Plank[];
  readonly wanted: readonly Wanted[];
  readonly saw: Saw;
  /** Indices of the pieces that have not been cut yet. */
  readonly open: readonly number[];
}

/** What is cut out of one bin: of the choice, so many of each type. */
export interface Taken {
  readonly pool: Pool;
  readonly choice: Choice;
  readonly counts: readonly number[];
}

export interface Solution {
  readonly types: readonly BlankType[];
  readonly bins: readonly Bin[];
  readonly taken: readonly Taken[];
  /** How many of each type find no room. */
  readonly missing: readonly number[];
  /** Whole boards under which nothing suffices; absent where something is missing. */
  readonly bound: number | undefined;
}

const takenOf = ({ chosen }: Filling, demand: readonly number[]): Taken[] => {
  let open: readonly number[] = demand;
  return [...chosen].map(([pool, choice]) => {
    const before = open;
    open = after(choice, open);
    return { pool, choice, counts: before.map((number, type) => number - (open[type] ?? 0)) };
  });
};

const typesOf = ({ planks, wanted, open }: Task, runs: readonly RunWish[]): BlankType[] => {
  const running = new Set(runs.flatMap(({ pieces }) => pieces));
  const single = open.filter((piece) => !running.has(piece));
  const spareLast = [...single].sort((a, b) => Number(wanted[a]?.spare) - Number(wanted[b]?.spare) || a - b);
  return [
    ...blankTypes(planks, wanted, spareLast),
    ...runs.map(({ kind, pieces }) =>
      runType(
        kind === 'row' ? 'x' : 'y',
        pieces.flatMap((piece) => blankTypes(planks, wanted, [piece])),
      ),
    ),
  ];
};

/** Whether a piece must be cut: a second try need not, but where it is pinned. */
const isNeeded = (piece: Wanted | undefined): boolean => piece?.spare !== true || piece.pin !== undefined;

/** How many of each type must be cut. */
const demandOf = (types: readonly BlankType[], wanted: readonly Wanted[]): number[] =>
  types.map(({ pieces, run }) =>
    run === undefined ? pieces.filter((piece) => isNeeded(wanted[piece])).length : 1,
  );

/**
 * A layout as good as the steps allow, with these lists running through, each in one piece or missing.
 * @param told hears how far it is; without it the first layout that comes to hand is the answer
 */
export const solve = (task: Task, runs: readonly RunWish[], steps: Steps, told?: Told): Solution => {
  const { planks, wanted, saw } = task;
  const types = typesOf(task, runs);
  const demand = demandOf(types, wanted);
  const bins = planks.flatMap((plank, index) => binsOf(plank, index, types, saw));
  const components = componentsOf(bins);
  const all = components.reduce((sum, each) => sum + each.bins.length, 0);
  let before = 0;
  const parts = components.map(({ bins, types: own }) => {
    const asked = demand.map((number, type) => (own.has(type) ? number : 0));
    if (told === undefined) return { taken: takenOf(fillAtOnce(bins, types, asked), asked), bound: 0 };
    const share = bins.length / all;
    const mine = ofPart(told, before, before + share);
    before += share;
    const limit: Steps = {
      patterns: steps.patterns * share,
      choosing: steps.choosing,
      rounds: steps.rounds * share,
    };
    return solvePart(bins, { types, asked, task, limit, told: mine });
  });
  const taken = parts.flatMap(({ taken }) => taken);
  const missing = taken.reduce(
    (left, { counts }) => left.map((number, type) => Math.max(0, number - (counts[type] ?? 0))),
    demand,
  );
  const bounds = parts.map(({ bound }) => bound);
  const isWhole = missing.every((number) => number === 0);
  return {
    types,
    bins,
    taken,
    missing,
    bound: isWhole ? bounds.reduce<number>((sum, bound) => sum + (bound ?? 0), 0) : undefined,
  };
};

interface Part {
  readonly types: readonly BlankType[];
  readonly asked: readonly number[];
  readonly task: Task;
  readonly limit: Steps;
  readonly told: Told;
}

/** What share of a part of the task is done when the patterns of its boards are known, those of looser ones, and when all is filled. */
const [KNOWN, LOOSENED, FILLED] = [0.3, 0.45, 0.9];

const solvePart = (
  bins: readonly Bin[],
  { types, asked, task, limit, told }: Part,
): { readonly taken: Taken[]; readonly bound: number | undefined } => {
  const { planks, saw } = task;
  const pools = poolsOf(bins, types, asked, limit.patterns, ofPart(told, 0, KNOWN));
  const ofLooser = ofPart(told, KNOWN, LOOSENED);
  const looser = looserPools(pools, types, asked, { planks, saw, steps: limit.patterns / 2, told: ofLooser });
  const { filling, bound } = fill(pools, looser, types, asked, limit, ofPart(told, LOOSENED, FILLED));
  const spared = sparing(filling, pools, { planks, types, asked, steps: limit.choosing });
  const open = pools.filter((pool) => spared.chosen.has(pool) || planks[pool.bin.plank]?.keep !== true);
  const bent = intoBent(spared, open, types, asked, { planks, steps: limit.choosing / 10 });
  const taken = withSpares(bent, { types, asked, task, limit, told: ofPart(told, FILLED, 1) });
  told(1);
  return { taken, bound };
};

/** For a board with sloping edges, the pool of a board that holds at least as much, of which all places are known. */
const looserPools = (
  pools: readonly Pool[],
  types: readonly BlankType[],
  asked: readonly number[],
  {
    planks,
    saw,
    steps,
    told,
  }: Pick<Task, 'planks' | 'saw'> & { readonly steps: number; readonly told: Told },
): readonly Pool[] => {
  const loose = planks.map(looserPlank);
  if (pools.every(({ bin }) => loose[bin.plank] === planks[bin.plank])) return pools;
  return pools.flatMap((pool, i) => {
    told(i / pools.length);
    const plank = loose[pool.bin.plank];
    if (plank === undefined || plank === planks[pool.bin.plank]) return [pool];
    const bins = binsOf(plank, pool.bin.plank, types, saw).filter(
      ({ piece }) => piece.number === pool.bin.piece.number,
    );
    return poolsOf(bins, types, asked, steps / pools.length, () => {});
  });
};

/** The same number of boards without those that are to be spared, where that can be had. */
const sparing = (
  filling: Filling,
  pools: readonly Pool[],
  {
    planks,
    types,
    asked,
    steps,
  }: Pick<Part, 'types' | 'asked'> & { planks: readonly Plank[]; steps: number },
): Filling => {
  const isKept = ({ bin }: Pool) => planks[bin.plank]?.keep === true && !bin.free;
  if (filling.open.some((number) => number > 0) || ![...filling.chosen.keys()].some(isKept)) return filling;
  const others = pools.filter((pool) => !isKept(pool));
  const areas = types.map(({ length, width }) => length * width);
  return chooseBoards(others, asked, [areas], filling.boards, steps).filling ?? filling;
};

/** Spares out of the boards that are cut anyway, one after the other as far as there is room. */
const withSpares = (filling: Filling, { types, asked, task, limit, told }: Part): Taken[] => {
  const { wanted } = task;
  const spares = types.map(({ pieces }) => pieces.filter((piece) => !isNeeded(wanted[piece])).length);
  const bins = [...filling.chosen.keys()].map(({ bin }) => bin);
  const able = new Set(
    bins.flatMap(({ ways }) => ways.flatMap(({ view }) => view.shapes.map(({ type }) => type))),
  );
  if (
    filling.open.some((number) => number > 0) ||
    !spares.some((number, type) => number > 0 && able.has(type))
  )
    return takenOf(filling, asked);
  const all = asked.map((number, type) => number + (able.has(type) ? (spares[type] ?? 0) : 0));
  const pools = poolsOf(bins, types, all, limit.patterns / 2, told);
  const areas = types.map(({ length, width }) => length * width);
  let best = filling;
  let demand = asked;
  spares.forEach((number, type) => {
    for (let n = 0; n < number && able.has(type); n++) {
      const more = demand.map((own, other) => own + (other === type ? 1 : 0));
      const found = chooseBoards(pools, more, [areas], bins.length, limit.choosing).filling;
      if (found === undefined) return;
      best = found;
      demand = more;
    }
  });
  return takenOf(best, demand);
};
