import { formatLength, formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { EditedCorner } from './editedCorner.ts';
import type { Handle } from './handles.ts';
import type { Quantity } from './quantities.ts';
import { scopeWords, selectedDrawers } from './scopeWords.ts';
import type { ViewState } from './viewState.ts';
import { widthsOf } from './widths.ts';

/**
 * The value of what is moved, its change and what it changes: `lap 6.9 mm (+1.9), all nine drawers`,
 * `spacer 6.4 mm (+0.2), tail 2 of these two drawers`.
 */
export const movedWords = (
  handle: Pick<Handle, 'name' | 'part' | 'value' | 'measure'>,
  from: number,
  { now: { project }, corner, scope }: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string => {
  const { name, part, value, measure } = handle;
  const change = changeInWords(value - from, project.units);
  const what = part === undefined ? scopeWords(project, corner, measure, scope) : partWords(part, corner);
  return `${name} ${formatLength(value, project.units)}${change}, ${what}`;
};

/** `tail 2 of these two drawers`, `tail 2 at the back of this drawer`. */
const partWords = (part: string, corner: EditedCorner): string => {
  const { ref } = corner;
  if (ref.of === 'joint') return `${part} of this corner`;
  return `${part}${ref.end === 'back' ? ' at the back' : ''} of ${selectedDrawers(corner)}`;
};

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

/** What was moved, for undo: `tail 2 lower edge, Thread`, `lap, all nine drawers`. */
export const editWords = (
  { name, part, measure }: Pick<Handle, 'name' | 'part' | 'measure'>,
  shown: Pick<ViewState, 'now' | 'corner' | 'scope'>,
): string => `${name}${part === undefined ? '' : ` of ${part}`}, ${placeWords(measure, shown)}`;

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
