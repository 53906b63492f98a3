import { backJointSpec, frontJointSpec, sizesOf } from '../../drawer/drawerSizes.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { jointWidth } from '../../joint/spacing.ts';
import type { Plan } from '../../plan/plan.ts';
import { checkPlan } from '../../plan/readPlan.ts';
import type { Project } from '../../project/project.ts';
import type { Cutter } from '../../router/limits/cutter.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import { stepTowards } from './bisect.ts';
import { type CornerRef, cornerOf, type EditedCorner, lockedCorners } from './editedCorner.ts';
import type { Moved } from './edits.ts';
import { resolvedWish } from './keepInherited.ts';
import { listCorner } from './listCorner.ts';
import { measureEdits } from './measureEdits.ts';
import { planNumber, planSlope, stepOf } from './planNumber.ts';
import type { Quantity } from './quantities.ts';
import type { Scope } from './scope.ts';
import { preview, type Snapshot } from './snapshot.ts';
import { allLocked, fill, type Locked, lockedIn, type TipWidths, total, widthsOf } from './widths.ts';
import { editedValues, type WrittenPlan } from './writtenPlan.ts';

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
  adjustAt(now, measureEdits(now, corner, quantity, written(quantity, value, now), scope));

/** Makes changes of a plan; listed tails are scaled to fill their boards. */
export const adjustAt = (now: Snapshot, edits: readonly Edit[]): Result<Snapshot> => {
  const made = preview(now, edits);
  if (made.ok && locksHold(now.project, made.value.project)) return made;
  const values = editedValues(now.text, edits);
  const reading = checkPlan(values);
  const refit = reading.ok ? refitEdits(misfitsOf(reading.plan), reading.plan, values.value) : accept([]);
  if (!refit.ok) return refit;
  if (refit.value.length === 0) return made;
  const refitted = preview(now, [...edits, ...refit.value]);
  if (refitted.ok || !reading.ok) return refitted;
  const misfits = misfitsOf(reading.plan);
  const free = refitEdits(misfits.map(unlocked), reading.plan, values.value);
  const isByLocks = free.ok && preview(now, [...edits, ...free.value]).ok;
  return refuse(...(isByLocks ? misfits.flatMap(locksOf) : []), ...refitted.complaints);
};

/** Whether every locked width is as it was. */
const locksHold = (before: Project, after: Project): boolean =>
  lockedCorners(before).every((ref) => {
    const corner = cornerOf(before, ref);
    if (corner === undefined) return true;
    const now = cornerOf(after, ref);
    const widths = now === undefined ? [] : widthsOf(now.joint);
    return widthsOf(corner.joint).every(
      (width, i) => !corner.locked.has(i) || Math.abs(width - (widths[i] ?? 0)) < 1e-6,
    );
  });

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

const wishesOf = ({ drawers, boxes, joints }: Plan): Wish[] => [
  ...drawers.flatMap((spec, index): Wish[] => {
    const { height, backHeight } = sizesOf(spec);
    const { name } = spec;
    return [
      { ref: { of: 'drawer', index, end: 'front' }, name, spec: frontJointSpec(spec, height) },
      {
        ref: { of: 'drawer', index, end: 'back' },
        name: `${name}, back`,
        spec: backJointSpec(spec, backHeight),
      },
    ];
  }),
  ...boxes.flatMap((spec, index): Wish[] =>
    // A lid that is made apart has no tails of the plan's.
    spec.box?.isLid
      ? []
      : [
          {
            ref: { of: 'box', index, end: 'front' },
            name: spec.name,
            spec: frontJointSpec(spec, sizesOf(spec).height),
          },
        ],
  ),
  ...joints.map(({ name, spec }, index): Wish => ({ ref: { of: 'joint', index }, name, spec })),
];

/** The listed widths of a wish, and what they are to fill; undefined where none are listed. */
const wishedWidths = (
  wish: JointSpec,
  cutter: Cutter | undefined,
): { readonly widths: TipWidths; readonly room: number } | undefined => {
  const resolved = resolvedWish(wish, cutter);
  const { spacing, halfPin, pin } = resolved;
  if (spacing.kind !== 'listed') return undefined;
  const { tails, pins } = spacing;
  const inner = tails.flatMap((tail, i) => (i === 0 ? [tail] : [pins?.[i - 1] ?? pin, tail]));
  return { widths: [halfPin.lower, ...inner, halfPin.upper], room: jointWidth(resolved) };
};

/** A corner whose listed widths do not fill its board any more. */
interface Misfit extends Wish {
  readonly widths: TipWidths;
  readonly room: number;
  readonly locked: Locked;
}

const misfitsOf = (plan: Plan): Misfit[] =>
  wishesOf(plan).flatMap((wish) => {
    const wished = wishedWidths(wish.spec, plan.cutting?.cutter);
    if (wished === undefined || Math.abs(total(wished.widths) - wished.room) < 1e-6) return [];
    return [{ ...wish, ...wished, locked: lockedIn(wish.spec.spacing) }];
  });

/** The edits that scale listed tails to the changed widths of their boards, all but locked ones. */
const refitEdits = (misfits: readonly Misfit[], plan: Plan, written: WrittenPlan): Result<Edit[]> => {
  const unit = unitOf(plan.units);
  const edits = misfits.map(({ ref, name, widths, room, locked }): Result<Edit[]> => {
    const filled = fill(widths, locked, room);
    return filled.ok
      ? accept(listCorner(ref, { widths: filled.value, locked, before: widths }, plan.drawers, written, unit))
      : refuse(...ofCorner(name, filled.complaints));
  });
  const wrong = edits.flatMap((each) => (each.ok ? [] : each.complaints));
  return wrong.length > 0 ? refuse(...wrong) : accept(edits.flatMap((each) => (each.ok ? each.value : [])));
};

const unlocked = (misfit: Misfit): Misfit => ({ ...misfit, locked: new Set() });

/** What stands in the way, where widths that do not fill their board cannot be scaled for its locks. */
const locksOf = ({ name, widths, locked }: Misfit): Complaint[] => ofCorner(name, allLocked(widths, locked));

/** The complaints with the name of their corner before them. */
export const ofCorner = (name: string, complaints: readonly Complaint[]): Complaint[] =>
  complaints.map((complaint) => ({ ...complaint, says: say`${quote(name)}: ${complaint.says}` }));
