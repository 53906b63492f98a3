import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { meanTail } from '../../joint/proportion.ts';
import { ratioBetween } from '../../joint/spacing.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import { cornerComplaints } from '../cornerComplaints.ts';
import type { Draft } from '../draft.ts';
import type { Family } from '../drawer.ts';
import { FAMILY_RATIO, LOOSE_BOTTOM } from '../drawerLimits.ts';
import { nearestChoice } from '../family.ts';
import { adviseBackSpaces } from './adviseBackSpaces.ts';
import { adviseOnYear } from './adviseOnYear.ts';
import { advisePanel } from './advisePanel.ts';
import { adviseSizes } from './adviseSizes.ts';

/**
 * What a careful maker would say of a drawer that can be made all the same; places start in the drawer's entry.
 * @param front the joint that its front corners were given
 */
export const adviseDrawer = (draft: Draft, front: Joint, family: Family): Complaint[] => [
  ...onFamily(draft, meanTail(front), family),
  ...onLowerHalfPin(draft, front),
  ...onGroove(draft),
  ...adviseSizes(draft.spec),
  ...advisePanel(draft.spec),
  ...adviseBackSpaces(draft),
  ...adviseOnYear(draft.spec, draft.sizes),
  ...cornerComplaints(
    draft.spec,
    'front',
    // Of a thin front is told in a drawer's own words.
    front.advice.filter(({ at }) => at[0] !== 'pinBoard'),
  ),
  ...cornerComplaints(draft.spec, 'back', draft.back.advice),
];

const onFamily = (
  { front: { resolved, possible } }: Draft,
  tip: number,
  { target, pin }: Family,
): Complaint[] => {
  const advice: Complaint[] = [];
  const ratio = ratioBetween(tip, target);
  const { spacing } = resolved;
  // A number that was wished or listed breaks the family; one that was chosen is the nearest there is.
  if (ratio > FAMILY_RATIO && (spacing.kind === 'listed' || spacing.tails !== undefined)) {
    const better = nearestChoice(possible, target);
    advice.push({
      at: ['joint', 'tails'],
      says: say`tails of ${mm(tip)} stand out from the set, which keeps to ${mm(target)}: they are ${Number(ratio.toFixed(2))} times as ${tip > target ? 'wide' : 'narrow'}`,
      ...(better === undefined ? {} : { hint: say`${better.tails}, for tails of ${mm(better.tip)}` }),
    });
  }
  if (Math.abs(resolved.pin - pin) > EPSILON)
    advice.push({
      at: ['joint', 'pin'],
      says: say`pins of ${mm(resolved.pin)} stand out from the set, whose pins are ${mm(pin)}`,
      hint: say`${mm(pin)}`,
    });
  return advice;
};

/** Only where a half pin was wished in so many words: a default may give way unsaid. */
const onLowerHalfPin = ({ spec }: Draft, front: Joint): Complaint[] => {
  const wished = spec.joint.halfPin?.lower;
  const taken = front.tails[0]?.tip[0];
  return wished === undefined || taken === undefined || Math.abs(wished - taken) < EPSILON
    ? []
    : [
        {
          at: ['joint', 'halfPin'],
          says: say`the lower half pin is ${mm(taken)} instead of ${mm(wished)}, so that the lowest tail hides the groove`,
        },
      ];
};

const onGroove = ({ spec, sizes }: Draft): Complaint[] => {
  const { groove, stock, bottom, joint } = spec;
  const advice: Complaint[] = [];
  const grooved =
    bottom.hold.kind === 'slips'
      ? { board: 'slips', thickness: bottom.hold.width }
      : { board: 'sides', thickness: sizes.wall };
  if (groove.depth > grooved.thickness / 2 + EPSILON)
    advice.push({
      at: ['groove', 'depth'],
      says: say`a groove ${mm(groove.depth)} deep takes more than half of ${grooved.board} ${mm(grooved.thickness)} thick`,
      hint:
        bottom.hold.kind === 'slips'
          ? say`${mm(grooved.thickness / 2)}, or wider slips`
          : say`${mm(grooved.thickness / 2)}, or slips to carry the bottom`,
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
      hint: say`a groove ${mm(thickness)} wide`,
    });
  if (kindOf(joint).sockets === 'open' && bottom.hold.kind === 'groove')
    advice.push({
      at: ['joint', 'kind'],
      says: say`a groove that runs through the sides' front tails shows at the front of a ${joint.kind} joint`,
      hint: say`a groove stopped short of the front, or lapped corners`,
    });
  return advice;
};
