import type { Project } from '../../project/project.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { finest, type Notation } from '../../units/notation.ts';
import type { CornerRef, EditedCorner } from './editedCorner.ts';
import { servedBy, sharesSpacers } from './fingers/sharedSpacer.ts';
import type { Handle } from './handles.ts';
import type { Quantity } from './quantities.ts';
import { drawersInWords, scopeWords, selectedDrawers } from './scopeWords.ts';
import type { ViewState } from './viewState.ts';
import { widthsOf } from './widths.ts';

/**
 * The value of what is moved, its change and what it changes: `lap 6.9 mm (+1.9), all nine drawers`,
 * `spacer 6.4 mm (+0.2), tail 2 of these two drawers 27.9 mm wide`,
 * `spacer 6.4 mm (+0.2), all its tails in eight of nine drawers, 27.9 mm wide`.
 */
export const movedWords = (
  handle: Pick<Handle, 'name' | 'tail' | 'value' | 'measure'>,
  from: number,
  shown: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string => {
  const { name, tail, value } = handle;
  const { units } = shown.now.project;
  const change = changeInWords(value - from, notationOf(handle, units));
  const what = changedWords(handle, shown);
  const width = tail === undefined ? '' : `, ${formatLength(tail.width, units)} wide`;
  return `${name} ${valueWords(handle, units)}${change}, ${what}${width}`;
};

/** A spacer is told as finely as it can be cut. */
const notationOf = ({ tail }: Pick<Handle, 'tail'>, units: Notation): Notation =>
  tail === undefined ? units : finest(units);

/** What a handle's value is. */
export const valueWords = (handle: Pick<Handle, 'tail' | 'value'>, units: Notation): string =>
  formatLength(handle.value, notationOf(handle, units));

/** What a handle changes: `all nine drawers`, `tail 2 of these two drawers`, `all its tails in eight of nine drawers`. */
export const changedWords = (
  { tail, value, measure }: Pick<Handle, 'tail' | 'value' | 'measure'>,
  { now: { project }, corner, scope }: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string => {
  const { ref } = corner;
  if (tail === undefined) return scopeWords(project, corner, measure, scope);
  if (ref.of === 'joint') return `${tail.name} of this corner`;
  const atBack = ref.of === 'drawer' && ref.end === 'back' ? ' at the back' : '';
  return sharesSpacers(project, ref)
    ? `all its tails${atBack} in ${spacerDrawers(project, ref, value)}`
    : `${tail.name}${atBack} of ${selectedDrawers(corner)}`;
};

/** The drawers that a spacer serves: `eight of nine drawers`. */
const spacerDrawers = (project: Project, ref: CornerRef, spacer: number): string =>
  drawersInWords(
    project,
    ref.index,
    servedBy(project, ref, spacer).map(({ corner }) => corner.ref.index),
  );

const changeInWords = (by: number, unit: Notation): string => {
  const size = formatNumber(Math.abs(by), unit);
  return size === '0' ? '' : ` (${by < 0 ? '−' : '+'}${size})`;
};

/**
 * What a measure takes along with it at a corner: `lower half pin 8.2 → 9`, as the groove is to lie inside a tail. Empty
 * where there is nothing.
 */
export const followedWords = (before: EditedCorner, { joint }: EditedCorner, unit: Notation): string => {
  const [from, to] = [before.joint, joint].map((each) => ({
    halfPin: formatNumber(widthsOf(each)[0] ?? 0, unit),
    tails: String(each.tails.length),
  }));
  if (from === undefined || to === undefined) return '';
  return [
    from.halfPin === to.halfPin ? [] : `lower half pin ${from.halfPin} → ${to.halfPin}`,
    from.tails === to.tails ? [] : `tails ${from.tails} → ${to.tails}`,
  ]
    .flat()
    .join(', ');
};

/** What was moved, for undo: `tail 2 lower edge, Thread`, `lap, all nine drawers`, `spacer, eight of nine drawers`. */
export const editWords = (
  { name, tail, value, measure }: Pick<Handle, 'name' | 'tail' | 'value' | 'measure'>,
  shown: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string => {
  if (tail === undefined) return `${name}, ${placeWords(measure, shown)}`;
  const { project } = shown.now;
  const { ref } = shown.corner;
  return sharesSpacers(project, ref)
    ? `${name}, ${spacerDrawers(project, ref, value)}`
    : `${name} of ${tail.name}, ${whereWords(shown.corner)}`;
};

/** Where an edit is made, for who looks elsewhere by then: `all nine drawers`, `Thread`. */
export const placeWords = (
  measure: Quantity | undefined,
  { now: { project }, corner, scope }: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string =>
  measure?.shared === true && corner.ref.of === 'drawer' && scope.drawers === 'all'
    ? scopeWords(project, corner, measure, scope)
    : whereWords(corner);

/** `Thread`, `Thread at the back`. */
export const whereWords = ({ ref, name }: EditedCorner): string =>
  ref.of === 'drawer' && ref.end === 'back' ? `${name} at the back` : name;
