import type { Blank, Breakout, PlankLayout } from '../breakout.ts';
import { PRINTED, settlePins } from '../pins/settlePins.ts';
import type { Plank } from '../plank.ts';
import { layOutPlank } from '../sawing/layOutPlank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { isBegun, isOpened } from './bin.ts';
import { asTheyLie, frontsFromLeft, pinsFromLeft } from './halfTurn.ts';
import { metRuns, withoutWorst } from './runs.ts';
import { type Solution, solve, type Task } from './solve.ts';
import { ofPart, rising, type Told } from './told.ts';

export interface BreakOutOptions {
  /** Multiplies the steps that the search may take; 1 where nothing is said. */
  readonly effort?: number;
  /**
   * Told as the search goes on: what share of it is done, from 0 to 1 and never less than before, by its own steps; and the
   * best layout so far.
   */
  readonly onProgress?: (share: number, best: Breakout) => void;
}

/** Steps at effort 1, those of patterns for each board: a second or two for a chest of nine drawers. */
const STEPS = { patterns: 250_000, choosing: 150_000, rounds: 1_500_000 };

/**
 * Which wanted piece comes out of which board, and the cuts that free it. Boards and wanted pieces are told by their places in
 * the lists. The same input gives the same answer.
 */
export const breakOut = (
  given: readonly Plank[],
  wanted: readonly Wanted[],
  runs: readonly RunWish[],
  saw: Saw,
  { effort = 1, onProgress }: BreakOutOptions = {},
): Breakout => {
  // Blanks are laid out from the left: where fronts begin at the right end, the board is turned meanwhile.
  const planks = frontsFromLeft(given, saw.kerf);
  const pieces = pinsFromLeft(settlePins(given, wanted, saw), given, saw.kerf);
  let told: Told = () => {};
  if (onProgress !== undefined) {
    const first = asTheyLie(layoutAtOnce(planks, pieces, runs, saw), given, saw.kerf);
    told = ofPart(
      rising((share) => onProgress(share, first)),
      FIRST,
      ALMOST,
    );
    told(0);
  }
  const search: Search = (boards, own, of) => searchFor(boards, own, runs, saw, effort, of);
  const isFree = pieces.every(({ pin }) => pin === undefined) && !planks.some(isBegun);
  const best = isFree ? search(planks, pieces, told) : goneOn(planks, pieces, told, search);
  const answer = asTheyLie(best, given, saw.kerf);
  onProgress?.(1, answer);
  return answer;
};

/** What share is done when the first layout is known, and before the best one is told. */
const [FIRST, ALMOST] = [0.05, 0.99];

type Search = (planks: readonly Plank[], wanted: readonly Wanted[], told: Told) => Breakout;

/** Where what has been cut and pinned is part of what would be cut out of the whole boards, that stays the answer. */
const goneOn = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  told: Told,
  search: Search,
): Breakout => {
  const whole = search(planks.map(withoutCuts), wanted.map(withoutPin), ofPart(told, 0, 0.5));
  if (goesOn(whole, planks) && keepsPins(whole, wanted))
    return { ...whole, boards: whole.boards.map((layout) => asGiven(layout, planks, wanted)) };
  const found = search(planks, wanted, ofPart(told, 0.5, 1));
  // What cannot be done with the whole boards, and nothing pinned, cannot be done so either.
  return found.bound === undefined ? found : { ...found, bound: Math.max(found.bound, whole.bound ?? 0) };
};

const withoutCuts = ({ done: _, ...plank }: Plank): Plank => plank;
const withoutPin = ({ pin: _, ...piece }: Wanted): Wanted => piece;

/** Whether each pinned piece lies where it was pinned. */
const keepsPins = ({ boards }: Breakout, wanted: readonly Wanted[]): boolean =>
  wanted.every(({ pin, length, width }, index) => {
    if (pin === undefined) return true;
    const own = boards
      .find(({ plank }) => plank === pin.plank)
      ?.blanks.find((blank) => blank.wanted === index);
    const { place } = pin;
    if (own === undefined || place === undefined) return own !== undefined;
    const isAcross = length !== width && Math.abs(own.length - width) < PRINTED;
    return (
      Math.abs(own.x - place.x) < PRINTED &&
      Math.abs(own.y - place.y) < PRINTED &&
      own.turned === place.turned &&
      isAcross === place.across
    );
  });

