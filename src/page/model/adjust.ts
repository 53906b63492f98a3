import { parseDocument } from 'yaml';
import { backJointSpec, frontJointSpec, sizesOf } from '../../drawer/drawerSizes.ts';
import { withDefaults } from '../../joint/defaults.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import type { Plan } from '../../plan/plan.ts';
import { readPlan } from '../../plan/readPlan.ts';
import type { Cutter } from '../../router/limits/cutter.ts';
import { withCutter } from '../../router/limits/fitToCutter.ts';
import type { Place, Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { type Edit, editPlan, type PlanValue } from '../text/editPlan.ts';
import { stepTowards } from './bisect.ts';
import type { EditedCorner } from './editedCorner.ts';
import type { Moved } from './edits.ts';
import { listEdits, planNumber, stepOf } from './planNumber.ts';
import type { Quantity } from './quantities.ts';
import { locksOf, type PlanSource, type Snapshot, snapshot } from './snapshot.ts';
import { fill, type TipWidths, total } from './widths.ts';

/** The drawers for which a shared measure is changed: all without a value of their own, or this one only. */
export type Scope = 'set' | 'drawer';

/** The place in the plan at which a measure is changed: where it is written, else by the scope. */
const placeOf = (text: string, { ref }: EditedCorner, { at, shared }: Quantity, scope: Scope): Place => {
  if (ref.of === 'joint') return ['joints', ref.index, ...at];
  const document = parseDocument(text);
  const own: Place = ['drawers', ref.index, ...at];
  const backs: Place[] =
    ref.end === 'back' && at[0] === 'joint'
      ? [
          ['drawers', ref.index, 'back', ...at],
          ['back', ...at],
        ]
      : [];
  const found = [...backs, own].find((place) => document.hasIn(place));
  return found ?? (shared && scope === 'set' ? at : own);
};

const written = ({ kind }: Quantity, value: number, now: Snapshot): PlanValue =>
  kind === 'slope' ? `1:${Number(value.toFixed(3))}` : planNumber(value, unitOf(now.project.units));

/** Sets a measure to a value in mm (of a slope, its run); listed tails are scaled to fill their boards. */
export const adjust = (
  now: Snapshot,
  corner: EditedCorner,
  quantity: Quantity,
  value: number,
  scope: Scope,
): Result<Snapshot> => {
  const at = placeOf(now.source.text, corner, quantity, scope);
  return adjustAt(now.source, [{ at, value: written(quantity, value, now) }]);
};

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
  readonly at: Place;
  readonly key: string;
  readonly spec: JointSpec;
}

const wishesOf = ({ drawers, joints }: Plan): Wish[] => [
  ...drawers.flatMap((spec, i): Wish[] => {
    const { height, backHeight } = sizesOf(spec);
    return [
      { at: ['drawers', i, 'joint'], key: `front ${spec.name}`, spec: frontJointSpec(spec, height) },
      {
        at: ['drawers', i, 'back', 'joint'],
        key: `back ${spec.name}`,
        spec: backJointSpec(spec, backHeight),
      },
    ];
  }),
  ...joints.map(({ name, spec }, i) => ({ at: ['joints', i], key: `joint ${name}`, spec })),
];

const wishedWidths = (wish: JointSpec, cutter: Cutter | undefined): TipWidths | undefined => {
  const { spacing, halfPin, pin } = withDefaults(cutter === undefined ? wish : withCutter(wish, cutter));
  if (spacing.kind !== 'listed') return undefined;
  const { tails, pins } = spacing;
  const inner = tails.flatMap((tail, i) => (i === 0 ? [tail] : [pins?.[i - 1] ?? pin, tail]));
  return [halfPin.lower, ...inner, halfPin.upper];
};

/** The edits that scale listed tails to the changed widths of their boards. */
const refitEdits = (plan: Plan, source: PlanSource): Edit[] =>
  wishesOf(plan).flatMap(({ at, key, spec }) => {
    const widths = wishedWidths(spec, plan.cutting?.cutter);
    if (widths === undefined || Math.abs(total(widths) - spec.width) < 1e-6) return [];
    const filled = fill(widths, locksOf(source, key), spec.width);
    return filled.ok ? listEdits(at, filled.value, unitOf(plan.units)) : [];
  });
