import { accept, type Complaint, type Result, refuse } from '../complaint.ts';
import type { Cutter } from '../guided/cutter.ts';
import { fitToCutter } from '../guided/fitToCutter.ts';
import { checkRoom, enters } from '../guided/layOutForCutter.ts';
import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import { DUST } from '../joint/dust.ts';
import { checkWish, setOut } from '../joint/layOut.ts';
import { LEAST_PIN } from '../joint/limits.ts';
import { narrowestTip } from '../joint/spacing.ts';
import { tailWidths } from '../joint/tailWidths.ts';
import { mm, say } from '../units/phrase.ts';
import { type Choice, grooveMargins, hidingChoices } from './groove.ts';
import { frontJointSpec, sizesOf } from './sizes.ts';
import type { DrawerSpec } from './spec.ts';

/** The front corners of a drawer, whose number of tails is still open. */
export interface FrontDraft {
  /** The wish, its defaults filled in; the number of tails is as wished or open. */
  readonly resolved: ResolvedSpec;
  /** Every number of tails that hides the groove; none where tails are listed. */
  readonly possible: readonly Choice[];
  /** Those of them that the wish leaves: all, or the number that was wished. */
  readonly candidates: readonly Choice[];
}

/** What a drawer's front corners allow; places name the joint's options, and the cutter's keys under `cutter`. */
export const draftFront = (spec: DrawerSpec): Result<FrontDraft & { grooveShows: boolean }> => {
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  const { cutter } = spec;
  const fitted = cutter === undefined ? accept(wish) : fitToCutter(wish, cutter);
  if (!fitted.ok) return fitted;
  const resolved = withDefaults(fitted.value);
  const wrong = checkWish(fitted.value, resolved);
  if (wrong.length > 0) return refuse(...wrong);
  const { spacing } = resolved;
  if (spacing.kind === 'listed') {
    const listed = setOut(resolved);
    if (!listed.ok) return listed;
    const tight = cutter === undefined ? [] : checkRoom(listed.value, cutter);
    if (tight.length > 0) return refuse(...tight);
    const grooveShows = grooveMargins(resolved, spec.groove).some((margin) => margin < -DUST);
    return accept({ resolved, possible: [], candidates: [], grooveShows });
  }
  const wished = <C extends Choice>(choices: readonly C[]): readonly C[] =>
    spacing.tails === undefined ? choices : choices.filter(({ tails }) => tails === spacing.tails);
  const hiding = hidingChoices(resolved, spacing, spec.groove);
  const possible =
    cutter === undefined
      ? hiding
      : hiding.filter((choice) => enters(resolved.kind, narrowestTip(spacing, choice), cutter));
  const candidates = wished(possible);
  if (candidates.length === 0) {
    const tooTight = wished(hiding)[0];
    if (cutter !== undefined && tooTight !== undefined)
      return refuse(tightComplaint(narrowestTip(spacing, tooTight), cutter, possible.at(-1)));
    // The groove may ask for a narrower half pin than was wished; what even the narrowest leaves no room for is no matter of the groove.
    const narrowest = tailWidths({ ...resolved, halfPin: { ...resolved.halfPin, lower: LEAST_PIN } });
    if (!narrowest.ok) return narrowest;
  }
  return accept({ resolved, possible, candidates, grooveShows: candidates.length === 0 });
};

/** Tails that hide the groove but whose sockets the cutter cannot enter. */
const tightComplaint = (tip: number, { diameter }: Cutter, most: Choice | undefined): Complaint => ({
  at: ['tails'],
  says: say`the narrowest tail would be ${mm(tip)} at its tip; the cutter of ${mm(diameter)} cannot enter its socket, so it must be ${mm(diameter)} or more`,
  hint:
    most === undefined
      ? say`a cutter of smaller diameter, or a higher drawer`
      : say`${most.tails}, for tails of ${mm(most.tip)}, or a cutter of smaller diameter`,
});
