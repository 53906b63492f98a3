import type { Plank, StockName } from '../../stock/plank.ts';
import { widestOf } from '../../stock/polygon.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { RunWish } from '../../stock/wanted.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { stockOf } from '../cuttingList.ts';
import { type Drawer, type DrawerSet, drawersAndBoxes, madeOf } from '../drawer.ts';
import { type Part, parts } from '../partsList.ts';
import { adviseBoards } from './adviseBoards.ts';
import { boardComplaints } from './boardComplaints.ts';
import type { BoardsSpec, RunSpec } from './boardSpec.ts';
import { doneOf } from './doneBlanks.ts';
import type { PartBlank } from './partBlanks.ts';
import { type BlankRules, type BlankSize, partBlanks, spareBlanks } from './partBlanks.ts';

/** The boards of a plan, what is to come out of them, and how it should run through. */
export interface StockWork {
  readonly planks: readonly Plank[];
  readonly blanks: readonly PartBlank[];
  readonly runs: readonly RunOfFronts[];
  /** Stocks of which no board is listed: their parts are left out. */
  readonly unlisted: readonly StockName[];
  /** Of each of the plan's pins, which blank it is of. */
  readonly pinned: readonly number[];
  /** On boards for parts of different woods. */
  readonly advice: readonly Complaint[];
}

/** A wish that fronts run through; without `wish` where there is none of them to be found among the blanks as one whole. */
export interface RunOfFronts extends RunSpec {
  readonly wish?: RunWish;
}

const STOCKS: readonly StockName[] = ['front', 'side', 'back', 'bottom'];

/**
 * What is to be sawn for a set of drawers from a plan's boards.
 * @returns complaints at `boards` and its entries: boards that no part can come out of, parts that no boards can give, cuts
 * that cannot have been made
 */
export const stockWork = (
  set: DrawerSet,
  spec: BoardsSpec,
  saw: Sawing,
  units: Notation,
): Result<StockWork> => {
  const planks = planksOf(spec);
  const listed = new Set(planks.flatMap(({ stocks }) => stocks));
  const rowsOf = (drawers: readonly Drawer[]) =>
    drawers.flatMap((drawer) =>
      parts({ drawers: [drawer], advice: [] }, units)
        .filter(({ part }) => listed.has(stockOf(part)))
        .map((part) => ({ drawer, part })),
    );
  const rows = rowsOf(madeOf(set));
  // A second try is of what is planned.
  const planned = rowsOf(drawersAndBoxes(set).map(({ made: _, ...each }) => each));
  const rules: BlankRules = {
    unit: unitOf(units),
    saw,
    allow: spec.allow,
    fits: fitting(planks, saw),
  };
  const whole = rows.flatMap(({ drawer, part }) => partBlanks(drawer, part, rules));
  const spares = planned
    .filter(({ part }, i) => planned.findIndex((row) => isAlike(row.part, part)) === i)
    .flatMap(({ drawer, part }) =>
      Array.from({ length: spec.spare[stockOf(part.part)] }, () => spareBlanks(drawer, part, rules)).flat(),
    );
  const blanks = [...whole, ...spares];
  const wrong = boardComplaints(
    spec,
    rows.map(({ part }) => part),
    saw,
  );
  const done = doneOf(spec, blanks, saw);
  if (!done.ok || wrong.length > 0) return refuse(...wrong, ...(done.ok ? [] : done.complaints));
  return accept({
    planks: planks.map((plank) => {
      const made = plank.copy === 1 ? done.value.get(plank.name) : undefined;
      return made === undefined ? plank : { ...plank, done: made };
    }),
    blanks,
    runs: runsOf(spec.runs, blanks),
    pinned: [],
    unlisted: STOCKS.filter((stock) => !listed.has(stock)),
    advice: adviseBoards(
      spec,
      rows.map(({ part }) => part),
    ),
  });
};

const planksOf = ({ boards }: BoardsSpec): Plank[] =>
  boards.flatMap(({ plank, count }) => Array.from({ length: count }, (_, i) => ({ ...plank, copy: i + 1 })));

/** Parts of which one second try serves both. */
const isAlike = (one: Part, other: Part): boolean =>
  one.part === other.part &&
  Math.abs(one.roughLength - other.roughLength) < EPSILON &&
  Math.abs(one.width - other.width) < EPSILON &&
  Math.abs(one.thickness - other.thickness) < EPSILON;

/** Whether any board has room for a blank with its ends cut off, defects apart; equal questions are answered once. */
const fitting = (planks: readonly Plank[], { ends }: Sawing): BlankRules['fits'] => {
  const kinds = planks.filter(({ copy }) => copy === 1);
  const widest = new Map<string, number>();
  const room = (plank: Plank, length: number): number => {
    const key = `${plank.name} ${length}`;
    const known = widest.get(key) ?? widestOf(plank.outline, length);
    widest.set(key, known);
    return known;
  };
  return ({ stock, thickness, eitherWay, ...size }: BlankSize) =>
    kinds.some((plank) => {
      const { stocks, clean } = plank;
      if (!stocks.includes(stock) || plank.thickness < thickness - EPSILON) return false;
      const off = (clean.left ? 0 : ends) + (clean.right ? 0 : ends);
      const lies = (length: number, width: number) => room(plank, length + off) >= width - DUST;
      return lies(size.length, size.width) || (eitherWay && lies(size.width, size.length));
    });
};

/** Less than this is no width that a board lacks, in mm. */
const DUST = 1e-3;

/** Each name takes the next of its drawer's equal fronts, over all lists. */
const runsOf = (runs: readonly RunSpec[], blanks: readonly PartBlank[]): RunOfFronts[] => {
  const taken = new Map<string, number>();
  return runs.map((run) => {
    const pieces = run.drawers.map((drawer) => {
      const index = (taken.get(drawer) ?? 0) + 1;
      taken.set(drawer, index);
      return blanks.findIndex(
        (blank) =>
          blank.part === 'front' &&
          blank.drawer === drawer &&
          blank.index === index &&
          blank.strip === undefined,
      );
    });
    return pieces.includes(-1) ? run : { ...run, wish: { kind: run.kind, pieces } };
  });
};
