import type { Complaint } from '../complaint.ts';
import type { DrawerSet } from '../drawer/drawer.ts';
import { layOutSet } from '../drawer/layOutSet.ts';
import { fromEntry } from '../drawer/places.ts';
import { layOutWith } from '../guided/layOutWith.ts';
import type { Joint } from '../joint/joint.ts';
import type { Plan } from './plan.ts';

/** A corner that belongs to no drawer, set out. */
export interface LaidJoint {
  readonly name: string;
  readonly joint: Joint;
}

/** Everything of a plan that can be set out, and what is wrong with the rest; places start at the plan's top. */
export const layOutPlan = ({
  drawers,
  target,
  joints,
  cutting,
}: Plan): { set?: DrawerSet; joints: readonly LaidJoint[]; complaints: readonly Complaint[] } => {
  const set = layOutSet(drawers, target);
  const complaints: Complaint[] = set.ok ? [] : [...set.complaints];
  const laidJoints = joints.flatMap(({ name, spec }, i): LaidJoint[] => {
    const laid = layOutWith(spec, cutting ?? {});
    if (laid.ok) return [{ name, joint: laid.value }];
    complaints.push(...fromEntry(['joints', i], laid.complaints));
    return [];
  });
  return { ...(set.ok && { set: set.value }), joints: laidJoints, complaints };
};
