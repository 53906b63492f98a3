import type { Joint, TailCount } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { type Fingers, leastGuardedTail, TOGETHER_RANGE } from '../fingers/fingers.ts';
import type { Cutter } from './cutter.ts';
import { SAME_WIDTH } from './fitToCutter.ts';

/** What limits the tails of a corner. */
export interface TailTools {
  readonly cutter: Cutter;
  /** What guides the cutter, where that moves on a bar. */
  readonly fingers?: Fingers;
}

/** What a tail's least width depends on beside the tools. */
type Cornered = Pick<Joint, 'kind' | 'depth'>;

/** The narrowest tail whose socket the cutter enters: an open one is cut by another, a stopped one from the end by itself. */
const leastEntered = (corner: Cornered, { cutter }: TailTools): number =>
  kindOf(corner).sockets === 'open' ? 0 : cutter.diameter;

/** The narrowest tail that a pair of fingers guards; 0 without those. */
const leastGuarded = ({ depth }: Cornered, { cutter, fingers }: TailTools): number =>
  fingers === undefined ? 0 : leastGuardedTail(fingers, cutter, depth);

/** The narrowest tail at its tip that the tools can cut and guard, in mm; 0 where they do not limit it. */
export const leastTail = (corner: Cornered, tools: TailTools): number =>
  Math.max(leastEntered(corner, tools), leastGuarded(corner, tools));

/**
 * Whether the tools can cut so many tails.
 * @param narrowest their number, and the tip width of the narrowest of them
 */
export const tailsFit = (corner: Cornered, narrowest: TailCount, tools: TailTools): boolean =>
  narrowest.tip >= leastTail(corner, tools) - SAME_WIDTH && enoughPairs(narrowest.tails, tools);

const enoughPairs = (tails: number, { fingers }: TailTools): boolean =>
  tails <= (fingers?.pairs ?? Number.POSITIVE_INFINITY);

/**
 * The tails that the tools cannot cut: a stopped socket must be as wide at the tip as the cutter is at its end, and a pair of
 * fingers no wider than the tail that it guards. Places are `['tails']`, or `['tails', i]` where tails differ.
 */
export const checkTails = (joint: Joint, tools: TailTools): Complaint[] => {
  const { tails, even } = joint;
  const { cutter, fingers } = tools;
  const least = leastTail(joint, tools);
  const narrow = tails.flatMap(({ tip: [from, to] }, i) =>
    to - from >= least - SAME_WIDTH ? [] : [{ i, width: to - from }],
  );
  const told = (even ? narrow.slice(0, 1) : narrow).map(({ i, width }): Complaint => {
    const tail = say`${even ? 'a tail' : `tail ${i + 1}`} is ${mm(width)} wide`;
    const must = say`so it must be ${atLeast(least)} or more`;
    const pair = fingers === undefined ? 0 : fingers.together + width - least;
    return {
      at: even ? ['tails'] : ['tails', i],
      ...(fingers === undefined || leastGuarded(joint, tools) < least - EPSILON
        ? {
            says: say`${tail}; the cutter of ${mm(cutter.diameter)} cannot enter its socket, ${must}`,
            remedy: say`use fewer and wider tails, or a cutter of smaller diameter`,
          }
        : {
            says: say`${tail}; the pair of fingers that guards it would be ${mm(Math.max(0, pair))} wide, and is ${mm(fingers.together)} pushed together, ${must}`,
            remedy: say`use fewer and wider tails, or narrower fingers${pair < TOGETHER_RANGE.least ? [] : say`: ${atMost(pair)} together`}`,
          }),
    };
  });
  if (!enoughPairs(tails.length, tools))
    told.push({
      at: ['tails'],
      says: say`${tails.length} tails need as many pairs of fingers, and there are ${fingers?.pairs ?? 0}`,
      remedy: say`use fewer tails`,
    });
  return told;
};
