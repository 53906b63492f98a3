import type { Place } from '../../../units/complaint.ts';
import { type CornerRef, listOf } from '../editedCorner.ts';
import { measuredPlaces } from '../quantities.ts';
import { keyAt, type PlanKey } from './planKeys.ts';

/** Whose a key is: the whole plan's, given for all drawers or for one, a drawer's own, a box's, or a single corner's. */
export type Owner = 'plan' | 'drawers' | CornerRef['of'];

/** Whether a key is in an entry of a list. */
export const isOfEntry = (of: Owner): of is CornerRef['of'] => of !== 'plan' && of !== 'drawers';

/** The stages of the work, in order, and the whole plan last. */
export type Stage = 'opening' | 'stock' | 'corner' | 'groove' | 'plan';

/** Keys that are shown together under one title. */
export interface KeyGroup {
  readonly title: string;
  readonly stage: Stage;
  readonly of: Owner;
  readonly places: readonly string[];
  /** What of them is shown elsewhere. */
  readonly but?: readonly string[];
}

/** Where the controls are that no group has: beside the drawing, in the list of widths, in the section of fingers. */
const ELSEWHERE = ['joint.locked', 'back.joint.locked'];

/** Every group, in the order of the work. */
export const KEY_GROUPS: readonly KeyGroup[] = [
  { title: 'Opening as measured', stage: 'opening', of: 'drawer', places: ['opening', 'size'] },
  { title: 'Gaps and lip', stage: 'opening', of: 'drawers', places: ['fit', 'front'] },
  { title: 'Wood and grain', stage: 'stock', of: 'drawers', places: ['stock'] },
  { title: 'Boards as they came out', stage: 'stock', of: 'drawer', places: ['asBuilt'] },
  { title: 'Kind of corner', stage: 'corner', of: 'drawers', places: ['joint'], but: ELSEWHERE },
  { title: 'Back corners', stage: 'corner', of: 'drawers', places: ['back.joint'], but: ELSEWHERE },
  { title: 'Kind of corner', stage: 'corner', of: 'joint', places: [''], but: ['name', 'locked'] },
  {
    title: 'Back, bottom and slips',
    stage: 'groove',
    of: 'drawers',
    places: ['groove', 'back.drop', 'bottom'],
  },
  { title: 'Pulls', stage: 'groove', of: 'drawers', places: ['pulls'] },
  { title: 'Locks', stage: 'groove', of: 'drawers', places: ['locks'] },
  { title: 'Stops', stage: 'groove', of: 'drawers', places: ['stops'] },
  { title: 'Wood and grain', stage: 'stock', of: 'box', places: ['stock'] },
  { title: 'Kind of corner', stage: 'corner', of: 'box', places: ['kind'] },
  { title: 'Tails and shoulders', stage: 'corner', of: 'box', places: ['joint'], but: ELSEWHERE },
  { title: 'Bottom', stage: 'groove', of: 'box', places: ['groove', 'bottom'] },
  { title: 'Units', stage: 'plan', of: 'plan', places: ['units', 'fractions'] },
  { title: 'Font of names', stage: 'plan', of: 'plan', places: ['font'] },
  { title: 'Cabinet', stage: 'plan', of: 'plan', places: ['cabinet'] },
  { title: 'Climate', stage: 'plan', of: 'plan', places: ['climate'] },
  { title: 'Woods of your own', stage: 'plan', of: 'plan', places: ['woods'] },
  { title: 'Look of the set', stage: 'plan', of: 'plan', places: ['family'] },
  { title: 'Cutter', stage: 'plan', of: 'plan', places: ['cutter'] },
  {
    title: 'Other ends of fingers',
    stage: 'plan',
    of: 'plan',
    places: ['fingers'],
    but: ['fingers.together', 'fingers.bush', 'fingers.pairs', 'fingers.bar'],
  },
  { title: 'Saw', stage: 'plan', of: 'plan', places: ['saw'] },
];

/** The groups of a stage for the corner that is shown. */
export const groupsFor = (ref: CornerRef, stage: Stage): KeyGroup[] =>
  KEY_GROUPS.filter(
    ({ of, stage: at }) => at === stage && (of === 'plan' || (of === 'drawers' ? 'drawer' : of) === ref.of),
  );

/** The keys of a group: in a drawer's entry, or among those for all drawers, or of the plan. */
export const keysOfGroup = ({ of, places }: KeyGroup): PlanKey[] => {
  const entry = isOfEntry(of) ? keyAt([listOf({ of }), 0]) : undefined;
  return places.flatMap((place) => {
    const at = place === '' ? [] : place.split('.');
    const key = entry === undefined ? keyAt(at) : keyAt(at, entry);
    if (key === undefined) return [];
    return place === '' ? key.keys : [key];
  });
};

/** Whether a key has no field in its group, as its control is elsewhere. */
export const isElsewhere = ({ of, but = [] }: KeyGroup, at: Place): boolean =>
  but.includes(at.join('.')) ||
  (of !== 'plan' && measuredPlaces(of === 'drawers' ? 'drawer' : of).has(at.join('.')));
