import { isTail } from '../../joint/widthName.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Edit } from '../text/edit.ts';
import { editPlan } from '../text/editPlan.ts';
import { stepTowards } from './bisect.ts';
import { cornerOf, type EditedCorner } from './editedCorner.ts';
import { keepHalfPins, listCorner, spaceEvenly, ungroup } from './listCorner.ts';
import { listedWidths, stepOf } from './planNumber.ts';
import { preview, type Snapshot, snapshot } from './snapshot.ts';
import {
  addTail,
  allLocked,
  evenOut,
  type Locked,
  linesOf,
  locksAfterAdding,
  locksAfterRemoving,
  locksInTheWay,
  mirror,
  moveLine,
  removeTail,
  setTail,
  setWidth,
  type TipWidths,
  total,
  widthsOf,
} from './widths.ts';
import { valueAt, writtenPlan } from './writtenPlan.ts';

/** The result of a movement: as far as it was possible, and the complaints that stopped it. */
export interface Moved {
  readonly snapshot: Snapshot;
  readonly stop: readonly Complaint[];
}

/** The same while a hand moves: the corner, and the plan where the corner does not do alone. */
export interface Preview {
  readonly corner: EditedCorner;
  readonly stop: readonly Complaint[];
  readonly moved?: Moved;
}

/** What a movement of the plan makes of its corner. */
export const previewOf = (moved: Moved, corner: EditedCorner): Preview => ({
  corner: cornerOf(moved.snapshot.project, corner.ref) ?? corner,
  stop: moved.stop,
  moved,
});

const writeWidths = (
  now: Snapshot,
  corner: EditedCorner,
  widths: TipWidths,
  locked: Locked = corner.locked,
  before: TipWidths = keptBefore(corner),
): Result<Snapshot> => {
  const { set, units } = now.project;
  const specs = set.drawers.map(({ spec }) => spec);
  const plan = writtenPlan(now.text);
  const edits = listCorner(corner.ref, { widths, locked, before }, specs, plan, unitOf(units));
  const next = preview(now, edits);
  return next.ok ? next : refuse(...next.complaints, ...allLocked(widths, locked));
};

const writeIfFound = (
  now: Snapshot,
  corner: EditedCorner,
  widths: Result<TipWidths>,
  locked?: Locked,
): Result<Snapshot> => (widths.ok ? writeWidths(now, corner, widths.value, locked) : widths);

/** The widths of a corner that keep all their digits where they stay as they are: those listed, and those that spacers give. */
const keptBefore = ({ listed, fingers, joint }: EditedCorner): TipWidths =>
  listed || fingers !== undefined ? widthsOf(joint) : [];

/**
 * Widths and the corner with them, where it can be cut; where locks are in the way of that, they are what is said first.
 * @param move makes the widths under some locks
 * @param asListed the widths as the plan lists them under those
 */
export const judgedUnder = (
  { joint, locked, judge }: EditedCorner,
  move: (locked: Locked) => Result<TipWidths>,
  asListed: (widths: TipWidths, locked: Locked) => TipWidths = (widths) => widths,
): Result<{ readonly widths: TipWidths; readonly corner: EditedCorner }> => {
  const widths = move(locked);
  if (!widths.ok) return widths;
  const judged = judge(asListed(widths.value, locked));
  if (judged.ok) return accept({ widths: widths.value, corner: judged.value });
  const locks = locksInTheWay(widthsOf(joint), locked, (held) => {
    const freer = move(held);
    return freer.ok && judge(asListed(freer.value, held)).ok;
  });
  return refuse(...locks, ...judged.complaints);
};

/** The widths after a line has been moved, and the corner with them as a plan lists them, as far as it can be cut. */
const reachLine = ({ project }: Snapshot, corner: EditedCorner, line: number, to: number) => {
  const unit = unitOf(project.units);
  const before = widthsOf(corner.joint);
  const from = linesOf(before, corner.joint.shoulder.lower)[line] ?? to;
  return stepTowards(to - from, stepOf(unit), (part) =>
    judgedUnder(
      corner,
      (locked) => moveLine(before, locked, line, part),
      (widths, locked) => listedWidths(widths, unit, locked, keptBefore(corner)),
    ),
  );
};

/**
 * Moves a line of a corner towards a distance from the reference edge, as far as the corner can be cut.
 * @param to mm
 */
export const dragLine = (now: Snapshot, corner: EditedCorner, line: number, to: number): Moved => {
  const { value, stop } = reachLine(now, corner, line, to);
  if (value === undefined) return { snapshot: now, stop };
  const next = writeWidths(now, corner, value.widths);
  return next.ok ? { snapshot: next.value, stop } : { snapshot: now, stop: next.complaints };
};

/** The corner after the same move, where it is by hand: with tools, the rest of the set has to agree. */
export const previewLine = (now: Snapshot, corner: EditedCorner, line: number, to: number): Preview => {
  if (now.project.cutting !== undefined) return previewOf(dragLine(now, corner, line, to), corner);
  const { value, stop } = reachLine(now, corner, line, to);
  return { corner: value?.corner ?? corner, stop };
};

/**
 * Moves the spacer of pair `i` towards a width in mm, as far as the corner can be cut: its tail becomes wider by as much,
 * in all its digits.
 */
