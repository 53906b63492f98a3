import type { Joint } from '../joint/joint.ts';
import type { Complaint } from '../units/complaint.ts';
import type { DrawerDraft } from './draftDrawer.ts';
import { commonPin, familyTarget } from './familyTarget.ts';
import { frontJoint } from './frontJoint.ts';

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
