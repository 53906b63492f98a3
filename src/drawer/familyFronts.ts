import type { Joint } from '../joint/joint.ts';
import { setOut } from '../joint/layOut.ts';
import { withAdvice } from '../router/limits/layOutForCutter.ts';
import { accept, type Complaint, type Result } from '../units/complaint.ts';
import type { DrawerDraft } from './draftDrawer.ts';
import { frontWith } from './draftFront.ts';
import { frontJointSpec } from './drawerSizes.ts';
import { commonPin, familyTarget, nearestChoice } from './familyTarget.ts';

/** The front corners of a set, matched to one tail width. */
export interface FamilyFronts {
  /** The set's pin, in mm. */
  readonly pin: number;
  /** The tail width that all are matched to, in mm. */
  readonly target: number;
  /** One for each drawer. */
  readonly fronts: readonly Joint[];
}

/** What is wrong with the front of one drawer. */
export interface FrontFault {
  readonly index: number;
  readonly complaints: readonly Complaint[];
}

/**
 * Fronts by the family rule, whatever spacers they need: undefined where there are no drawers.
 * @param target the tail width to match, in mm; found from the drawers unless given
 */
export const familyFronts = (
  drafts: readonly DrawerDraft[],
  target: number | undefined,
): FamilyFronts | readonly FrontFault[] | undefined => {
  const pin = commonPin(drafts.map(({ front }) => front.resolved.pin));
  if (pin === undefined) return undefined;
  const choosing = drafts.map(({ front }) => front.candidates).filter((candidates) => candidates.length > 0);
  const aim =
    target ??
    familyTarget(
      choosing.map((candidates) => candidates.map(({ tip }) => tip)),
      pin,
    );
  const faults: FrontFault[] = [];
  const fronts: Joint[] = [];
  drafts.forEach((draft, index) => {
    const front = frontJoint(draft, aim);
    if (front.ok) fronts.push(front.value);
    else faults.push({ index, complaints: front.complaints });
  });
  return faults.length > 0 ? faults : { pin, target: aim, fronts };
};

/** The front joint with the number of tails that comes nearest to the aim; a listed one is as it was listed. */
const frontJoint = (draft: DrawerDraft, aim: number): Result<Joint> => {
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
export const listedFront = (draft: DrawerDraft): Result<Joint> => {
  const listed = setOut(draft.front.resolved);
  return listed.ok ? accept(advisedOnTools(draft, listed.value)) : listed;
};

/** A front joint with all that is advised on its drawer's tools. */
export const advisedOnTools = ({ spec, sizes }: DrawerDraft, joint: Joint): Joint => {
  const { cutter, fingers } = spec;
  return cutter === undefined
    ? joint
    : withAdvice(frontJointSpec(spec, sizes.height), joint, { cutter, ...(fingers && { fingers }) });
};