export const dragSpacer = (now: Snapshot, corner: EditedCorner, i: number, to: number): Moved => {
  const { fingers, locked } = corner;
  const pair = fingers?.setting.pairs[i];
  if (fingers === undefined || pair === undefined) return { snapshot: now, stop: [] };
  const before = widthsOf(corner.joint);
  const tail = 2 * i + 1;
  /** What its tail has beside the spacer; a pair may stand open by less than a spacer. */
  const rest = (before[tail] ?? 0) - (pair.to - pair.from - fingers.together);
  const { value, stop } = stepTowards(to - pair.spacer, stepOf(unitOf(now.project.units)), (part) =>
    judgedUnder(corner, (held) => setTail(before, held, tail, rest + pair.spacer + part)),
  );
  if (value === undefined) return { snapshot: now, stop };
  const { widths } = value;
  const kept = before.map((width, j) => (j === tail ? (widths[j] ?? width) : width));
  const next = writeWidths(now, corner, widths, locked, kept);
  return next.ok ? { snapshot: next.value, stop } : { snapshot: now, stop: next.complaints };
};

/** Sets one width of a corner, in mm. */
export const typeWidth = (
  now: Snapshot,
  corner: EditedCorner,
  i: number,
  value: number,
): Result<Snapshot> => {
  const before = widthsOf(corner.joint);
  const widths = setWidth(before, corner.locked, i, value);
  if (!widths.ok) return widths;
  const judged = corner.judge(widths.value);
  if (judged.ok) return writeWidths(now, corner, widths.value);
  const unlocked = setWidth(before, new Set(), i, value);
  const isByLocks = unlocked.ok && corner.judge(unlocked.value).ok;
  return refuse(...judged.complaints, ...(isByLocks ? allLocked(before, corner.locked) : []));
};

/**
 * Adds a tail: to equal or graded ones by their number in the plan, to the highest of their groups where they are grouped, to
 * listed ones by scaling the others.
 */
export const oneMore = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  if (!corner.listed && corner.groups !== undefined) return growGroup(now, corner.groups, corner.at, 1);
  if (!corner.listed) return setTailCount(now, corner, corner.joint.tails.length + 1);
  const widths = widthsOf(corner.joint);
  const { locked } = corner;
  return writeIfFound(now, corner, addTail(widths, locked), locksAfterAdding(widths, locked));
};

const growGroup = (
  { text }: Snapshot,
  groups: readonly number[],
  at: Place,
  by: 1 | -1,
): Result<Snapshot> => {
  const highest = (groups.at(-1) ?? 0) + by;
  const value = [...groups.slice(0, -1), ...(highest > 0 ? [highest] : [])];
  return snapshot(editPlan(text, [{ at: [...at, 'groups'], value }]));
};

/** Removes the highest tail, or tail `i` of the widths. */
export const oneFewer = (now: Snapshot, corner: EditedCorner, i?: number): Result<Snapshot> => {
  const { tails } = corner.joint;
  if (!corner.listed && i === undefined && corner.groups !== undefined)
    return growGroup(now, corner.groups, corner.at, -1);
  if (!corner.listed && i === undefined) return setTailCount(now, corner, tails.length - 1);
  const widths = widthsOf(corner.joint);
  const { locked } = corner;
  const which = i !== undefined && isTail(i) ? i : widths.length - 2;
  return writeIfFound(
    now,
    corner,
    removeTail(widths, locked, which),
    locksAfterRemoving(widths, locked, which),
  );
};

/** Sets the number of tails; undefined leaves it to the family rule. */
export const setTailCount = (
  { text }: Snapshot,
  { at, joint, locked }: EditedCorner,
  tails: number | undefined,
): Result<Snapshot> =>
  locked.size > 0
    ? refuse(...allLocked(widthsOf(joint), locked))
    : snapshot(
        editPlan(text, [
          { at: [...at, 'tails'], value: tails },
          { at: [...at, 'pins'], value: undefined },
          { at: [...at, 'locked'], value: undefined },
          ...ungroup(writtenPlan(text), at),
        ]),
      );

/** Makes the same number of tails equal; where some widths are locked, all others. */
export const makeEven = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const { joint, at, locked } = corner;
  const widths = widthsOf(joint);
  if (locked.size > 0) return writeIfFound(now, corner, evenOut(widths, locked, total(widths)));
  const { text, project } = now;
  const plan = writtenPlan(text);
  const edits: Edit[] = [
    { at: [...at, 'tails'], value: joint.tails.length },
    { at: [...at, 'pins'], value: undefined },
    { at: [...at, 'locked'], value: undefined },
    { at: [...at, 'graded'], value: undefined },
    ...spaceEvenly(plan, at),
    // What all drawers have, one that is even must say that it has not.
    ...(corner.closer && valueAt(plan, [...at, 'spacing']) === undefined
      ? [{ at: [...at, 'spacing'], value: 'even' }]
      : []),
    ...(corner.listed ? [{ at: [...at, 'halfPin'], value: undefined }] : []),
  ];
  const specs = project.set.drawers.map(({ spec }) => spec);
  const kept = keepHalfPins(corner.ref, edits, specs, text, unitOf(project.units));
  return snapshot(editPlan(text, kept));
};

export const mirrorTails = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const widths = mirror(widthsOf(corner.joint));
  const judged = corner.judge(widths);
  if (!judged.ok) return judged;
  const last = widths.length - 1;
  return writeWidths(now, corner, widths, new Set([...corner.locked].map((i) => last - i)));
};

/** Locks a width, or unlocks it. A locked one is listed, with all others, so that nothing else can change it. */
export const toggleLock = (now: Snapshot, corner: EditedCorner, i: number): Result<Snapshot> => {
  const locked = new Set(corner.locked);
  if (!locked.delete(i)) locked.add(i);
  return writeWidths(now, corner, widthsOf(corner.joint), locked);
};
