import type { Joint } from '../joint/joint.ts';
import { TARGET_TAIL_IN_PINS, WIDTH_RANGE } from '../joint/jointLimits.ts';
import { layOutWith } from '../router/limits/layOutWith.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { isInRange } from '../units/range.ts';
import { checkBoards } from './check/checkBoards.ts';
import { checkLid } from './check/checkLid.ts';
import { checkMeasures } from './check/checkMeasures.ts';
import { checkSpace } from './check/checkSpace.ts';
import { cornerComplaints } from './cornerComplaints.ts';
import { draftFront } from './draftFront.ts';
import { backJointSpec, hasEqualEnds, type Sizes, sizesOf, turned } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { type DraftedFront, frontJoint } from './frontJoint.ts';
import { grooveComplaint } from './groove/grooveComplaint.ts';
import { type GrooveFixes, grooveFixes } from './groove/grooveFixes.ts';

/** A drawer that can be made, whose number of tails at the front is still open; a box, whose back shows which was chosen there. */
export interface DrawerDraft extends DraftedFront {
  readonly back: Joint;
}

interface Assessment {
  /** All but that of a groove that shows. */
  readonly complaints: readonly Complaint[];
  /** The drawer whose groove shows, or the box as it is from the end where it does; absent where none does. */
  readonly grooveShows?: DrawerSpec;
  /** Absent where anything is wrong. */
  readonly draft?: DrawerDraft;
}

const assess = (spec: DrawerSpec): Assessment => {
  const refused = (complaints: readonly Complaint[]) => ({ complaints });
  const single = checkMeasures(spec);
  if (single.length > 0) return refused(single);
  const sizes = sizesOf(spec);
  const space = checkSpace(spec, sizes);
  if (space.length > 0) return refused(space);
  const lid = checkLid(spec, sizes);
  if (lid.length > 0) return refused(lid);

  const boards = checkBoards(spec, sizes);
  const front = draftFront(spec);
  const showsInFront = front.ok && front.value.grooveShows;
  const back =
    spec.box === undefined
      ? backOfDrawer(spec, sizes)
      : front.ok && !showsInFront
        ? backOfBox({ spec, sizes, front: front.value })
        : refuse();
  const grooveShows = showsInFront ? spec : back.ok && back.value === undefined ? turned(spec) : undefined;
  const complaints = [
    ...boards,
    ...(front.ok ? [] : cornerComplaints(spec, 'front', front.complaints)),
    ...(back.ok ? [] : cornerComplaints(spec, 'back', back.complaints)),
  ];
  return complaints.length === 0 && front.ok && !grooveShows && back.ok && back.value
    ? { complaints, draft: { spec, sizes, front: front.value, back: back.value } }
    : { complaints, ...(grooveShows && { grooveShows }) };
};

const backOfDrawer = (spec: DrawerSpec, sizes: Sizes): Result<Joint> =>
  // A back that is too low for any joint has been complained of already.
  isInRange(sizes.backHeight, WIDTH_RANGE)
    ? layOutWith(backJointSpec(spec, sizes.backHeight), spec)
    : refuse();

/**
 * The back corners of a box: the front ones where both boards are equally thick, else with as many tails where so many can be
 * cut there; undefined where the groove would show at them.
 */
const backOfBox = (front: DraftedFront): Result<Joint | undefined> => {
  const { spec } = front;
  const first = frontOfBox(front);
  if (!first.ok || hasEqualEnds(spec)) return first;
  const back = turned(spec);
  const { spacing } = back.joint;
  const tails = first.value.tails.length;
  const alike: DrawerSpec =
    spacing.kind === 'listed' ? back : { ...back, joint: { ...back.joint, spacing: { ...spacing, tails } } };
  for (const wish of [alike, back]) {
    const draft = draftFront(wish);
    if (draft.ok && !draft.value.grooveShows)
      return frontOfBox({ spec: wish, sizes: sizesOf(wish), front: draft.value });
    if (!draft.ok && wish === back) return draft;
  }
  return accept(undefined);
};

/** The front corners of a box, which has no other to look like: with the usual number of tails of those that hide its groove. */
export const frontOfBox = (draft: DraftedFront): Result<Joint> =>
  frontJoint(draft, TARGET_TAIL_IN_PINS * draft.front.resolved.pin);

/** Sizes a drawer and finds what its corners allow, or says everything that is wrong; places start in the drawer's entry. */
export const draftDrawer = (spec: DrawerSpec): Result<DrawerDraft> => {
  const { complaints, grooveShows, draft } = assess(spec);
  if (draft !== undefined) return accept(draft);
  return grooveShows
    ? refuse(...complaints, grooveComplaint(grooveShows, fixesOf({ complaints, grooveShows })))
    : refuse(...complaints);
};

/**
 * Changes that would each hide a groove that shows, tried on the whole drawer, where they must cause no new fault; none
 * where the groove is hidden or the drawer cannot be judged.
 */
export const grooveFixesOf = (spec: DrawerSpec): GrooveFixes => fixesOf(assess(spec));

const fixesOf = ({ complaints, grooveShows }: Assessment): GrooveFixes =>
  grooveShows === undefined
    ? {}
    : grooveFixes(grooveShows, (changed) => {
        const after = assess(changed);
        return !after.grooveShows && after.complaints.length <= complaints.length;
      });
