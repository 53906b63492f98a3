import { LEAST_SPACER } from '../../router/fingers/fingerSetting.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Range } from '../../units/range.ts';
import { allows, type CountRange, halfPinsFor, SAME_CHANGE } from './countRanges.ts';
import { leastChange } from './leastChange.ts';

/** A drawer whose front layout is sought. Lengths in mm. */
export interface Seeker {
  /** The tail width that needs no spacer: what it adds to its spacer is its tails' width. */
  readonly origin: number;
  /** Its possible counts, in rising order; no tail is narrower than `origin`. */
  readonly counts: readonly CountRange[];
}

export interface SpacerQuestion {
  readonly seekers: readonly Seeker[];
  /** Tail widths of drawers that keep their layout and belong to the family sum. */
  readonly kept: readonly number[];
  /** The different spacers of drawers that keep their layout: they count, and others may use them. */
  readonly keptSpacers: readonly number[];
  /** The set's tail width T lies between these. */
  readonly target: Range;
  /** The most different spacers. */
  readonly spacers: number;
}

/** The front layout of one drawer. */
export interface FoundLayout {
  readonly tails: number;
  readonly tip: number;
  readonly halfPin: { readonly lower: number; readonly upper: number };
}

export interface SpacerAnswer {
  readonly target: number;
  /** The sum over all drawers of (ln t - ln T)². */
  readonly sum: number;
  /** The sum over all drawers sought of the squares of both changes of half pins, in mm². */
  readonly change: number;
  /** How many different spacers there are. */
  readonly spacers: number;
  /** One for each drawer sought. */
  readonly layouts: readonly FoundLayout[];
}

/** Listed tails differ by as much where one spacer gives them: the digits of a plan, in mm. */
export const SAME_LISTED = 2e-4;

/** Family sums that differ by less are equal. */
const SAME_SUM = 1e-9;

/** A tail width that a spacer gives, where that ends the interval of some drawer. */
interface End {
  readonly log: number;
  /** Whether it is the least of an interval, to which a lower target is drawn, or the most, to which a higher one is. */
  readonly isLeast: boolean;
  readonly isMost: boolean;
}

/** A drawer sought, with all logarithms that are asked for again and again. */
interface Drawer {
  readonly seeker: Seeker;
  /** Which drawers it shares a tail width without spacer with, and so the spacer of any tail width. */
  readonly depth: number;
  /** Where its tails may be of any width, as intervals of logarithms, with a spacer between the fingers. */
  readonly free: readonly (readonly [from: number, to: number])[];
  /** The tail widths that the ends of all such intervals give it, by the spacer. */
  readonly ends: ReadonlyMap<number, End>;
  /** Those that cost no further spacer: without one, and with those of drawers that keep theirs. */
  readonly given: readonly number[];
}

/** What of a cell's drawers is decided: for each the logarithms that it may take, and whether it has the target itself. */
interface Choice {
  readonly below: number;
  readonly above: number;
  readonly floats: boolean;
  /** Nothing nearer will be sought for it. */
  readonly done: boolean;
}

/**
 * The layouts with equal tails in each drawer that need at most so many different spacers: of all of them those with the
 * least family sum, then with the least change of half pins; then with the fewer spacers, then with the fewer tails in the
 * first drawer that differs, then with the narrower tails. Undefined where there are none.
 *
 * Drawers that share a spacer are drawn to one width, as near to T as the narrowest of what they may have: so every width
 * is T itself, an end of some drawer's interval, or the one without a spacer. Between neighbouring ends, the cells of T, it
 * does not change which drawers may have T itself; the cells are gone through by a lower bound, all drawers as near to the
 * cell as they can be, until that exceeds the best sum. In a cell, drawer by drawer is given one of the widths that it may
 * have, and with a choice made the sum is a parabola in ln T between the middles of widths that a drawer may choose from.
 * Drawers of several joint depths share a spacer, where they do, at such an end only.
 */
