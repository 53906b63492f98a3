import type { Joint } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type Cutter, diameterAt } from '../limits/cutter.ts';
import { SAME_WIDTH } from '../limits/fitToCutter.ts';

/** How far one pass may step from the next, as a part of the narrowest width that a pass takes: they overlap by the rest. */
export const STEP = 0.9;

/**
 * Centres from one to the other, both included, no further apart than a step; one half way where the two are so near that
 * it leaves no more than a hundredth on either side.
 */
export const evenCentres = (first: number, last: number, step: number): number[] => {
  const gaps = last - first <= SAME_WIDTH + EPSILON ? 0 : Math.ceil((last - first) / step - EPSILON);
  return gaps === 0
    ? [(first + last) / 2]
    : Array.from({ length: gaps + 1 }, (_, i) => first + ((last - first) * i) / gaps);
};

/**
 * The dovetail cutter's centres, in mm from the reference edge, that clear each space between the tails, the half
 * spaces at both edges included. Seen from the cutter a space is widest at the baseline: there its sides touch the
 * cutter's largest diameter. In a half space the cutter may hang over the board's edge.
 */
export const tailPasses = ({ pins, width, depth }: Joint, cutter: Cutter): number[][] => {
  const radius = cutter.diameter / 2;
  const reach = diameterAt(cutter, depth) / 2;
  const step = STEP * 2 * reach;
  return pins.map(({ wide: [from, to] }, i) => {
    // Towards the board's edge a pass need only reach it, where the cutter is narrowest.
    const first = i === 0 ? Math.min(to - radius, reach) : from + radius;
    const last = i === pins.length - 1 ? Math.max(from + radius, width - reach) : to - radius;
    return evenCentres(first, last, step);
  });
};

/**
 * The same cutter's centres that clear each socket of a lapped joint. The cutter enters from the pin board's inside
 * face; a socket is as wide at its floor as the tail's tip.
 */
export const socketPasses = ({ tails, depth }: Joint, cutter: Cutter): number[][] => {
  const radius = cutter.diameter / 2;
  const step = STEP * diameterAt(cutter, depth);
  return tails.map(({ tip: [from, to] }) => evenCentres(from + radius, to - radius, step));
};

/** How far the dovetail cutter's largest diameter runs beyond the joint's edges as it clears the half spaces, in mm. */
export const pastTheEdges = (
  joint: Joint,
  cutter: Cutter,
): { readonly lower: number; readonly upper: number } => {
  const passes = tailPasses(joint, cutter);
  const radius = cutter.diameter / 2;
  const [first = radius] = passes[0] ?? [];
  const last = passes.at(-1)?.at(-1) ?? joint.width - radius;
  return { lower: radius - first, upper: last + radius - joint.width };
};
