import { backJointSpec, frontJointSpec, sizesOf } from '../../drawer/drawerSizes.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import type { Plan } from '../../plan/plan.ts';
import { readPlan } from '../../plan/readPlan.ts';
import type { Cutter } from '../../router/limits/cutter.ts';
import type { Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { stepTowards } from './bisect.ts';
import { type CornerRef, cornerKey, type EditedCorner } from './editedCorner.ts';
import { type Edit, editPlan, type PlanValue } from './editPlan.ts';
import type { Moved } from './edits.ts';
import { resolvedWish } from './keepInherited.ts';
import { listCorner } from './listCorner.ts';
import { measureEdits } from './measureEdits.ts';
import { planNumber, planSlope, stepOf } from './planNumber.ts';
import type { Quantity } from './quantities.ts';
import type { Scope } from './scope.ts';
import { locksOf, type PlanSource, type Snapshot, snapshot } from './snapshot.ts';
import { fill, type TipWidths, total } from './widths.ts';

const written = ({ kind }: Quantity, value: number, now: Snapshot): PlanValue =>
  kind === 'slope' ? planSlope({ run: value }) : planNumber(value, unitOf(now.project.units));

/** Sets a measure to a value in mm (of a slope, its run); listed tails are scaled to fill their boards. */
export const adjust = (
  now: Snapshot,
  corner: EditedCorner,
  quantity: Quantity,
  value: number,
  scope: Scope,
): Result<Snapshot> =>
  adjustAt(now.source, measureEdits(now, corner, quantity, written(quantity, value, now), scope));

const adjustAt = (source: PlanSource, edits: readonly Edit[]): Result<Snapshot> => {
  const changed = { ...source, text: editPlan(source.text, edits) };
  const made = snapshot(changed);
  if (made.ok) return made;
  const reading = readPlan(changed.text);
  const refit = reading.ok ? refitEdits(reading.plan, changed) : [];
  return refit.length === 0 ? made : snapshot({ ...changed, text: editPlan(changed.text, refit) });
};

/** Moves a measure towards a value, as far as the set can be made. */
export const dragQuantity = (
  now: Snapshot,
  corner: EditedCorner,
  quantity: Quantity,
  to: number,
  scope: Scope,
): Moved => {
  const from = quantity.get(corner) ?? to;
  const reach = stepTowards(to - from, stepOf(unitOf(now.project.units)), (part) =>
    adjust(now, corner, quantity, from + part, scope),
  );
  return { snapshot: reach.value ?? now, stop: reach.stop };
};

interface Wish {
  readonly ref: CornerRef;
  readonly name: string;
  readonly spec: JointSpec;
}

const wishesOf = ({ drawers, joints }: Plan): Wish[] => [
  ...drawers.flatMap((spec, index): Wish[] => {
    const { height, backHeight } = sizesOf(spec);
    const { name } = spec;
    return [
      { ref: { of: 'drawer', index, end: 'front' }, name, spec: frontJointSpec(spec, height) },
      { ref: { of: 'drawer', index, end: 'back' }, name, spec: backJointSpec(spec, backHeight) },
    ];
  }),
  ...joints.map(({ name, spec }, index): Wish => ({ ref: { of: 'joint', index }, name, spec })),
];

const wishedWidths = (wish: JointSpec, cutter: Cutter | undefined): TipWidths | undefined => {
  const { spacing, halfPin, pin } = resolvedWish(wish, cutter);
  if (spacing.kind !== 'listed') return undefined;
  const { tails, pins } = spacing;
  const inner = tails.flatMap((tail, i) => (i === 0 ? [tail] : [pins?.[i - 1] ?? pin, tail]));
  return [halfPin.lower, ...inner, halfPin.upper];
};

/** The edits that scale listed tails to the changed widths of their boards. */
const refitEdits = (plan: Plan, source: PlanSource): Edit[] =>
  wishesOf(plan).flatMap(({ ref, name, spec }) => {
    const widths = wishedWidths(spec, plan.cutting?.cutter);
    if (widths === undefined || Math.abs(total(widths) - spec.width) < 1e-6) return [];
    const filled = fill(widths, locksOf(source, cornerKey({ ref, name })), spec.width);
    return filled.ok ? listCorner(ref, filled.value, plan.drawers, source.text, unitOf(plan.units)) : [];
  });
