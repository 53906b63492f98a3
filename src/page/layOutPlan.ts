import type { DrawerSet } from '../drawer/drawer.ts';
import { type LaidJoint, layOutPlan as layOutWhole } from '../plan/layOutPlan.ts';
import type { Plan } from '../plan/plan.ts';
import type { PlanComplaint } from '../plan/planComplaint.ts';
import { readPlan } from '../plan/readPlan.ts';

/** A plan that can be made, with everything set out. */
export interface LaidOut {
  readonly plan: Plan;
  readonly set: DrawerSet;
  /** Corners that belong to no drawer, in the plan's order. */
  readonly joints: readonly LaidJoint[];
}

export type Reading =
  | { readonly ok: true; readonly value: LaidOut }
  | { readonly ok: false; readonly complaints: readonly PlanComplaint[] };

/** Reads a plan and sets everything out, or says all that is wrong with it and in which line. */
export const layOutPlan = (given: string | Uint8Array): Reading => {
  const reading = readPlan(given);
  const plan = reading.ok ? reading.plan : reading.sound;
  const { set, joints, complaints: later } = layOutWhole(plan);
  const complaints = [...(reading.ok ? [] : reading.complaints), ...later.map(reading.locate)];
  if (complaints.length > 0 || set === undefined)
    return { ok: false, complaints: complaints.sort((a, b) => a.line - b.line || a.column - b.column) };
  return { ok: true, value: { plan, set, joints } };
};
