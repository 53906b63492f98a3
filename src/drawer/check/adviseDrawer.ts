import { type Joint, meanTail } from '../../joint/joint.ts';
import { ratioBetween } from '../../joint/spacing.ts';
import { pastTheEdges } from '../../router/passes/passes.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { isSolidWood } from '../../wood/species.ts';
import { cornerComplaints } from '../cornerComplaints.ts';
import type { DrawerDraft } from '../draftDrawer.ts';
import type { Family } from '../drawer.ts';
import { FAMILY_RATIO, LOOSE_BOTTOM } from '../drawerLimits.ts';
import { hasEqualEnds, sidePastBack } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { nearestChoice } from '../familyTarget.ts';
import { comesOut } from '../groove/hidingChoices.ts';
import { adviseBox } from './adviseBox.ts';
import { adviseOnYear } from './adviseOnYear.ts';
import { adviseOpening } from './adviseOpening.ts';

/**
 * Advice on a drawer that can be made; places start in the drawer's entry.
 * @param front the joint that its front corners were given
 * @param family that of its set; none for a box
 */
export const adviseDrawer = (draft: DrawerDraft, front: Joint, family?: Family): Complaint[] => [
  ...(family === undefined ? [] : onFamily(draft, meanTail(front), family)),
  ...onLowerHalfPin(draft, front),
  ...onGroove(draft),
  ...adviseOpening(draft.spec),
  ...adviseSizes(draft.spec),
  ...advisePanel(draft.spec),
  ...adviseBox(draft.spec, draft.sizes),
  ...adviseOnYear(draft.spec, draft.sizes),
  ...cornerComplaints(
    draft.spec,
    'front',
    // `adviseSizes` covers a thin front in a drawer's terms.
    front.advice.filter(({ at }) => at[0] !== 'pinBoard'),
  ),
  // A box's corners that are all alike are advised on once.
  ...(hasEqualEnds(draft.spec) ? [] : cornerComplaints(draft.spec, 'back', draft.back.advice)),
];

const onFamily = (
  { front: { resolved, possible } }: DrawerDraft,
  tip: number,
  { target, pin }: Family,
): Complaint[] => {
  const advice: Complaint[] = [];
  const ratio = ratioBetween(tip, target);
  const { spacing } = resolved;
  // A number that was wished or listed breaks the family; one that was chosen is the nearest there is.
  if (ratio > FAMILY_RATIO && (spacing.kind === 'listed' || spacing.tails !== undefined)) {
    const isGrouped = spacing.kind === 'grouped';
    const better = isGrouped ? undefined : nearestChoice(possible, target);
    const instead = better === undefined ? [] : say`; ${better.tails} would be ${mm(better.tip)} wide`;
    advice.push({
      at: ['joint', isGrouped ? 'groups' : 'tails'],
      says: say`tails of ${mm(tip)} differ from the set's tail width, ${mm(target)}: they are ${Number(ratio.toFixed(2))} times as ${tip > target ? 'wide' : 'narrow'}${instead}`,
      ...(better && { hint: say`${better.tails}` }),
    });
  }
  if (Math.abs(resolved.pin - pin) > EPSILON)
    advice.push({
      at: ['joint', 'pin'],
      says: say`pins of ${mm(resolved.pin)} differ from the set's, ${mm(pin)}`,
      hint: say`${mm(pin)}`,
    });
  return advice;
};

/** Only for a half pin that was given: a default changes without advice. */
const onLowerHalfPin = ({ spec }: DrawerDraft, front: Joint): Complaint[] => {
  const wished = spec.joint.halfPin?.lower;
  const taken = front.tails[0] && front.tails[0].tip[0] - front.shoulder.lower;
  return wished === undefined || taken === undefined || Math.abs(wished - taken) < EPSILON
    ? []
    : [
        {
          at: ['joint', 'halfPin'],
          says: say`the lower half pin is ${mm(taken)} instead of ${mm(wished)}, so that the lowest tail hides the groove`,
        },
      ];
};