export const searchSpacers = (question: SpacerQuestion): SpacerAnswer | undefined => {
  const { seekers, kept, keptSpacers, target } = question;
  const most = question.spacers - keptSpacers.length;
  if (most < 0) return undefined;
  const drawers = drawersOf(seekers, keptSpacers);
  const keptLogs = kept.map(Math.log);
  const [from, to] = [Math.log(target.least), Math.log(target.most)];
  const bounds = [
    ...new Set([
      from,
      to,
      ...seekers
        .flatMap(({ origin, counts }) =>
          counts.flatMap(({ least, most }) => [
            Math.log(Math.max(least, origin + LEAST_SPACER)),
            Math.log(most),
          ]),
        )
        .filter((log) => log > from && log < to),
    ]),
  ].sort((a, b) => a - b);
  const cells = bounds
    .map((start, i) => cellOf(drawers, keptLogs, start, bounds[i + 1] ?? start))
    .filter(({ bound }, i) => Number.isFinite(bound) && (i < bounds.length - 1 || bounds.length === 1))
    .sort((a, b) => a.bound - b.bound);

  let best = Number.POSITIVE_INFINITY;
  let found: SpacerAnswer[] = [];
  const keep = (answer: SpacerAnswer): void => {
    best = Math.min(best, answer.sum);
    found = [...found, answer].filter(({ sum }) => sum <= best + SAME_SUM);
  };

  /** With the widths chosen, every T of the cell that could be best. */
  const settle = (cell: Cell, choices: readonly Choice[]): void => {
    const middles = choices
      .filter(({ floats, below, above }) => !floats && Number.isFinite(below) && Number.isFinite(above))
      .map(({ below, above }) => (below + above) / 2)
      .filter((middle) => middle > cell.from && middle < cell.to);
    const marks = [cell.from, ...middles.sort((a, b) => a - b), cell.to];
    for (let i = 1; i < marks.length; i++) {
      const [start = 0, end = 0] = [marks[i - 1], marks[i]];
      const within = (start + end) / 2;
      const logs = choices.map(({ floats, below, above }) =>
        floats ? undefined : within - below <= above - within ? below : above,
      );
      const fixed = [...keptLogs, ...logs.filter((log) => log !== undefined)];
      if (fixed.length === 0) {
        const same = leastChange(
          seekers.map(({ counts }) =>
            counts.filter((count) => allows(count, Math.exp(start)) && allows(count, Math.exp(end))),
          ),
          { least: Math.exp(start), most: Math.exp(end) },
          best <= SAME_SUM ? Math.min(...found.map(({ change }) => change)) : Number.POSITIVE_INFINITY,
        );
        if (same !== undefined)
          keep(
            answerOf(
              question,
              same.tip,
              0,
              seekers.map(() => same.tip),
              same.tails,
            ),
          );
        continue;
      }
      const mean = fixed.reduce((sum, log) => sum + log, 0) / fixed.length;
      const at = Math.min(end, Math.max(start, mean));
      const sum = fixed.reduce((total, log) => total + (log - at) ** 2, 0);
      if (sum > best + SAME_SUM) continue;
      keep(
        answerOf(
          question,
          Math.exp(at),
          sum,
          logs.map((log) => Math.exp(log ?? at)),
        ),
      );
    }
  };

  const choose = (cell: Cell, choices: readonly Choice[], left: number): void => {
    let bound = cell.keptBound;
    let next = -1;
    let gain = 0;
    for (const [i, choice] of choices.entries()) {
      const ideal = cell.ideals[i] ?? 0;
      const now = distance(choice, cell);
      bound += choice.done || left === 0 ? now : ideal;
      // A drawer that has T itself can have no better.
      if (!choice.done && !choice.floats && (next < 0 || now - ideal > gain)) [next, gain] = [i, now - ideal];
    }
    if (!Number.isFinite(bound) || bound > best + SAME_SUM) return;
    const drawer = drawers[next];
    const current = choices[next];
    if (left === 0 || drawer === undefined || current === undefined) {
      settle(cell, choices);
      return;
    }
    const spare = best + SAME_SUM - bound + (cell.ideals[next] ?? 0);
    const give = (given: (each: Drawer, i: number) => Choice): void =>
      choose(
        cell,
        drawers.map((each, i) => (i === next ? { ...given(each, i), done: true } : given(each, i))),
        left - 1,
      );
    if (cell.floats[next])
      give((each, i) => {
        const choice = choices[i] ?? NOTHING;
        return each.depth === drawer.depth && cell.floats[i] ? { ...choice, floats: true } : choice;
      });
    const nearer = [...drawer.ends]
      .filter(([, { log, isLeast, isMost }]) =>
        log <= cell.from ? isMost && log > current.below : isLeast && log < current.above,
      )
      .map(([spacer, { log }]) => ({ spacer, cost: squareTo(log, cell) }))
      .sort((a, b) => a.cost - b.cost);
    for (const { spacer, cost } of nearer) {
      if (cost > spare) break;
      give((each, i) => {
        const choice = choices[i] ?? NOTHING;
        const end = each.ends.get(spacer);
        return end === undefined ? choice : nearerOf(choice, end.log, cell);
      });
    }
    if (Number.isFinite(distance(current, cell)))
      choose(
        cell,
        choices.map((choice, i) => (i === next ? { ...choice, done: true } : choice)),
        left,
      );
  };

  for (const cell of cells) {
    if (cell.bound > best + SAME_SUM) break;
    choose(cell, cell.given, most);
  }
  return preferred(found);
};