/** Places that were told less finely are still the same, in mm. */
const DUST = 1e-3;

/** Whether a layout's cuts and blanks begin with those that have been made. */
const goesOn = ({ boards }: Breakout, planks: readonly Plank[]): boolean =>
  planks.every(({ done }, index) => {
    const { cuts = [], blanks = [] } = done ?? {};
    const layout = boards.find(({ plank }) => plank === index);
    return (
      cuts.every(({ kind, piece, at }, k) => {
        const own = layout?.cuts[k];
        return own?.kind === kind && own.piece === piece && Math.abs(own.at - at) < DUST;
      }) &&
      blanks.every((blank) =>
        layout?.blanks.some(
          ({ wanted, turned, piece }) =>
            wanted === blank.wanted && turned === blank.turned && piece === blank.piece,
        ),
      )
    );
  });

/** A layout with what has been cut and pinned told as that. */
const asGiven = (layout: PlankLayout, planks: readonly Plank[], wanted: readonly Wanted[]): PlankLayout => {
  const done = new Set(planks[layout.plank]?.done?.blanks.map(({ piece }) => piece));
  return {
    ...layout,
    blanks: layout.blanks.map((blank): Blank => {
      if (done.has(blank.piece)) return { ...blank, why: { kind: 'cut already' } };
      return wanted[blank.wanted]?.pin === undefined ? blank : { ...blank, why: { kind: 'pinned' } };
    }),
  };
};

const taskOf = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  runs: readonly RunWish[],
  saw: Saw,
): { readonly task: Task; readonly active: readonly RunWish[] } => {
  const cut = new Set(planks.flatMap(({ done }) => (done?.blanks ?? []).map(({ wanted }) => wanted)));
  return {
    task: { planks, wanted, saw, open: wanted.flatMap((_, i) => (cut.has(i) ? [] : [i])) },
    active: runs.filter(({ pieces }) => pieces.length > 0 && pieces.every((piece) => !cut.has(piece))),
  };
};

const layoutAtOnce = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  runs: readonly RunWish[],
  saw: Saw,
): Breakout => {
  const { task, active } = taskOf(planks, wanted, runs, saw);
  return breakoutOf(task, runs, active, solve(task, active, STEPS));
};

const searchFor = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  runs: readonly RunWish[],
  saw: Saw,
  effort: number,
  told: Told,
): Breakout => {
  const { task, active: first } = taskOf(planks, wanted, runs, saw);
  const steps = {
    patterns: STEPS.patterns * effort * Math.max(4, planks.length),
    choosing: STEPS.choosing * effort,
    rounds: STEPS.rounds * effort,
  };
  let active = first;
  let done = 0;
  const next = (): Solution => {
    // Where lists may have to be given up, something is left for the searches after that.
    const from = done;
    done = active.length > 0 ? from + 0.8 * (1 - from) : 1;
    return solve(task, active, steps, ofPart(told, from, done));
  };
  let solution = next();
  while (active.length > 0 && solution.missing.some((number) => number > 0)) {
    active = withoutWorst(active, solution);
    solution = next();
  }
  return breakoutOf(task, runs, active, solution);
};

const breakoutOf = (
  task: Task,
  runs: readonly RunWish[],
  active: readonly RunWish[],
  solution: Solution,
): Breakout => {
  const { planks, wanted } = task;
  const { types, missing, bound } = solution;
  const supply = types.map(({ pieces }) => [...pieces]);
  const boards = planks.flatMap((plank, index): PlankLayout[] => {
    const isUsed = isBegun(plank) || solution.taken.some(({ pool }) => pool.bin.plank === index);
    return isUsed ? [layOutPlank(index, task, solution, supply)] : [];
  });
  const opened = planks.filter((plank, index) => isOpened(plank, index, types)).length;
  const blanks = boards.flatMap(({ plank, blanks }): (Blank & { plank: number })[] =>
    blanks.map((blank) => ({ ...blank, plank })),
  );
  return {
    boards,
    runs: metRuns(runs, active, blanks),
    missing: supply.flatMap((pieces, type) =>
      (missing[type] ?? 0) === 0 ? [] : pieces.filter((piece) => !wanted[piece]?.spare),
    ),
    ...(bound === undefined ? {} : { bound: bound + opened }),
  };
};
