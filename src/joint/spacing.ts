import { EPSILON } from '../units/epsilon.ts';
import { rise } from '../units/slope.ts';
import { closerWeight, narrowestCloser } from './closerSpacing.ts';
import type { ResolvedSpec } from './defaults.ts';
import { groupsTake } from './groupedSpacing.ts';
import { smallPinTakes } from './houndsTooth.ts';
import type { TailCount } from './joint.ts';
import { LEAST_BASE, TARGET_TAIL_IN_PINS } from './jointLimits.ts';
import type { CloserSpacing, GradedSpacing, SharedSpacing } from './jointSpec.ts';

/** The part of all the tails' width that each of `count` tails takes, from the reference edge up; they sum to 1. */
export const shares = (spacing: SharedSpacing, count: number): number[] => {
  const weights = Array.from({ length: count }, (_, i) => weightOf(spacing, i, count));
  const sum = weights.reduce((a, b) => a + b, 0);
  return weights.map((weight) => weight / sum);
};

/** How wide tail `i` of `count` is, as a multiple of the tail whose neighbours it is counted from. */
const weightOf = (spacing: SharedSpacing, i: number, count: number): number => {
  if (spacing.kind === 'graded') {
    const { ratio, from } = spacing;
    return ratio ** (from === 'edge' ? i : Math.floor(Math.abs(i - (count - 1) / 2)));
  }
  return spacing.kind === 'closer-edges' ? closerWeight(spacing, i, count) : 1;
};

/** The part that the narrowest of `count` tails takes that are not equal, without setting them all out. */
const narrowestShare = (spacing: GradedSpacing | CloserSpacing, count: number): number =>
  spacing.kind === 'graded' ? narrowestGraded(spacing, count) : narrowestCloser(spacing, count);

const narrowestGraded = ({ ratio, from }: GradedSpacing, count: number): number => {
  const steps = from === 'edge' ? count - 1 : Math.floor((count - 1) / 2);
  let last = 1;
  let sum = 1;
  for (let i = 0; i < steps; i++) {
    last *= ratio;
    sum += last;
  }
  // Counted from the middle, both sides are summed, but a tail in the middle only once.
  if (from === 'middle') sum = 2 * sum - (count % 2);
  return Math.min(1, last) / sum;
};

/** The width that tails and pins fill: what the shoulders leave of the boards'. */
export const jointWidth = ({ width, shape: { shoulder } }: ResolvedSpec): number =>
  width - shoulder.lower - shoulder.upper;

/** What the pins leave for `count` tails at the tip level: W - shoulders - h1 - h2 - (k - 1) p, and what wider pins between groups take. */
export const tailRoom = (spec: ResolvedSpec, count: number): number => {
  const { halfPin, pin, spacing } = spec;
  const wider = spacing.kind === 'grouped' ? groupsTake(spacing, pin) : 0;
  return jointWidth(spec) - halfPin.lower - halfPin.upper - (count - 1) * pin - wider;
};

/** The narrowest tip whose base can still be cut: 3 mm and the slope's loss on either side; and what a small pin in it takes. */
export const leastTip = ({ depth, slope, smallPin }: ResolvedSpec): number =>
  LEAST_BASE + 2 * depth * rise(slope) + (smallPin === undefined ? 0 : smallPinTakes(smallPin));

/** The mean tip width of `count` tails. */
export const meanTip = (spec: ResolvedSpec, count: number): number => tailRoom(spec, count) / count;

/** The narrowest tip of a number of tails whose mean tip is known. */
export const narrowestTip = (spacing: SharedSpacing, { tails, tip }: TailCount): number =>
  tails * tip * Math.min(...shares(spacing, tails));

/** The most tails whose bases can all be cut; 0 where not even one can. */
export const mostTails = (spec: ResolvedSpec, spacing: SharedSpacing): number => {
  const { pin } = spec;
  if (spacing.kind !== 'graded' && spacing.kind !== 'closer-edges')
    return Math.max(0, Math.floor((tailRoom(spec, 1) + pin) / (leastTip(spec) + pin) + EPSILON));
  const fits = (count: number): boolean =>
    narrowestShare(spacing, count) * tailRoom(spec, count) >= leastTip(spec) - EPSILON;
  // With every tail more the narrowest gets narrower: the first count that does not fit ends the search.
  let count = 0;
  while (fits(count + 1)) count++;
  return count;
};

/** Ratio of two widths, the larger to the smaller: at least 1. */
export const ratioBetween = (a: number, b: number): number => Math.max(a / b, b / a);

/** The count, of 1 to `most`, whose mean tip is nearest in ratio to three pins; of two as near, the fewer. */
export const chooseTails = (spec: ResolvedSpec, most: number): number => {
  const target = TARGET_TAIL_IN_PINS * spec.pin;
  let best = 1;
  for (let count = 2; count <= most; count++)
    if (ratioBetween(meanTip(spec, count), target) < ratioBetween(meanTip(spec, best), target) - EPSILON)
      best = count;
  return best;
};
