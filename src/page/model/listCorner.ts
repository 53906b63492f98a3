import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import { readPlan } from '../../plan/readPlan.ts';
import type { Unit } from '../../units/unit.ts';
import { type CornerRef, placeOfTails } from './editedCorner.ts';
import { type Edit, editPlan } from './editPlan.ts';
import { backValue, keepBacks } from './keepInherited.ts';
import { listEdits } from './planNumber.ts';
import type { TipWidths } from './widths.ts';
import { writtenPlan } from './writtenPlan.ts';

/** The edits that list a corner's widths, and leave the other corners of its drawer as they are. */
export const listCorner = (
  ref: CornerRef,
  widths: TipWidths,
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => keepHalfPins(ref, listEdits(placeOfTails(ref), widths, unit), specs, text, unit);

/** Edits of a front corner, and what lets the back corners keep the half pins that they inherit from it. */
export const keepHalfPins = (
  ref: CornerRef,
  edits: Edit[],
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => {
  if (ref.of === 'joint' || ref.end === 'back') return edits;
  const kept = keepBacks(specs, writtenPlan(text), [ref.index], 'halfPin', unit);
  if (kept.length === 0) return edits;
  const after = readPlan(editPlan(text, edits));
  const spec = after.ok ? after.plan.drawers[ref.index] : undefined;
  const isSame = spec !== undefined && String(backValue(spec, 'halfPin', unit)) === String(kept[0]?.value);
  return isSame ? edits : [...edits, ...kept];
};
