import type { Complaint, Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { stepTowards } from './bisect.ts';
import { cornerKey, type EditedCorner } from './editedCorner.ts';
import { type Edit, editPlan } from './editPlan.ts';
import { listEdits, stepOf } from './planNumber.ts';
import { locksOf, type Snapshot, snapshot, type Work, withLocks } from './snapshot.ts';
import {
  addTail,
  evenOut,
  isTail,
  type Locked,
  linesOf,
  locksAfterAdding,
  locksAfterRemoving,
  mirror,
  moveLine,
  removeTail,
  setWidth,
  type TipWidths,
  widthsOf,
} from './widths.ts';

/** What came of moving something: as far as it could go, and what stopped it on the way. */
export interface Moved {
  readonly snapshot: Snapshot;
  readonly stop: readonly Complaint[];
}

const place = (
  { work, project }: Snapshot,
  corner: EditedCorner,
  widths: TipWidths,
  locked?: Locked,
): Result<Snapshot> => {
  const { units } = project;
  const text = editPlan(work.text, listEdits(corner.at, widths, unitOf(units)));
  const next: Work = { text, locks: work.locks };
  return snapshot(locked === undefined ? next : withLocks(next, cornerKey(corner), locked));
};

const placed = (
  now: Snapshot,
  corner: EditedCorner,
  widths: Result<TipWidths>,
  locked?: Locked,
): Result<Snapshot> => (widths.ok ? place(now, corner, widths.value, locked) : widths);

/**
 * Moves a line of a corner as far towards a distance from the reference edge as can be cut.
 * @param to mm
 */
export const dragLine = (now: Snapshot, corner: EditedCorner, line: number, to: number): Moved => {
  const widths = widthsOf(corner.joint);
  const locked = locksOf(now.work, cornerKey(corner));
  const by = to - (linesOf(widths)[line] ?? to);
  const reach = stepTowards(by, stepOf(unitOf(now.project.units)), (part) => {
    const moved = moveLine(widths, locked, line, part);
    if (!moved.ok) return moved;
    const judged = corner.judge(moved.value);
    return judged.ok ? moved : judged;
  });
  if (reach.value === undefined) return { snapshot: now, stop: reach.stop };
  const next = place(now, corner, reach.value);
  return next.ok ? { snapshot: next.value, stop: reach.stop } : { snapshot: now, stop: next.complaints };
};

const lockedOf = (now: Snapshot, corner: EditedCorner): Locked => locksOf(now.work, cornerKey(corner));

/** Gives one width of a corner the value that was typed, in mm. */
export const typeWidth = (
  now: Snapshot,
  corner: EditedCorner,
  i: number,
  value: number,
): Result<Snapshot> => {
  const widths = setWidth(widthsOf(corner.joint), lockedOf(now, corner), i, value);
  if (!widths.ok) return widths;
  const judged = corner.judge(widths.value);
  return judged.ok ? place(now, corner, widths.value) : judged;
};

/** One tail more: of equal or graded ones the plan's number goes up, of listed ones the others make room. */
export const oneMore = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  if (!corner.listed) return count(now, corner, corner.joint.tails.length + 1);
  const widths = widthsOf(corner.joint);
  const locked = lockedOf(now, corner);
  return placed(now, corner, addTail(widths, locked), locksAfterAdding(widths, locked));
};

/** One tail fewer: the highest, or tail `i` of the widths. */
export const oneFewer = (now: Snapshot, corner: EditedCorner, i?: number): Result<Snapshot> => {
  const { tails } = corner.joint;
  if (!corner.listed && i === undefined) return count(now, corner, tails.length - 1);
  const widths = widthsOf(corner.joint);
  const locked = lockedOf(now, corner);
  const which = i !== undefined && isTail(i) ? i : widths.length - 2;
  return placed(now, corner, removeTail(widths, locked, which), locksAfterRemoving(widths, locked, which));
};

/** Asks for so many tails; undefined leaves the number to the set. */
export const count = (
  { work }: Snapshot,
  { at }: EditedCorner,
  tails: number | undefined,
): Result<Snapshot> =>
  snapshot({
    ...work,
    text: editPlan(work.text, [
      { at: [...at, 'tails'], value: tails },
      { at: [...at, 'pins'], value: undefined },
    ]),
  });

/** As many tails, all equal again; with locks, equal beside what is locked. */
export const makeEven = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const { joint, at } = corner;
  const locked = lockedOf(now, corner);
  if (locked.size > 0) return placed(now, corner, evenOut(widthsOf(joint), locked, joint.width));
  const { work } = now;
  const edits: Edit[] = [
    { at: [...at, 'tails'], value: joint.tails.length },
    { at: [...at, 'pins'], value: undefined },
    { at: [...at, 'graded'], value: undefined },
    ...(corner.listed ? [{ at: [...at, 'halfPin'], value: undefined }] : []),
  ];
  return snapshot({ ...work, text: editPlan(work.text, edits) });
};

export const mirrored = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const widths = mirror(widthsOf(corner.joint));
  const judged = corner.judge(widths);
  if (!judged.ok) return judged;
  const last = widths.length - 1;
  return place(now, corner, widths, new Set([...lockedOf(now, corner)].map((i) => last - i)));
};

export const toggleLock = (now: Snapshot, corner: EditedCorner, i: number): Snapshot => {
  const locked = new Set(lockedOf(now, corner));
  if (!locked.delete(i)) locked.add(i);
  return { ...now, work: withLocks(now.work, cornerKey(corner), locked) };
};
