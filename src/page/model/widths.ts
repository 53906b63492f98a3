import { type Joint, jointSpan } from '../../joint/joint.ts';
import type { HalfPins, Spacing } from '../../joint/jointSpec.ts';
import { isTail, widthName } from '../../joint/widthName.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';

/**
 * Every width at the tip level from the reference edge up: half pin, tail, pin, tail … half pin. Those with even numbers
 * are pins, those with odd numbers tails; line `i` lies between width `i` and the next.
 */
export type TipWidths = readonly number[];

/** Numbers of the widths that are to stay as they are. */
export type Locked = ReadonlySet<number>;

export const widthsOf = (joint: Joint): TipWidths => {
  const [from, to] = jointSpan(joint);
  const lines = [from, ...joint.tails.flatMap(({ tip }) => tip), to];
  return lines.slice(1).map((line, i) => line - (lines[i] ?? from));
};

/** Where each line lies, from the reference edge; the widths begin at `from`. */
export const linesOf = (widths: TipWidths, from = 0): number[] => {
  let sum = from;
  return widths.slice(0, -1).map((width) => {
    sum += width;
    return sum;
  });
};

export const total = (widths: TipWidths): number => widths.reduce((sum, width) => sum + width, 0);

/** The locked widths of a corner, all of which are listed. */
export const lockedIn = (spacing: Spacing): Locked =>
  new Set(spacing.kind === 'listed' ? spacing.locked : undefined);

/** The same widths as a plan lists them. */
export const listed = (widths: TipWidths): { spacing: Spacing; halfPin: HalfPins } => {
  const inner = widths.slice(1, -1);
  const pins = inner.filter((_, i) => i % 2 === 1);
  return {
    spacing: { kind: 'listed', tails: inner.filter((_, i) => i % 2 === 0), ...(pins.length > 0 && { pins }) },
    halfPin: { lower: widths[0] ?? 0, upper: widths.at(-1) ?? 0 },
  };
};

/** Why a width is left as it is. */
export const lockedAt = (widths: TipWidths, i: number): Complaint => ({
  at: [],
  says: say`${widthName(i, widths.length)} is locked at ${mm(widths[i] ?? 0)}`,
  hint: say`unlocking it`,
});

/** Why each locked width is left as it is. */
export const allLocked = (widths: TipWidths, locked: Locked): Complaint[] =>
  [...locked].sort((a, b) => a - b).map((i) => lockedAt(widths, i));

/**
 * The locks that are in the way of what does not work: each without which it would, or all of them where only that helps.
 * @param works whether it does with other locks
 */
export const locksInTheWay = (
  widths: TipWidths,
  locked: Locked,
  works: (locked: Locked) => boolean,
): Complaint[] => {
  if (locked.size === 0 || !works(new Set())) return [];
  const alone = [...locked].filter((i) => works(new Set([...locked].filter((other) => other !== i))));
  return allLocked(widths, alone.length > 0 ? new Set(alone) : locked);
};

/**
 * Moves a line up (down, where negative). The nearest width on either side that is not locked gives or takes; locked
 * ones between move along.
 */
export const moveLine = (widths: TipWidths, locked: Locked, line: number, by: number): Result<TipWidths> => {
  let below = line;
  while (below >= 0 && locked.has(below)) below--;
  let above = line + 1;
  while (above < widths.length && locked.has(above)) above++;
  if (below < 0) return refuse(lockedAt(widths, line));
  if (above >= widths.length) return refuse(lockedAt(widths, line + 1));
  return accept(widths.map((width, i) => (i === below ? width + by : i === above ? width - by : width)));
};

/** Gives a width a new value; the lines above it move, or those below it where those above cannot. */
export const setWidth = (widths: TipWidths, locked: Locked, i: number, value: number): Result<TipWidths> => {
  if (locked.has(i)) return refuse(lockedAt(widths, i));
  const by = value - (widths[i] ?? 0);
  const up = moveEnd(widths, locked, i, by, 1);
  if (up.ok || i === 0) return up;
  const down = moveEnd(widths, locked, i, by, -1);
  return down.ok || i === widths.length - 1 ? down : up;
};

/**
 * Gives a tail a new width where a guide cuts it: pins stay as wide as the cutter left them, and the next tail or half pin
 * makes room. Where none can, a pin does.
 */
