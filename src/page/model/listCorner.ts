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
  const edits = listEdits(placeOfTails(ref), widths, unit);
  const { halfPin } = listedValues(roundWidths(widths, unit), unit);
  return [
    ...edits,
    ...inheritedHalfPins(ref, specs, text, unit).filter(
      ({ value }) => String(value) !== [...new Set(halfPin)].join(),
    ),
  ];
};

/** Edits that take a front corner's half pins from it, and what lets the back corners keep what they inherit. */
export const keepHalfPins = (
  ref: CornerRef,
  edits: Edit[],
  specs: readonly DrawerSpec[],
  text: string,
  unit: Unit,
): Edit[] => {
  const [kept] = inheritedHalfPins(ref, specs, text, unit);
  if (kept === undefined || ref.of === 'joint') return edits;
  const after = readPlan(editPlan(text, edits));
  const spec = after.ok ? after.plan.drawers[ref.index] : undefined;
  const isSame = spec !== undefined && String(backValue(spec, 'halfPin', unit)) === String(kept.value);
  return isSame ? edits : [...edits, kept];
};

/** The half pins that a drawer's back corners inherit from its front; none of a corner that leaves them nothing. */
const inheritedHalfPins = (ref: CornerRef, specs: readonly DrawerSpec[], text: string, unit: Unit): Edit[] =>
  ref.of === 'drawer' && ref.end === 'front'
    ? keepBacks(specs, writtenPlan(text), [ref.index], 'halfPin', unit)
    : [];
