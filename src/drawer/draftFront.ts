import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import type { Joint } from '../joint/joint.ts';
import { LEAST_PIN, TARGET_TAIL_IN_PINS } from '../joint/jointLimits.ts';
import type { JointSpec, SharedSpacing } from '../joint/jointSpec.ts';
import { KINDS, withoutKind } from '../joint/kinds/kinds.ts';
import { checkWish, setOut } from '../joint/layOut.ts';
import { narrowestTip } from '../joint/spacing.ts';
import { tailWidths } from '../joint/tailWidths.ts';
import { fitToCutter } from '../router/limits/fitToCutter.ts';
import { clampToCutter, hintNearest } from '../router/limits/nearestLayout.ts';
import { checkTails, type TailTools, tailsFit } from '../router/limits/tailLimits.ts';
import { accept, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { sawCut } from './box/sawnApart.ts';
import { checkSawCut, sawnCorner } from './box/sawnCorner.ts';
import { spareRounded } from './drawerLimits.ts';
import { frontJointSpec, sizesOf } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { nearestChoice } from './familyTarget.ts';
import { grooveMargins, type HidingChoice, hidingChoices } from './groove/hidingChoices.ts';

/** The front corners of a drawer, whose number of tails is still open. */
export interface FrontDraft {
  /** The wish, its defaults filled in; the number of tails is as wished or open. */
  readonly resolved: ResolvedSpec;
  /** Every number of tails that hides the groove; none where tails are listed. */
  readonly possible: readonly HidingChoice[];
  /** Those of them that the wish leaves: all, or the number that was wished. */
  readonly candidates: readonly HidingChoice[];
  /** Whether no such number, or not the listed tails, hide it. */
  readonly grooveShows: boolean;
}

/** What a drawer's front corners allow; places name the joint's options, and the cutter's keys under `cutter`. */
export const draftFront = (spec: DrawerSpec): Result<FrontDraft> => {
  const front = draftWithin(spec);
  const { cutter } = spec;
  if (front.ok || cutter === undefined) return front;
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  return refuse(
    ...hintNearest(front.complaints, nearestFront(spec, clampToCutter(wish, cutter)), wish, 'kept'),
  );
};

/** The corner with the tails nearest to the usual that hides the groove, of a wish that the cutter can cut. */
const nearestFront = (spec: DrawerSpec, wish: JointSpec): Joint | undefined => {
  const { pinBoard, slope, pin } = wish;
  const front = draftWithin({
    ...spec,
    stock: { ...spec.stock, front: { ...spec.stock.front, thickness: pinBoard } },
    joint: {
      ...withoutKind(spec.joint),
      ...(slope && { slope }),
      ...(pin !== undefined && { pin }),
      ...KINDS[wish.kind].wish(wish),
      spacing: { kind: 'even' },
    },
  });
  if (!front.ok) return undefined;
  const { resolved, possible } = front.value;
  const { spacing } = spec.joint;
  const count = spacing.kind === 'listed' ? spacing.tails.length : spacing.tails;
  const choice =
    count === undefined
      ? nearestChoice(possible, TARGET_TAIL_IN_PINS * resolved.pin)
      : possible.toSorted((a, b) => Math.abs(a.tails - count) - Math.abs(b.tails - count))[0];
  const joint = choice && frontWith(resolved, { kind: 'even' }, choice);
  return joint?.ok ? joint.value : undefined;
};

const draftWithin = (spec: DrawerSpec): Result<FrontDraft> => {
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  const { cutter, fingers } = spec;
  const tools: TailTools | undefined = cutter && { cutter, ...(fingers && { fingers }) };
  const fitted = cutter === undefined ? accept(wish) : fitToCutter(wish, cutter, fingers);
  if (!fitted.ok) return fitted;
  const resolved = withDefaults(fitted.value);
  const wrong = checkWish(fitted.value, resolved);
  if (wrong.length > 0) return refuse(...wrong);
  const { spacing } = resolved;
  if (spacing.kind === 'listed') return draftListed(spec, resolved, tools);
  const lid = spec.box?.lid;
  if (lid !== undefined) {
    const sawn = sawnCorner(resolved, spacing, lid, { groove: spec.groove, tools });
    if (!sawn.ok) return sawn;
    return sawn.value === undefined
      ? accept({ resolved, possible: [], candidates: [], grooveShows: true })
      : draftListed(spec, sawn.value, tools);
  }
  const wished = <C extends HidingChoice>(choices: readonly C[]): readonly C[] =>
    spacing.tails === undefined ? choices : choices.filter(({ tails }) => tails === spacing.tails);
  const hiding = hidingChoices(resolved, spacing, spec.groove);
  const possible =
    tools === undefined
      ? hiding
      : hiding.filter((choice) =>
          tailsFit(resolved, { tails: choice.tails, tip: narrowestTip(spacing, choice) }, tools),
        );
  const candidates = wished(possible);
  if (candidates.length === 0) {
    const tooTight = wished(hiding)[0];
    if (tools !== undefined && tooTight !== undefined)
      return tightFront(frontWith(resolved, spacing, tooTight), tools);
    // The groove may ask for a narrower half pin than was wished; what even the narrowest leaves no room for is no matter of the groove.
    const narrowest = tailWidths({ ...resolved, halfPin: { ...resolved.halfPin, lower: LEAST_PIN } });
    if (!narrowest.ok) return narrowest;
  }
  return accept({ resolved, possible, candidates, grooveShows: candidates.length === 0 });
};

/** Front corners whose tails are listed. */
const draftListed = (
  { groove, box }: DrawerSpec,
  wished: ResolvedSpec,
  tools: TailTools | undefined,
): Result<FrontDraft> => {
  const resolved = box?.lid === undefined ? wished : { ...wished, sawCut: sawCut(wished.width, box.lid) };
  const listed = setOut(resolved);
  if (!listed.ok) return listed;
  const wrong = [
    ...(tools === undefined ? [] : checkTails(listed.value, tools)),
    ...checkSawCut(listed.value),
  ];
  if (wrong.length > 0) return refuse(...wrong);
  const rounded = spareRounded(resolved.notation) + EPSILON;
  const grooveShows = grooveMargins(resolved, groove).some((margin) => margin < -rounded);
  return accept({ resolved, possible: [], candidates: [], grooveShows });
};

/** Tails that hide the groove but that the tools cannot cut. */
const tightFront = (front: Result<Joint>, tools: TailTools): Result<never> =>
  refuse(...(front.ok ? checkTails(front.value, tools) : front.complaints));

/** The front joint with one of the numbers of tails that hide the groove. */
export const frontWith = (
  resolved: ResolvedSpec,
  spacing: SharedSpacing,
  { tails, lowerHalfPin: lower }: HidingChoice,
): Result<Joint> =>
  setOut({ ...resolved, halfPin: { ...resolved.halfPin, lower }, spacing: { ...spacing, tails } });