export const setTail = (widths: TipWidths, locked: Locked, i: number, value: number): Result<TipWidths> => {
  const pins = widths.flatMap((_, j) => (isTail(j) || j === 0 || j === widths.length - 1 ? [] : [j]));
  const set = setWidth(widths, new Set([...locked, ...pins]), i, value);
  return set.ok ? set : setWidth(widths, locked, i, value);
};

/** Lets the next width that is not locked, upward or downward, make room for a change of width `i`. */
const moveEnd = (
  widths: TipWidths,
  locked: Locked,
  i: number,
  by: number,
  way: 1 | -1,
): Result<TipWidths> => {
  let other = i + way;
  while (other >= 0 && other < widths.length && locked.has(other)) other += way;
  if (other < 0 || other >= widths.length) return refuse(lockedAt(widths, i + way));
  return accept(widths.map((width, j) => (j === i ? width + by : j === other ? width - by : width)));
};

/** Scales the tails that are not locked, all in one ratio, so that everything fills the board's width. */
export const fill = (widths: TipWidths, locked: Locked, boardWidth: number): Result<TipWidths> => {
  const free = (i: number): boolean => isTail(i) && !locked.has(i);
  const room = widths.reduce((sum, width, i) => (free(i) ? sum + width : sum), 0);
  const left = boardWidth - total(widths) + room;
  if (locked.size > 0 && (room <= 0 || left <= 0)) return refuse(...allLocked(widths, locked));
  const ratio = left / room;
  return accept(widths.map((width, i) => (free(i) ? width * ratio : width)));
};

export const mirror = (widths: TipWidths): TipWidths => widths.toReversed();

/** Puts another tail and a pin above the highest tail, as wide as the mean of those that are not locked; tails make room. */
export const addTail = (widths: TipWidths, locked: Locked): Result<TipWidths> => {
  const last = widths.length - 1;
  // The pin of the second tail is as wide as the half pins.
  const isPin = (i: number): boolean => !isTail(i) && (last === 2 || (i > 0 && i < last));
  const typical = (is: (i: number) => boolean): number => {
    const all = widths.filter((_, i) => is(i));
    const free = widths.filter((_, i) => is(i) && !locked.has(i));
    return mean(free.length > 0 ? free : all);
  };
  const grown = [...widths.slice(0, -1), typical(isPin), typical(isTail), ...widths.slice(-1)];
  return fill(grown, raise(locked, widths.length - 1, 2), total(widths));
};

/** Takes a tail out, and the pin above it (below it, for the highest); the other tails share its room. */
export const removeTail = (widths: TipWidths, locked: Locked, i: number): Result<TipWidths> => {
  if (widths.length <= 3) return refuse({ at: ['tails'], says: say`a corner needs at least one tail` });
  const from = removedFrom(widths, i);
  const held = [from, from + 1].filter((each) => locked.has(each));
  if (held.length > 0) return refuse(...held.map((each) => lockedAt(widths, each)));
  return fill([...widths.slice(0, from), ...widths.slice(from + 2)], raise(locked, from, -2), total(widths));
};

/** The first of the two widths that go with tail `i`. */
const removedFrom = (widths: TipWidths, i: number): number => (i === widths.length - 2 ? i - 1 : i);

const mean = (values: readonly number[]): number => total(values) / values.length;

/** Locks after widths were put in or taken out at `from`. */
const raise = (locked: Locked, from: number, by: 2 | -2): Set<number> =>
  new Set(
    [...locked].flatMap((i) => {
      if (i < from) return [i];
      return by < 0 && i < from - by ? [] : [i + by];
    }),
  );

export const locksAfterAdding = (widths: TipWidths, locked: Locked): Set<number> =>
  raise(locked, widths.length - 1, 2);

export const locksAfterRemoving = (widths: TipWidths, locked: Locked, i: number): Set<number> =>
  raise(locked, removedFrom(widths, i), -2);

/** All tails that are not locked as wide as each other, and so all pins. */
export const evenOut = (widths: TipWidths, locked: Locked, boardWidth: number): Result<TipWidths> => {
  const freePins = widths.filter((_, i) => !isTail(i) && i > 0 && i < widths.length - 1 && !locked.has(i));
  const pin = mean(freePins);
  const level = widths.map((width, i) => {
    if (locked.has(i) || i === 0 || i === widths.length - 1) return width;
    return isTail(i) ? 1 : pin;
  });
  return fill(level, locked, boardWidth);
};
