import type { Joint } from '../../joint/joint.ts';
import { LEAST_BASE } from '../../joint/jointLimits.ts';
import type { JointSpec, SharedSpacing } from '../../joint/jointSpec.ts';
import { type JointKind, KINDS } from '../../joint/kinds/kinds.ts';
import { layOut } from '../../joint/layOut.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { adviseCutter } from './cautions.ts';
import type { Cutter } from './cutter.ts';
import { advisePins, fitToCutter, SAME_WIDTH } from './fitToCutter.ts';
import { clampToCutter, hintNearest } from './nearestLayout.ts';

/**
 * Sets out one corner within the limits of a cutter that `checkCutter` accepts: its slope, its least pin, the depth that it
 * reaches and, where it cuts stopped sockets too, tails as wide as itself.
 * @returns the joint, or every limit that the wish breaks, the first one with the nearest layout that would work
 */
export const layOutForCutter = (wish: JointSpec, cutter: Cutter): Result<Joint> => {
  const fitted = fitToCutter(wish, cutter);
  if (!fitted.ok) return refuse(...hintNearest(fitted.complaints, nearestLayout(wish, cutter), wish, 'kept'));
  const laid = layOut(fitted.value);
  // What would help without a cutter need not help with it.
  if (!laid.ok) return refuse(...hintNearest(laid.complaints, nearestLayout(wish, cutter), wish, 'replaced'));
  const tight = checkEntry(laid.value, cutter);
  if (tight.length === 0) return accept(forCutter(wish, laid.value, cutter));
  const { spacing } = wish;
  const roomy =
    spacing.kind !== 'listed' && spacing.tails === undefined ? mostRoomy(fitted.value, cutter) : undefined;
  return roomy === undefined
    ? refuse(...hintNearest(tight, nearestLayout(wish, cutter), wish, 'kept'))
    : accept(forCutter(wish, roomy, cutter));
};

/** Whether a cutter can enter the socket of a tail: an open one is cut by another, a stopped one from the end by itself. */
export const cutterEnters = (kind: JointKind, tip: number, { diameter }: Cutter): boolean =>
  KINDS[kind].sockets === 'open' || tip >= diameter - SAME_WIDTH;

/**
 * The tails whose stopped sockets a cutter cannot enter: they must be as wide at the tip as it is at its end. Places are
 * `['tails']`, or `['tails', i]` where tails differ.
 */
export const checkEntry = ({ kind, tails, even }: Joint, cutter: Cutter): Complaint[] => {
  const { diameter } = cutter;
  const narrow = tails.flatMap(({ tip: [from, to] }, i) =>
    cutterEnters(kind, to - from, cutter) ? [] : [{ i, width: to - from }],
  );
  return (even ? narrow.slice(0, 1) : narrow).map(({ i, width }) => ({
    at: even ? ['tails'] : ['tails', i],
    says: say`${even ? 'a tail' : `tail ${i + 1}`} is ${mm(width)} wide; the cutter of ${mm(diameter)} cannot enter its socket, so it must be ${atLeast(diameter)} or more`,
    remedy: say`use fewer and wider tails, or a cutter of smaller diameter`,
  }));
};

/** The layout with the most tails, no more than wished, whose sockets the cutter can enter. */
const mostRoomy = (wish: JointSpec, cutter: Cutter): Joint | undefined => {
  const spacing: SharedSpacing =
    wish.spacing.kind === 'listed' ? { kind: 'even', tails: wish.spacing.tails.length } : wish.spacing;
  const chosen = layOut({ ...wish, spacing });
  const room = Math.floor(wish.width / LEAST_BASE);
  const start = Math.min(room, spacing.tails ?? (chosen.ok ? chosen.value.tails.length : 0));
  for (let tails = start; tails >= 1; tails--) {
    const laid = layOut({ ...wish, spacing: { ...spacing, tails } });
    if (laid.ok && checkEntry(laid.value, cutter).length === 0) return laid.value;
  }
  return undefined;
};

/** A joint that a cutter can cut, with advice on the cutter; other counts are offered only where it can cut them. */
const forCutter = (wish: JointSpec, joint: Joint, cutter: Cutter): Joint => ({
  ...withAdvice(wish, joint, cutter),
  alternatives: joint.alternatives.filter(({ tip }) => cutterEnters(joint.kind, tip, cutter)),
});

/** A joint that a cutter can cut, with all that is advised on the cutter and on what it makes of the wish. */
export const withAdvice = (wish: JointSpec, joint: Joint, cutter: Cutter): Joint => ({
  ...joint,
  advice: [...joint.advice, ...adviseCutter(joint, cutter), ...advisePins(wish, cutter)],
});

/** The nearest layout to a wish that a cutter can cut. */
const nearestLayout = (wish: JointSpec, cutter: Cutter): Joint | undefined => {
  const nearest = clampToCutter(wish, cutter);
  return fitToCutter(nearest, cutter).ok ? mostRoomy(nearest, cutter) : undefined;
};
