import type { ResolvedSpec } from '../../joint/defaults.ts';
import type { Joint } from '../../joint/joint.ts';
import { LEAST_PIN, TARGET_TAIL_IN_PINS } from '../../joint/jointLimits.ts';
import type { SharedSpacing } from '../../joint/jointSpec.ts';
import { leastTip, meanTip, mostTails, ratioBetween, tailRoom } from '../../joint/spacing.ts';
import { type TailTools, tailsFit } from '../../router/limits/tailLimits.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Groove, SawnLid } from '../drawerSpec.ts';
import { type HidingChoice, hidingChoices } from '../groove/hidingChoices.ts';
import { sawnApart } from './sawnApart.ts';

/** The least height of either, for one tail between its half pins, in mm. */
export const leastHeight = (part: ResolvedSpec): number => part.width - tailRoom(part, 1) + leastTip(part);

/**
 * The corner of a box whose lid is sawn off, its tails listed: of height H, saw cut k, half pins h and pins p,
 * H = 2 h + sum of tails + (n - 2) p + 2 h + k for n tails in all. The pin over the saw cut is h + k + h wide, so that both
 * parts keep a half pin there.
 * @returns undefined where no number of tails below the saw cut hides the groove
 */
export const sawnCorner = (
  corner: ResolvedSpec,
  spacing: SharedSpacing,
  lid: SawnLid,
  { groove, tools }: { readonly groove: Groove; readonly tools: TailTools | undefined },
): Result<ResolvedSpec | undefined> => {
  if (spacing.kind !== 'even')
    return refuse({
      at: [spacing.kind === 'grouped' ? 'groups' : 'graded'],
      says: say`the saw cut for the lid divides the tails, so they are even, or listed width by width`,
      remedy: say`remove it, or list the tails, with a pin over the saw cut`,
    });
  const apart = sawnApart(corner, lid);
  const cut = (choice: HidingChoice): boolean => tools === undefined || tailsFit(corner, choice, tools);
  const below = hidingChoices(apart.box, spacing, groove).filter(cut);
  const above = Array.from({ length: mostTails(apart.lid, spacing) }, (_, i) => ({
    tails: i + 1,
    tip: meanTip(apart.lid, i + 1),
    lowerHalfPin: corner.halfPin.lower,
  })).filter(cut);
  if (below.length === 0) return accept(undefined);
  const target = TARGET_TAIL_IN_PINS * corner.pin;
  const pairs = below.flatMap((box) =>
    above.map((top) => ({
      box,
      top,
      tails: box.tails + top.tails,
      /** How far both are from the usual width, in ratio. */
      off: Math.log(ratioBetween(box.tip, target)) ** 2 + Math.log(ratioBetween(top.tip, target)) ** 2,
    })),
  );
  const [best] = pairs
    .filter(({ tails }) => spacing.tails === undefined || tails === spacing.tails)
    .toSorted((a, b) => a.off - b.off || a.tails - b.tails);
  if (best === undefined) {
    const counts = pairs.map(({ tails }) => tails);
    return refuse({
      at: ['tails'],
      says: say`${spacing.tails ?? 0} tails cannot be shared by the box, ${mm(apart.box.width)} high, and its lid, ${mm(lid.height)}: there may be ${Math.min(...counts)} to ${Math.max(...counts)}`,
      hint: say`${(spacing.tails ?? 0) < Math.min(...counts) ? Math.min(...counts) : Math.max(...counts)}`,
    });
  }
  const { box, top } = best;
  const { halfPin, pin } = corner;
  const list = <T>(count: number, value: T): T[] => new Array<T>(count).fill(value);
  return accept({
    ...corner,
    halfPin: { lower: box.lowerHalfPin, upper: halfPin.upper },
    spacing: {
      kind: 'listed',
      tails: [...list(box.tails, box.tip), ...list(top.tails, top.tip)],
      pins: [
        ...list(box.tails - 1, pin),
        halfPin.upper + lid.kerf + halfPin.lower,
        ...list(top.tails - 1, pin),
      ],
    },
  });
};

/** What is wrong with tails that are listed where no pin lies over the saw cut, with what is to be left of it on either side. */
export const checkSawCut = ({ pins, sawCut }: Joint): Complaint[] => {
  if (sawCut === undefined) return [];
  const [from, to] = sawCut;
  return pins.some(
    ({ half, narrow }) =>
      !half && narrow[0] <= from - LEAST_PIN + EPSILON && narrow[1] >= to + LEAST_PIN - EPSILON,
  )
    ? []
    : [
        {
          at: ['tails'],
          says: say`no pin lies over the saw cut for the lid, ${mm(from)} to ${mm(to)} up, with ${mm(LEAST_PIN)} to spare at both edges, so a tail would be sawn through`,
          remedy: say`list a pin there, or give the number of tails`,
        },
      ];
};
