import { hasLength, isKind, OWN_LENGTH_KEYS } from '../../joint/kinds/kinds.ts';
import type { Project } from '../../project/project.ts';
import type { Place } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import { openingEdits } from './cabinet/openingEdits.ts';
import { cornerOf, type EditedCorner, listOf } from './editedCorner.ts';
import { isBackKey, keepBacks, keepBoxes, keepSingleCorners } from './keepInherited.ts';
import type { Quantity } from './quantities.ts';
import type { Scope } from './scope.ts';
import type { Snapshot } from './snapshot.ts';
import { isWritten, valueAt, type WrittenPlan, writtenPlan } from './writtenPlan.ts';

/** The drawers that an edit of a measure changes, by their index: those in the scope that have the measure. */
export const drawersChanged = (
  project: Project,
  { ref }: EditedCorner,
  { shared, get }: Pick<Quantity, 'shared' | 'get'>,
  scope: Scope,
): number[] => {
  if (ref.of !== 'drawer') return [];
  if (!shared || scope.drawers === 'this') return [ref.index];
  return project.set.drawers.flatMap((_, index) => {
    const corner = cornerOf(project, { ...ref, index });
    return corner === undefined || get(corner) === undefined ? [] : [index];
  });
};

/**
 * The edits that give a measure a value for the drawers and the ends of a scope. What would inherit it beyond the scope
 * has its own value written down first.
 */
export const measureEdits = (
  { text, project }: Snapshot,
  corner: EditedCorner,
  quantity: Pick<Quantity, 'at' | 'ends' | 'shared' | 'get'>,
  value: PlanValue | undefined,
  scope: Scope,
): Edit[] => {
  const { ref } = corner;
  const { at, ends, shared } = quantity;
  if (ref.of !== 'drawer') return [{ at: [listOf(ref), ref.index, ...at], value }];
  const space = project.set.drawers[ref.index]?.spec.space;
  const [group, side] = at;
  if (
    group === 'opening' &&
    (side === 'width' || side === 'height' || side === 'depth') &&
    space?.kind === 'opening' &&
    space.places !== undefined &&
    space.shape === undefined &&
    value !== undefined
  ) {
    const ofCabinet = openingEdits({ text, project }, space.places, side, value);
    if (ofCabinet !== undefined) return ofCabinet;
  }
  const plan = writtenPlan(text);
  const specs = project.set.drawers.map(({ spec }) => spec);
  const back: Place = ['back', ...at];
  const isOfBack = ends === 'each' && ref.end === 'back' && scope.ends === 'shown';
  const boxes = isOfBack ? [] : keepBoxes(project, plan, at);
  const once = shared && scope.drawers === 'all' && isForAll(plan, at) && boxes !== undefined;
  // What is given once reaches the backs of drawers too whose fronts list it.
  const drawers = once ? specs.map((_, i) => i) : drawersChanged(project, corner, quantity, scope);
  const own = (place: Place): Place[] => drawers.map((i) => ['drawers', i, ...place]);
  const set = (place: Place): Edit[] =>
    once
      ? [...removals(plan, own(place)), { at: place, value }]
      : own(place).map((each) => ({ at: each, value }));

  if (isOfBack) return set(back);
  const key = at.at(-1);
  const single = at[0] === 'joint' ? keepSingleCorners(project, plan, String(key)) : [];
  const kept = once ? [...single, ...boxes] : [];
  if (ends !== 'each' || !isBackKey(key)) return [...set(at), ...kept];
  if (scope.ends === 'shown')
    return [...set(at), ...keepBacks(specs, plan, drawers, key, unitOf(project.units)), ...kept];
  // Backs follow their fronts again.
  const joined =
    !once && isWritten(plan, back) ? set(back) : removals(plan, [...own(back), ...(once ? [back] : [])]);
  return [...set(at), ...joined, ...kept];
};

/** The last first, as an entry may stand for later ones. */
const removals = (plan: WrittenPlan, places: readonly Place[]): Edit[] =>
  places
    .filter((at) => isWritten(plan, at))
    .map((at) => ({ at, value: undefined }))
    .toReversed();

/** Whether a key may be given once for all drawers: not a length that the plan's own kind of corner does not have. */
const isForAll = (plan: WrittenPlan, at: Place): boolean => {
  const kind = valueAt(plan, ['joint', 'kind']);
  const own = OWN_LENGTH_KEYS.find((key) => at[0] === 'joint' && at[1] === key);
  return own === undefined || typeof kind !== 'string' || !isKind(kind) || hasLength(kind, own);
};
