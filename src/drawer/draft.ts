import { accept, type Complaint, type Result, refuse } from '../complaint.ts';
import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import { DUST } from '../joint/dust.ts';
import type { Joint } from '../joint/joint.ts';
import { checkWish, layOut } from '../joint/layOut.ts';
import { LEAST_PIN, WIDTH_RANGE } from '../joint/limits.ts';
import type { JointSpec } from '../joint/spec.ts';
import { tailWidths } from '../joint/tailWidths.ts';
import { checkBoards } from './checkBoards.ts';
import { checkMeasures } from './checkMeasures.ts';
import { checkSpace } from './checkSpace.ts';
import { type Choice, grooveMargins, hidingChoices } from './groove.ts';
import { grooveComplaint } from './grooveComplaint.ts';
import { backPlace, frontPlace, ofCorners } from './places.ts';
import { grooveRemedies, type Remedies } from './remedies.ts';
import { backJointSpec, frontJointSpec, type Sizes, sizesOf } from './sizes.ts';
import type { DrawerSpec } from './spec.ts';

/** A drawer that can be made, whose number of tails at the front is still open. */
export interface Draft {
  readonly spec: DrawerSpec;
  readonly sizes: Sizes;
  readonly front: {
    /** The wish, its defaults filled in; the number of tails is as wished or open. */
    readonly resolved: ResolvedSpec;
    /** Every number of tails that hides the groove; none where tails are listed. */
    readonly possible: readonly Choice[];
    /** Those of them that the wish leaves: all, or the number that was wished. */
    readonly candidates: readonly Choice[];
  };
  readonly back: Joint;
}

interface Assessment {
  /** All but that of a groove that shows. */
  readonly complaints: readonly Complaint[];
  readonly grooveShows: boolean;
  /** Absent where anything is wrong. */
  readonly draft?: Draft;
}

const assess = (spec: DrawerSpec): Assessment => {
  const refused = (complaints: readonly Complaint[]) => ({ complaints, grooveShows: false });
  const single = checkMeasures(spec);
  if (single.length > 0) return refused(single);
  const sizes = sizesOf(spec);
  const space = checkSpace(spec, sizes);
  if (space.length > 0) return refused(space);

  const boards = checkBoards(spec, sizes);
  const front = frontCorner(spec, frontJointSpec(spec, sizes.height));
  const grooveShows = front.ok && front.value.grooveShows;
  // A back that is too low for any joint has been complained of already.
  const back =
    sizes.backHeight >= WIDTH_RANGE.least ? layOut(backJointSpec(spec, sizes.backHeight)) : refuse();
  const complaints = [
    ...boards,
    ...(front.ok ? [] : ofCorners('front', (place) => frontPlace(spec, place), front.complaints)),
    ...(back.ok ? [] : ofCorners('back', backPlace, back.complaints)),
  ];
  return complaints.length === 0 && front.ok && !grooveShows && back.ok
    ? { complaints, grooveShows, draft: { spec, sizes, front: front.value, back: back.value } }
    : { complaints, grooveShows };
};

const frontCorner = (
  spec: DrawerSpec,
  wish: JointSpec,
): Result<Draft['front'] & { grooveShows: boolean }> => {
  const resolved = withDefaults(wish);
  const wrong = checkWish(wish, resolved);
  if (wrong.length > 0) return refuse(...wrong);
  const { spacing } = resolved;
  if (spacing.kind === 'listed') {
    const listed = tailWidths(resolved);
    if (!listed.ok) return listed;
    const grooveShows = grooveMargins(resolved, spec.groove).some((margin) => margin < -DUST);
    return accept({ resolved, possible: [], candidates: [], grooveShows });
  }
  const possible = hidingChoices(resolved, spacing, spec.groove);
  const candidates =
    spacing.tails === undefined ? possible : possible.filter(({ tails }) => tails === spacing.tails);
  if (candidates.length === 0) {
    // The groove may ask for a narrower half pin than was wished; what even the narrowest leaves no room for is no matter of the groove.
    const narrowest = tailWidths({ ...resolved, halfPin: { ...resolved.halfPin, lower: LEAST_PIN } });
    if (!narrowest.ok) return narrowest;
  }
  return accept({ resolved, possible, candidates, grooveShows: candidates.length === 0 });
};

/** Sizes a drawer and finds what its corners allow, or says everything that is wrong; places start in the drawer's entry. */
export const draftDrawer = (spec: DrawerSpec): Result<Draft> => {
  const { complaints, grooveShows, draft } = assess(spec);
  if (draft !== undefined) return accept(draft);
  return grooveShows
    ? refuse(...complaints, grooveComplaint(spec, remediesFor(spec)))
    : refuse(...complaints);
};

/**
 * What would hide the groove of a drawer whose groove shows, each change tried on the whole drawer: it must bring no new
 * fault. Nothing helps, and none is needed, where the groove is hidden or the drawer cannot be judged.
 */
export const remediesFor = (spec: DrawerSpec): Remedies => {
  const { complaints, grooveShows } = assess(spec);
  if (!grooveShows) return {};
  return grooveRemedies(spec, (changed) => {
    const after = assess(changed);
    return !after.grooveShows && after.complaints.length <= complaints.length;
  });
};
