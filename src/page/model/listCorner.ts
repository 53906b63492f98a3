import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import { readPlan } from '../../plan/readPlan.ts';
import type { Unit } from '../../units/unit.ts';
import { type CornerRef, placeOfTails } from './editedCorner.ts';
import { type Edit, editPlan } from './editPlan.ts';
import { backValue, keepBacks } from './keepInherited.ts';
import { listEdits, listedValues, roundWidths } from './planNumber.ts';
import type { TipWidths } from './widths.ts';
import { writtenPlan } from './writtenPlan.ts';

/** The edits that list a corner's widths, and leave the other corners of its drawer as they are. */
export const listCorner = (
  ref: CornerRef,
  widths: TipWidths,
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => {
  const { halfPin } = listedValues(roundWidths(widths, unit), unit);
  const back = backOf(ref, specs);
  const isSame =
    back === undefined || String(backValue(back, 'halfPin', unit)) === [...new Set(halfPin)].join();
  return [
    ...listEdits(placeOfTails(ref), widths, unit),
    ...(isSame ? [] : keepBacks(specs, writtenPlan(text), [ref.index], 'halfPin', unit)),
  ];
};

/** Edits of a front corner, and what lets the back corners keep the half pins that they inherit from it. */
export const keepHalfPins = (
  ref: CornerRef,
  edits: Edit[],
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => {
  const back = backOf(ref, specs);
  const after = readPlan(editPlan(text, edits));
  const then = after.ok ? backOf(ref, after.plan.drawers) : undefined;
  if (back === undefined || then === undefined) return edits;
  const isSame = String(backValue(back, 'halfPin', unit)) === String(backValue(then, 'halfPin', unit));
  return isSame ? edits : [...edits, ...keepBacks(specs, writtenPlan(text), [ref.index], 'halfPin', unit)];
};

/** The drawer whose back corners may inherit from a corner; none where it is no front. */
const backOf = (ref: CornerRef, specs: readonly DrawerSpec[]): DrawerSpec | undefined =>
  ref.of === 'drawer' && ref.end === 'front' ? specs[ref.index] : undefined;