const NOTHING: Choice = {
  below: Number.NEGATIVE_INFINITY,
  above: Number.POSITIVE_INFINITY,
  floats: false,
  done: false,
};

/** The target between two neighbouring ends, in logarithms. */
interface Cell {
  readonly from: number;
  readonly to: number;
  /** Whether each drawer may have the target itself. */
  readonly floats: readonly boolean[];
  /** What each drawer adds at least to the family sum, and those that keep their layout. */
  readonly ideals: readonly number[];
  readonly keptBound: number;
  readonly bound: number;
  /** What each drawer may take without a further spacer. */
  readonly given: readonly Choice[];
}

const cellOf = (drawers: readonly Drawer[], kept: readonly number[], from: number, to: number): Cell => {
  const span = { from, to };
  const floats = drawers.map(({ free }) =>
    free.some(([start, end]) => start <= from + EPSILON && end >= to - EPSILON),
  );
  const given = drawers.map(({ given }) =>
    given.reduce((choice, log) => nearerOf(choice, log, span), NOTHING),
  );
  const ideals = drawers.map(({ ends }, i) =>
    floats[i]
      ? 0
      : Math.min(
          distance(given[i] ?? NOTHING, span),
          ...[...ends.values()].map(({ log }) => squareTo(log, span)),
        ),
  );
  const keptBound = kept.reduce((sum, log) => sum + squareTo(log, span), 0);
  return {
    ...span,
    floats,
    ideals,
    keptBound,
    bound: ideals.reduce((sum, ideal) => sum + ideal, keptBound),
    given,
  };
};

type Span = Pick<Cell, 'from' | 'to'>;

/** The square of how far a logarithm lies outside a cell. */
const squareTo = (log: number, { from, to }: Span): number => Math.max(0, from - log, log - to) ** 2;

const distance = ({ below, above, floats }: Choice, cell: Span): number =>
  floats ? 0 : Math.min(squareTo(below, cell), squareTo(above, cell));

/** The choice with one more width; only the nearest on either side of the cell matter. */
const nearerOf = (choice: Choice, log: number, { from }: Span): Choice =>
  log <= from
    ? { ...choice, below: Math.max(choice.below, log) }
    : { ...choice, above: Math.min(choice.above, log) };

