import { type Complaint, under } from '../complaint.ts';
import type { DrawerSet } from '../drawer/drawer.ts';
import { layOutSet } from '../drawer/layOutSet.ts';
import { fromEntry } from '../drawer/places.ts';
import { layOutWith } from '../guided/layOutWith.ts';
import type { Joint } from '../joint/joint.ts';
import type { Unit } from '../units/unit.ts';
import { adviseClimate } from '../wood/climate.ts';
import { adviseWoods } from './adviseWoods.ts';
import type { Plan } from './plan.ts';
import type { PlanComplaint } from './planComplaint.ts';
import { readPlan } from './readPlan.ts';

/** A corner that belongs to no drawer, set out. */
export interface LaidJoint {
  readonly name: string;
  readonly joint: Joint;
}

/** A plan that can be made, with everything set out. */
export interface LaidOut {
  readonly plan: Plan;
  /** Its advice holds what is to be said of the plan's climate and its woods too. */
  readonly set: DrawerSet;
  /** Corners that belong to no drawer, in the plan's order. */
  readonly joints: readonly LaidJoint[];
  /** Where in the plan's text a complaint that comes up later belongs; its place starts at the plan's top. */
  readonly locate: (complaint: Complaint) => PlanComplaint;
}

/** A plan set out, or every complaint about it. */
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
  const later: Complaint[] = set.ok ? [] : [...set.complaints];
  const joints = plan.joints.flatMap(({ name, spec }, i): LaidJoint[] => {
    const laid = layOutWith(spec, plan.cutting ?? {});
    if (laid.ok) return [{ name, joint: laid.value }];
    later.push(...fromEntry(['joints', i], laid.complaints));
    return [];
  });
  const complaints = [...(reading.ok ? [] : reading.complaints), ...later.map(reading.locate)];
  if (complaints.length > 0 || !set.ok)
    return {
      ok: false,
      complaints: complaints.sort((a, b) => a.line - b.line || a.column - b.column),
      units: plan.units,
    };
  const onClimate = plan.climate ? under(['climate'], adviseClimate(plan.climate)) : [];
  const advised = { ...set.value, advice: [...onClimate, ...adviseWoods(plan), ...set.value.advice] };
  return { ok: true, value: { plan, set: advised, joints, locate: reading.locate } };
};
