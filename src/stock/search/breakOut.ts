import type { Blank, Breakout, PlankLayout } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import { layOutPlank } from '../sawing/layOutPlank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { isBegun } from './bin.ts';
import { asTheyLie, frontsFromLeft } from './halfTurn.ts';
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
  let told: Told = () => {};
  if (onProgress !== undefined) {
    const first = asTheyLie(layoutAtOnce(planks, wanted, runs, saw), given, saw.kerf);
    told = ofPart(
      rising((share) => onProgress(share, first)),
      FIRST,
      ALMOST,
    );
    told(0);
  }
  const search = (boards: readonly Plank[], of: Told) => searchFor(boards, wanted, runs, saw, effort, of);
  const best = planks.some(isBegun) ? goneOn(planks, told, search) : search(planks, told);
  const answer = asTheyLie(best, given, saw.kerf);
  onProgress?.(1, answer);
  return answer;
};

/** What share is done when the first layout is known, and before the best one is told. */
const [FIRST, ALMOST] = [0.05, 0.99];

/** Where the cuts made so far are the first of what would be cut out of the whole boards, that stays the answer. */
const goneOn = (
  planks: readonly Plank[],
  told: Told,
  search: (planks: readonly Plank[], told: Told) => Breakout,
): Breakout => {
  const whole = search(planks.map(withoutCuts), ofPart(told, 0, 0.5));
  return goesOn(whole, planks)
    ? { ...whole, boards: whole.boards.map((layout) => withCutAlready(layout, planks)) }
    : search(planks, ofPart(told, 0.5, 1));
};

const withoutCuts = ({ done: _, ...plank }: Plank): Plank => plank;

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

const withCutAlready = (layout: PlankLayout, planks: readonly Plank[]): PlankLayout => {
  const done = new Set(planks[layout.plank]?.done?.blanks.map(({ piece }) => piece));
  return {
    ...layout,
    blanks: layout.blanks.map((blank) =>
      done.has(blank.piece) ? { ...blank, why: { kind: 'cut already' } } : blank,
    ),
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
  const begun = planks.filter(isBegun).length;
  const blanks = boards.flatMap(({ plank, blanks }): (Blank & { plank: number })[] =>
    blanks.map((blank) => ({ ...blank, plank })),
  );
  return {
    boards,
    runs: metRuns(runs, active, blanks),
    missing: supply.flatMap((pieces, type) =>
      (missing[type] ?? 0) === 0 ? [] : pieces.filter((piece) => !wanted[piece]?.spare),
    ),
    ...(bound === undefined ? {} : { bound: bound + begun }),
  };
};
