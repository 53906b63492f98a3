import { under } from '../complaint.ts';
import type { DrawerSet } from '../drawer/drawer.ts';
import { layOutSet } from '../drawer/layOutSet.ts';
import type { Joint } from '../joint/joint.ts';
import { layOut } from '../joint/layOut.ts';
import type { Unit } from '../units/length.ts';
import type { Plan } from './plan.ts';
import type { PlanComplaint } from './planComplaint.ts';
import { readPlan } from './readPlan.ts';

/** A plan that can be made, with everything set out. */
export interface LaidOut {
  readonly plan: Plan;
  readonly set: DrawerSet;
  /** Corners that belong to no drawer, in the plan's order. */
  readonly joints: readonly { readonly name: string; readonly joint: Joint }[];
}

export type Reading =
  | { readonly ok: true; readonly value: LaidOut }
  | {
      readonly ok: false;
      /** From the top of the text down. */
      readonly complaints: readonly PlanComplaint[];
      /** The unit to tell them in, as far as the plan says it. */
      readonly units: Unit;
    };

/** Reads a plan and sets everything out, or says all that is wrong with it and in which line. */
export const layOutPlan = (given: string | Uint8Array): Reading => {
  const reading = readPlan(given);
  const plan = reading.ok ? reading.plan : reading.sound;
  const set = layOutSet(plan.drawers, plan.target);
  const joints = plan.joints.map(({ name, spec }, i) => ({ name, i, laid: layOut(spec) }));
  const later = [
    ...(set.ok ? [] : set.complaints),
    ...joints.flatMap(({ i, laid }) => (laid.ok ? [] : under(['joints', i], laid.complaints))),
  ];
  const complaints = [...(reading.ok ? [] : reading.complaints), ...later.map(reading.locate)];
  if (complaints.length > 0 || !set.ok)
    return {
      ok: false,
      complaints: complaints.sort((a, b) => a.line - b.line || a.column - b.column),
      units: plan.units,
    };
  return {
    ok: true,
    value: {
      plan,
      set: set.value,
      joints: joints.flatMap(({ name, laid }) => (laid.ok ? [{ name, joint: laid.value }] : [])),
    },
  };
};
