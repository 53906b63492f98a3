import type { Joint } from '../joint/joint.ts';
import { setOut } from '../joint/layOut.ts';
import { withAdvice } from '../router/limits/layOutForCutter.ts';
import { accept, type Result } from '../units/complaint.ts';
import { type FrontDraft, frontWith } from './draftFront.ts';
import { frontJointSpec, type Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { nearestChoice } from './familyTarget.ts';

/** A drawer whose number of tails at the front is still open. */
export interface DraftedFront {
  readonly spec: DrawerSpec;
  readonly sizes: Sizes;
  readonly front: FrontDraft;
}

/** The front joint with the number of tails that comes nearest to the aim; a listed one is as it was listed. */
export const frontJoint = (draft: DraftedFront, aim: number): Result<Joint> => {
  const { resolved, possible, candidates } = draft.front;
  const choice = nearestChoice(candidates, aim);
  if (choice === undefined || resolved.spacing.kind === 'listed') return listedFront(draft);
  const { tails } = choice;
  const joint = frontWith(resolved, resolved.spacing, choice);
  if (!joint.ok) return joint;
  const alternatives = possible
    .filter((other) => Math.abs(other.tails - tails) === 1)
    .map((other) => ({ tails: other.tails, tip: other.tip }));
  return accept(advisedOnTools(draft, { ...joint.value, alternatives }));
};

/** The front joint of a drawer whose tails are listed. */
export const listedFront = (draft: DraftedFront): Result<Joint> => {
  const listed = setOut(draft.front.resolved);
  return listed.ok ? accept(advisedOnTools(draft, listed.value)) : listed;
};

/** A front joint with all that is advised on its drawer's tools. */
export const advisedOnTools = ({ spec, sizes }: DraftedFront, joint: Joint): Joint => {
  const { cutter, fingers } = spec;
  return cutter === undefined
    ? joint
    : withAdvice(frontJointSpec(spec, sizes.height), joint, { cutter, ...(fingers && { fingers }) });
};
