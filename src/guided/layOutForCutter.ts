import { accept, type Complaint, type Result, refuse } from '../complaint.ts';
import { withDefaults } from '../joint/defaults.ts';
import type { Joint } from '../joint/joint.ts';
import { layOut } from '../joint/layOut.ts';
import { LEAST_BASE } from '../joint/limits.ts';
import { meanPin, meanTail } from '../joint/proportion.ts';
import type { JointKind, JointSpec, Spacing } from '../joint/spec.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { formatSlope } from '../units/slope.ts';
import { adviseCutter } from './cautions.ts';
import type { Cutter } from './cutter.ts';
import { fitToCutter, roundUp, SAME_WIDTH, withCutter } from './fitToCutter.ts';

/**
 * Sets out one corner within the limits of a cutter that `checkCutter` accepts: its slope, its least pin, the depth that it
 * reaches and, where it cuts lapped sockets too, tails as wide as itself.
 * @returns the joint, or every limit that the wish breaks, the first one with the nearest layout that would work
 */
export const layOutForCutter = (wish: JointSpec, cutter: Cutter): Result<Joint> => {
  const fitted = fitToCutter(wish, cutter);
  if (!fitted.ok) return refuse(...withNearest(fitted.complaints, wish, cutter, 'kept'));
  const laid = layOut(fitted.value);
  // What would help without a cutter need not help with it.
  if (!laid.ok) return refuse(...withNearest(laid.complaints, wish, cutter, 'replaced'));
  const tight = checkRoom(laid.value, cutter);
  if (tight.length === 0) return accept(forCutter(laid.value, cutter));
  const { spacing } = wish;
  const roomy =
    spacing.kind !== 'listed' && spacing.tails === undefined ? mostRoomy(fitted.value, cutter) : undefined;
  return roomy === undefined ? refuse(...withNearest(tight, wish, cutter, 'kept')) : accept(roomy);
};

/** Whether a cutter can enter the socket of a tail: a through one's is cut by another, a lapped one's from the end by itself. */
export const enters = (kind: JointKind, tip: number, { diameter }: Cutter): boolean =>
  kind === 'through' || tip >= diameter - SAME_WIDTH;

/**
 * The tails whose lapped sockets a cutter cannot enter: they must be as wide at the tip as it is at its end. Places are
 * `['tails']`, or `['tails', i]` where tails differ.
 */
export const checkRoom = ({ kind, tails, even }: Joint, cutter: Cutter): Complaint[] => {
  const { diameter } = cutter;
  const narrow = tails.flatMap(({ tip: [from, to] }, i) =>
    enters(kind, to - from, cutter) ? [] : [{ i, width: to - from }],
  );
  return (even ? narrow.slice(0, 1) : narrow).map(({ i, width }) => ({
    at: even ? ['tails'] : ['tails', i],
    says: say`${even ? 'a tail' : `tail ${i + 1}`} is ${mm(width)} at its tip; the cutter of ${mm(diameter)} cannot enter its socket, so it must be ${mm(diameter)} or more`,
    hint: say`fewer and wider tails, or a cutter of smaller diameter`,
  }));
};

/** The layout with the most tails, no more than wished, whose sockets the cutter can enter. */
const mostRoomy = (wish: JointSpec, cutter: Cutter): Joint | undefined => {
  const spacing: Exclude<Spacing, { kind: 'listed' }> =
    wish.spacing.kind === 'listed' ? { kind: 'even', tails: wish.spacing.tails.length } : wish.spacing;
  const chosen = layOut({ ...wish, spacing });
  const room = Math.floor(wish.width / LEAST_BASE);
  const start = Math.min(room, spacing.tails ?? (chosen.ok ? chosen.value.tails.length : 0));
  for (let tails = start; tails >= 1; tails--) {
    const laid = layOut({ ...wish, spacing: { ...spacing, tails } });
    if (laid.ok && checkRoom(laid.value, cutter).length === 0) return forCutter(laid.value, cutter);
  }
  return undefined;
};

/** A joint that a cutter can cut, with what is to be said of that; other counts are offered only where it could cut them. */
const forCutter = (joint: Joint, cutter: Cutter): Joint => ({
  ...joint,
  alternatives: joint.alternatives.filter(({ tip }) => enters(joint.kind, tip, cutter)),
  advice: [...joint.advice, ...adviseCutter(joint, cutter)],
});

/** The complaints, the first with the nearest layout as its hint, instead of its own hint or after it. */
const withNearest = (
  complaints: readonly Complaint[],
  wish: JointSpec,
  cutter: Cutter,
  ownHint: 'kept' | 'replaced',
): Complaint[] => {
  const nearest = nearestLayout(wish, cutter);
  const [first, ...rest] = complaints;
  if (nearest === undefined || first === undefined) return [...complaints];
  const works = say`the nearest layout that works: ${describe(nearest, wish)}`;
  const hint = ownHint === 'kept' && first.hint !== undefined ? say`${first.hint}; ${works}` : works;
  return [{ ...first, hint }, ...rest];
};

/** The wish with its depth cut down to what the cutter reaches and its pins widened to what it takes. */
const nearestLayout = (wish: JointSpec, cutter: Cutter): Joint | undefined => {
  const within: JointSpec =
    withDefaults(wish).depth <= cutter.length
      ? wish
      : wish.kind === 'lapped'
        ? { ...wish, lap: Math.ceil((wish.pinBoard - cutter.length) * 10) / 10 }
        : { ...wish, pinBoard: Math.floor(cutter.length * 10) / 10 };
  const fitted = withCutter(within, cutter);
  const pin = roundUp(fitted.pin ?? 0);
  const nearest: JointSpec = { ...fitted, pin };
  return fitToCutter(nearest, cutter).ok ? mostRoomy(nearest, cutter) : undefined;
};

const describe = (joint: Joint, wish: JointSpec): Phrase => {
  const { tails, slope, pinBoard, even, kind } = joint;
  const count = `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'} of ${even ? '' : 'on average '}`;
  const pins = `${tails.length === 1 ? 'half ' : ''}pins of `;
  const thinner = pinBoard.thickness < wish.pinBoard ? say`, pin board ${mm(pinBoard.thickness)}` : [];
  const last = kind === 'lapped' ? say`, lap ${mm(pinBoard.lap)}` : thinner;
  return say`${count}${mm(meanTail(joint))}, ${pins}${mm(meanPin(joint))}, slope ${formatSlope(slope)}${last}`;
};
