import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import { KEYS_OF_SPACINGS, SPACING_OF } from '../../joint/spacingWish.ts';
import { checkPlan } from '../../plan/readPlan.ts';
import type { Place } from '../../units/complaint.ts';
import type { Unit } from '../../units/unit.ts';
import type { Edit } from '../text/edit.ts';
import { type CornerRef, placeOfTails } from './editedCorner.ts';
import { backValue, keepBacks } from './keepInherited.ts';
import { listEdits } from './planNumber.ts';
import type { Locked, TipWidths } from './widths.ts';
import { editedValues, valueAt, type WrittenPlan, writtenPlan } from './writtenPlan.ts';

/** Widths to be listed, which of them are locked, and those that were listed before, if any. */
export interface Listing {
  readonly widths: TipWidths;
  readonly locked: Locked;
  readonly before: TipWidths;
}

/** The edits that list a corner's widths, and leave the other corners of its drawer as they are. */
export const listCorner = (
  ref: CornerRef,
  listing: Listing,
  specs: readonly DrawerSpec[],
  plan: WrittenPlan,
  unit: Unit,
): Edit[] => listCorners([{ ref, ...listing }], specs, plan, unit);

/** The same for several corners. */
export const listCorners = (
  listings: readonly (Listing & { readonly ref: CornerRef })[],
  specs: readonly DrawerSpec[],
  plan: WrittenPlan,
  unit: Unit,
): Edit[] => {
  const listed = listings.map(({ ref, widths, locked, before }) => {
    const edits = listEdits(placeOfTails(ref), widths, unit, locked, before);
    const halfPin = edits.find(({ at }) => at.at(-1) === 'halfPin')?.value;
    const back = backOf(ref, specs);
    const isSame =
      back === undefined ||
      String(backValue(back, 'halfPin', unit)) === [...new Set([halfPin].flat())].join();
    edits.push(...spaceEvenly(plan, placeOfTails(ref)));
    return { edits, moved: isSame ? [] : [ref.index] };
  });
  const edits = listed.flatMap((each) => each.edits);
  const moved = listed.flatMap((each) => each.moved);
  return moved.length === 0 ? edits : [...edits, ...keepBacks(specs, plan, moved, 'halfPin', unit)];
};

/** The edits that give up groups of tails where a corner's own are written, as its tails are counted. */
export const ungroup = (plan: WrittenPlan, at: Place): Edit[] => giveUp(plan, at, 'grouped');

/** The edits that give up groups and tails that are closer at the edges, where they are written for a corner itself. */
export const spaceEvenly = (plan: WrittenPlan, at: Place): Edit[] => [
  ...ungroup(plan, at),
  ...giveUp(plan, at, 'closer-edges'),
];

const giveUp = (plan: WrittenPlan, at: Place, spacing: 'grouped' | 'closer-edges'): Edit[] =>
  valueAt(plan, [...at, 'spacing']) === spacing
    ? ['spacing', ...KEYS_OF_SPACINGS.filter((key) => SPACING_OF[key] === spacing)].map((key) => ({
        at: [...at, key],
        value: undefined,
      }))
    : [];

/** Edits of a front corner, and what lets the back corners keep the half pins that they inherit from it. */
export const keepHalfPins = (
  ref: CornerRef,
  edits: Edit[],
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => {
  const back = backOf(ref, specs);
  const after = checkPlan(editedValues(text, edits));
  const then = after.ok ? backOf(ref, after.plan.drawers) : undefined;
  if (back === undefined || then === undefined) return edits;
  const isSame = String(backValue(back, 'halfPin', unit)) === String(backValue(then, 'halfPin', unit));
  return isSame ? edits : [...edits, ...keepBacks(specs, writtenPlan(text), [ref.index], 'halfPin', unit)];
};

/** The drawer whose back corners may inherit from a corner; none where it is no front. */
const backOf = (ref: CornerRef, specs: readonly DrawerSpec[]): DrawerSpec | undefined =>
  ref.of === 'drawer' && ref.end === 'front' ? specs[ref.index] : undefined;