const onGroove = ({ spec, sizes }: DrawerDraft): Complaint[] => {
  const { groove, stock, bottom, joint } = spec;
  const advice: Complaint[] = [];
  const grooved =
    bottom.hold.kind === 'slips'
      ? { board: 'slips', thickness: bottom.hold.width }
      : { board: 'sides', thickness: Math.min(sizes.wall.left, sizes.wall.right) };
  if (groove.depth > grooved.thickness / 2 + EPSILON)
    advice.push({
      at: ['groove', 'depth'],
      says: say`a groove ${mm(groove.depth)} deep takes more than half of ${grooved.board} ${mm(grooved.thickness)} thick`,
      hint: say`${atMost(grooved.thickness / 2)}`,
      remedy:
        bottom.hold.kind === 'slips'
          ? say`make the slips wider`
          : say`let slips carry the bottom (bottom.slips)`,
    });
  const { thickness } = stock.bottom;
  if (thickness > groove.width + EPSILON)
    advice.push({
      at: ['stock', 'bottom', 'thickness'],
      says: say`a bottom of ${mm(thickness)} is thicker than its groove of ${mm(groove.width)}: thin its edges from below to fit`,
    });
  else if (thickness < groove.width - LOOSE_BOTTOM - EPSILON)
    advice.push({
      at: ['stock', 'bottom', 'thickness'],
      says: say`a bottom of ${mm(thickness)} is loose in a groove of ${mm(groove.width)} and will rattle`,
      remedy: say`make the groove ${mm(thickness)} wide (groove.width)`,
    });
  if (groove.stopped === undefined && comesOut(spec))
    advice.push({
      at: ['groove', 'stopped'],
      says: say`a groove that runs through the sides' front tails shows at the front of a ${joint.kind} joint`,
      hint: say`groove: {stopped: auto}`,
      remedy: say`choose lapped corners`,
    });
  return advice;
};

/**
 * Advice that the half spaces of the sides' back ends are cut by hand: the sides extend below a back and mostly above it,
 * so that a cutter would run into them. At front corners these spaces end at the boards' edges.
 */
export const adviseBackSpaces = ({
  spec,
  sizes,
  back,
}: Pick<DrawerDraft, 'spec' | 'sizes' | 'back'>): Complaint[] => {
  const { cutter, box } = spec;
  if (cutter === undefined || box !== undefined) return [];
  const { lower, upper } = pastTheEdges(back, cutter);
  const both = sidePastBack(sizes, 'left').upper;
  // To the hundredth, so that equal back joints give equal advice despite rounding errors.
  const past = mm(Math.round(100 * (both ? Math.max(lower, upper) : lower)) / 100);
  return [
    {
      at: ['cutter', 'diameter'],
      says: both
        ? say`saw and chisel the half spaces of the sides' back ends: the cutter would cut ${past} into the sides, beyond the back's edges`
        : say`saw and chisel the lower half space of the sides' back ends: the cutter would cut ${past} into the sides, beyond the back's lower edge`,
    },
  ];
};

/** Advice on a panel bottom whose wood moves; the place starts in the drawer's entry. */
export const advisePanel = ({ bottom, stock, box }: DrawerSpec): Complaint[] => {
  const { species } = stock.bottom;
  return bottom.kind === 'solid' || species === undefined || !isSolidWood(species)
    ? []
    : [
        {
          at: ['bottom', 'kind'],
          says: say`a panel is taken not to move, but ${quote(species)} is solid wood: held on all sides, with its grain from front to back, it would burst the ${box === undefined ? 'drawer' : 'box'}`,
          hint: say`solid`,
        },
      ];
};

/** Advice on sizes that can be made but are rarely meant; places start in the drawer's entry. */
export const adviseSizes = ({ space, stock, box }: DrawerSpec): Complaint[] => {
  // A box's boards may be alike, and it may be higher than it is wide.
  if (box !== undefined) return [];
  const { front, side } = stock;
  const { width, height } = space.kind === 'opening' ? space.opening : space.size;
  const what = space.kind === 'opening' ? 'an opening' : 'a drawer';
  return [
    ...(front.thickness < side.thickness - EPSILON
      ? [
          {
            at: ['stock', 'front', 'thickness'],
            says: say`a front of ${mm(front.thickness)} is thinner than its sides of ${mm(side.thickness)}: are the two swapped?`,
          },
        ]
      : []),
    ...(height > width + EPSILON
      ? [
          {
            at: [space.kind, 'height'],
            says: say`${what} ${mm(width)} wide and ${mm(height)} high is higher than it is wide: are the two swapped?`,
          },
        ]
      : []),
  ];
};
