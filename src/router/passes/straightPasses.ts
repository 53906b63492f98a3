import type { Joint } from '../../joint/joint.ts';
import type { Complaint } from '../../units/complaint.ts';
import { roundDown } from '../../units/epsilon.ts';
import { atLeast, atMost, say, soldAtMost } from '../../units/phrase.ts';
import { lengthOrNaN } from '../../units/range.ts';
import { rise } from '../../units/slope.ts';
import type { Cutter } from '../limits/cutter.ts';
import { STRAIGHT_CUTTERS } from '../limits/soldSizes.ts';
import { evenCentres, STEP } from './passes.ts';

/** One pass of the straight cutter through the pin board: its centre at the inside and at the outside face, in mm from the reference edge. */
export interface StraightPass {
  readonly inside: number;
  readonly outside: number;
}

/** How wide a pass of the straight cutter is, measured along the pin board's end: d √(1 + s²), for it runs at the slope. */
const across = ({ slope }: Joint, diameter: number): number => diameter * Math.hypot(1, rise(slope));

/** The thickest straight cutter that passes the narrowest socket of a through joint. */
export const mostStraight = (joint: Joint): number =>
  Math.min(...joint.tails.map(({ base: [from, to] }) => to - from)) / across(joint, 1);

/** The straight cutter taken where none is named: as thick as the dovetail cutter, or the most whole mm that pass. */
export const defaultStraight = (joint: Joint, cutter: Cutter): number =>
  Math.min(cutter.diameter, roundDown(mostStraight(joint), 1));

/** The thinnest straight cutter there is, in mm (common practice). */
const LEAST_STRAIGHT = 1;

/** What is wrong with a straight cutter for a joint. The place is `straight`. */
export const checkStraight = (joint: Joint, diameter: number): Complaint[] => {
  const most = mostStraight(joint);
  return diameter >= LEAST_STRAIGHT && diameter <= most
    ? []
    : [
        {
          at: ['straight'],
          says: say`the straight cutter is ${lengthOrNaN(diameter)}; to pass the narrowest socket it must be ${atLeast(LEAST_STRAIGHT)} to ${atMost(most)}`,
          hint: say`${soldAtMost(most, STRAIGHT_CUTTERS, LEAST_STRAIGHT)}`,
        },
      ];
};

/**
 * A straight cutter's passes that clear each socket of a through joint: one along either sloped side, and between them as
 * many as leave no ridge. Each pass is straight from the inside to the outside face.
 * @param diameter one that `checkStraight` accepts
 */
export const straightPasses = (joint: Joint, diameter: number): StraightPass[][] => {
  const radius = across(joint, diameter) / 2;
  return joint.tails.map(({ tip, base }) => {
    const outside = evenCentres(tip[0] + radius, tip[1] - radius, STEP * diameter);
    const [first, last] = [base[0] + radius, base[1] - radius];
    return outside.map((centre, i) => ({
      inside: first + ((last - first) * i) / (outside.length - 1),
      outside: centre,
    }));
  });
};
