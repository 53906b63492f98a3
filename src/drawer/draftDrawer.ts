import type { Joint } from '../joint/joint.ts';
import { WIDTH_RANGE } from '../joint/jointLimits.ts';
import { layOutWith } from '../router/limits/layOutWith.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { isInRange } from '../units/range.ts';
import { checkBoards } from './check/checkBoards.ts';
import { checkMeasures } from './check/checkMeasures.ts';
import { checkSpace } from './check/checkSpace.ts';
import { cornerComplaints } from './cornerComplaints.ts';
import { draftFront, type FrontDraft } from './draftFront.ts';
import { backJointSpec, type Sizes, sizesOf } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { grooveComplaint } from './groove/grooveComplaint.ts';
import { type GrooveFixes, grooveFixes } from './groove/grooveFixes.ts';

/** A drawer that can be made, whose number of tails at the front is still open. */
export interface DrawerDraft {
  readonly spec: DrawerSpec;
  readonly sizes: Sizes;
  readonly front: FrontDraft;
  readonly back: Joint;
}

interface Assessment {
  /** All but that of a groove that shows. */
  readonly complaints: readonly Complaint[];
  readonly grooveShows: boolean;
  /** Absent where anything is wrong. */
  readonly draft?: DrawerDraft;
}

const assess = (spec: DrawerSpec): Assessment => {
  const refused = (complaints: readonly Complaint[]) => ({ complaints, grooveShows: false });
  const single = checkMeasures(spec);
  if (single.length > 0) return refused(single);
  const sizes = sizesOf(spec);
  const space = checkSpace(spec, sizes);
  if (space.length > 0) return refused(space);

  const boards = checkBoards(spec, sizes);
  const front = draftFront(spec);
  const grooveShows = front.ok && front.value.grooveShows;
  // A back that is too low for any joint has been complained of already.
  const back = isInRange(sizes.backHeight, WIDTH_RANGE)
    ? layOutWith(backJointSpec(spec, sizes.backHeight), spec)
    : refuse();
  const complaints = [
    ...boards,
    ...(front.ok ? [] : cornerComplaints(spec, 'front', front.complaints)),
    ...(back.ok ? [] : cornerComplaints(spec, 'back', back.complaints)),
  ];
  return complaints.length === 0 && front.ok && !grooveShows && back.ok
    ? { complaints, grooveShows, draft: { spec, sizes, front: front.value, back: back.value } }
    : { complaints, grooveShows };
};

/** Sizes a drawer and finds what its corners allow, or says everything that is wrong; places start in the drawer's entry. */
export const draftDrawer = (spec: DrawerSpec): Result<DrawerDraft> => {
  const { complaints, grooveShows, draft } = assess(spec);
  if (draft !== undefined) return accept(draft);
  return grooveShows
    ? refuse(...complaints, grooveComplaint(spec, grooveFixesOf(spec)))
    : refuse(...complaints);
};

/**
 * Changes that would each hide a groove that shows, tried on the whole drawer, where they must cause no new fault; none
 * where the groove is hidden or the drawer cannot be judged.
 */
export const grooveFixesOf = (spec: DrawerSpec): GrooveFixes => {
  const { complaints, grooveShows } = assess(spec);
  if (!grooveShows) return {};
  return grooveFixes(spec, (changed) => {
    const after = assess(changed);
    return !after.grooveShows && after.complaints.length <= complaints.length;
  });
};