const drawersOf = (seekers: readonly Seeker[], keptSpacers: readonly number[]): Drawer[] => {
  const freeOf = ({ origin, counts }: Seeker): (readonly [number, number])[] =>
    counts.flatMap(({ least, most }): (readonly [number, number])[] => {
      const start = Math.max(least, origin + LEAST_SPACER);
      return start <= most + EPSILON ? [[start, Math.max(start, most)]] : [];
    });
  const spacersAt = (end: 0 | 1): number[] =>
    distinct(seekers.flatMap((seeker) => freeOf(seeker).map((ends) => ends[end] - seeker.origin)));
  const [leasts, mosts] = [spacersAt(0), spacersAt(1)];
  const spacers = distinct([...leasts, ...mosts]).map((width) => ({
    width,
    isLeast: holds(leasts, width),
    isMost: holds(mosts, width),
  }));
  const origins = distinct(seekers.map(({ origin }) => origin));
  return seekers.map((seeker): Drawer => {
    const { origin, counts } = seeker;
    const takes = (width: number): boolean => counts.some((count) => allows(count, origin + width));
    return {
      seeker,
      depth: origins.findIndex((each) => Math.abs(each - origin) <= EPSILON),
      free: freeOf(seeker).map(([start, end]) => [Math.log(start), Math.log(end)]),
      ends: new Map(
        spacers.flatMap(({ width, ...end }, i): [number, End][] =>
          takes(width) ? [[i, { ...end, log: Math.log(origin + width) }]] : [],
        ),
      ),
      given: [
        ...(takes(0) ? [origin] : []),
        ...keptSpacers.flatMap((width) => nearestTip(counts, origin + width) ?? []),
      ].map(Math.log),
    };
  });
};

/** The tail width that a listed drawer's spacer gives, where some count has it to the digits of a plan. */
const nearestTip = (counts: readonly CountRange[], tip: number): number | undefined =>
  counts
    .map(({ least, most }) => Math.min(most, Math.max(least, tip)))
    .find((each) => Math.abs(each - tip) <= SAME_LISTED);

/** Whether a number is among others. */
const holds = (numbers: readonly number[], sought: number): boolean =>
  numbers.some((each) => Math.abs(each - sought) <= EPSILON);

/** The different numbers, in rising order; those that only floats tell apart are equal, unless more is given. */
export const distinct = (numbers: readonly number[], same = EPSILON): number[] =>
  [...numbers].sort((a, b) => a - b).filter((each, i, all) => i === 0 || each - (all[i - 1] ?? each) > same);

/** The answer with every drawer's tail width decided, and its counts too, or those that change its half pins least. */
const answerOf = (
  { seekers, keptSpacers }: SpacerQuestion,
  target: number,
  sum: number,
  tips: readonly number[],
  counts?: readonly number[],
): SpacerAnswer => {
  let change = 0;
  const layouts = seekers.map((seeker, i): FoundLayout => {
    const tip = tips[i] ?? 0;
    let best: (FoundLayout & { readonly change: number }) | undefined;
    for (const count of seeker.counts) {
      if (counts === undefined ? !allows(count, tip) : count.tails !== counts[i]) continue;
      const { lower, upper, change } = halfPinsFor(count, tip);
      if (best === undefined || change < best.change - SAME_CHANGE)
        best = { tails: count.tails, tip, halfPin: { lower, upper }, change };
    }
    if (best === undefined) return { tails: 0, tip, halfPin: { lower: 0, upper: 0 } };
    change += best.change;
    const { change: _, ...layout } = best;
    return layout;
  });
  const used = seekers.flatMap(({ origin }, i) => {
    const spacer = (tips[i] ?? 0) - origin;
    return spacer < LEAST_SPACER / 2 ? [] : [spacer];
  });
  return { target, sum, change, spacers: distinct([...keptSpacers, ...used], SAME_LISTED).length, layouts };
};

/** Of answers with equal sums, the one that is preferred. */
const preferred = (answers: readonly SpacerAnswer[]): SpacerAnswer | undefined => {
  const least = (value: (answer: SpacerAnswer) => number, of: readonly SpacerAnswer[], same: number) => {
    const bound = Math.min(...of.map(value)) + same;
    return of.filter((answer) => value(answer) <= bound);
  };
  let left = least(({ change }) => change, answers, SAME_CHANGE);
  left = least(({ spacers }) => spacers, left, 0);
  const count = answers[0]?.layouts.length ?? 0;
  for (let i = 0; i < count; i++) left = least(({ layouts }) => layouts[i]?.tails ?? 0, left, 0);
  for (let i = 0; i < count; i++) left = least(({ layouts }) => layouts[i]?.tip ?? 0, left, EPSILON);
  return left[0];
};
