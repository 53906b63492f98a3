import type { Joint } from '../../joint/joint.ts';
import { LEAST_BASE } from '../../joint/jointLimits.ts';
import type { JointSpec, SharedSpacing } from '../../joint/jointSpec.ts';
import { layOut } from '../../joint/layOut.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import type { Fingers } from '../fingers/fingers.ts';
import { adviseTools } from './adviseTools.ts';
import type { Cutter } from './cutter.ts';
import { advisePins, fitToCutter } from './fitToCutter.ts';
import { clampToCutter, hintNearest } from './nearestLayout.ts';
import { checkTails, type TailTools, tailsFit } from './tailLimits.ts';

/**
 * Sets out one corner within the limits of a cutter that `checkCutter` accepts: its slope, its least pin, the depth that it
 * reaches and, where it cuts stopped sockets too, tails as wide as itself; and of the fingers that guide it, which
 * `checkFingers` accepts, where there are some.
 * @returns the joint, or every limit that the wish breaks, the first one with the nearest layout that would work
 */
export const layOutForCutter = (wish: JointSpec, cutter: Cutter, fingers?: Fingers): Result<Joint> => {
  const tools: TailTools = { cutter, ...(fingers && { fingers }) };
  const fitted = fitToCutter(wish, cutter, fingers);
  if (!fitted.ok) return refuse(...hintNearest(fitted.complaints, nearestLayout(wish, tools), wish, 'kept'));
  const laid = layOut(fitted.value);
  // What would help without a cutter need not help with it.
  if (!laid.ok) return refuse(...hintNearest(laid.complaints, nearestLayout(wish, tools), wish, 'replaced'));
  const tight = checkTails(laid.value, tools);
  if (tight.length === 0) return accept(forTools(wish, laid.value, tools));
  const { spacing } = wish;
  const roomy =
    spacing.kind !== 'listed' && spacing.tails === undefined ? mostRoomy(fitted.value, tools) : undefined;
  return roomy === undefined
    ? refuse(...hintNearest(tight, nearestLayout(wish, tools), wish, 'kept'))
    : accept(forTools(wish, roomy, tools));
};

/** The layout with the most tails, no more than wished, that the tools can cut. */
const mostRoomy = (wish: JointSpec, tools: TailTools): Joint | undefined => {
  const spacing: SharedSpacing =
    wish.spacing.kind === 'listed'
      ? { kind: 'even', tails: wish.spacing.tails.length }
      : wish.spacing.kind === 'grouped'
        ? { kind: 'even', tails: wish.spacing.tails }
        : wish.spacing;
  const chosen = layOut({ ...wish, spacing });
  const room = Math.floor(wish.width / LEAST_BASE);
  const start = Math.min(room, spacing.tails ?? (chosen.ok ? chosen.value.tails.length : 0));
  for (let tails = start; tails >= 1; tails--) {
    const laid = layOut({ ...wish, spacing: { ...spacing, tails } });
    if (laid.ok && checkTails(laid.value, tools).length === 0) return laid.value;
  }
  return undefined;
};

/** A joint that the tools can cut, with advice on them; other counts are offered only where they can cut them. */
const forTools = (wish: JointSpec, joint: Joint, tools: TailTools): Joint => ({
  ...withAdvice(wish, joint, tools),
  alternatives: joint.alternatives.filter((other) => tailsFit(joint, other, tools)),
});

/** A joint that the tools can cut, with all that is advised on them and on what they make of the wish. */
export const withAdvice = (wish: JointSpec, joint: Joint, tools: TailTools): Joint => ({
  ...joint,
  advice: [...joint.advice, ...adviseTools(joint, tools), ...advisePins(wish, tools.cutter)],
});

/** The nearest layout to a wish that the tools can cut. */
const nearestLayout = (wish: JointSpec, tools: TailTools): Joint | undefined => {
  const nearest = clampToCutter(wish, tools.cutter);
  return fitToCutter(nearest, tools.cutter, tools.fingers).ok ? mostRoomy(nearest, tools) : undefined;
};
