import type { ResolvedSpec } from '../../joint/defaults.ts';
import { LEAST_PIN } from '../../joint/jointLimits.ts';
import type { HalfPins } from '../../joint/jointSpec.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Range } from '../../units/range.ts';
import { rise } from '../../units/slope.ts';
import type { Groove } from '../drawerSpec.ts';
import { grooveBand } from '../groove/hidingChoices.ts';

/** Half pins may become so much of the wished ones. */
const HALF_PIN_PARTS: Range = { least: 0.5, most: 2 };

/** Changes of half pins that differ by less are equal, in mm². */
export const SAME_CHANGE = 1e-6;

/** A number of equal tails that a front may have where its half pins may move, and how wide those tails may be. */
export interface CountRange {
  readonly tails: number;
  /** Least and greatest tip width, in mm: between them, every width is possible. */
  readonly least: number;
  readonly most: number;
  /** What the whole pins leave for half pins and tails, in mm. */
  readonly room: number;
  readonly lower: Range;
  readonly upper: Range;
  /** The lower half pin and the tail above it reach at least so far, to hide the groove. */
  readonly reach: number;
  readonly wished: HalfPins;
}

/** Half pins for a tail width, and how that changes the wished ones. */
export interface MovedHalfPins extends HalfPins {
  /** Sum of the squares of both changes, in mm². */
  readonly change: number;
  /** By how much that grows for each mm of tail width. */
  readonly growth: number;
}

/** What a half pin may become: half to twice the wished one, within the range that is given, and at least as wide as any pin. */
const halfPinRange = (wished: number, within: Range | undefined): Range => ({
  least: Math.max(LEAST_PIN, wished * HALF_PIN_PARTS.least, within?.least ?? 0),
  most: Math.min(wished * HALF_PIN_PARTS.most, within?.most ?? Number.POSITIVE_INFINITY),
});

/**
 * Every number of equal tails of a front, as far as some half pins make it possible, in rising order.
 *
 * With R what the whole pins leave, half pins h1, h2 and k tails of t fill it: h1 + h2 + k t = R. The groove's band [a, b] lies
 * inside the lowest tail's base where h1 <= a - L s and h1 + t >= b + L s. All of that is linear, so the possible t of a
 * count are one interval: each of its ends follows from one lower bound of h1 that meets one upper bound.
 * @param leastTip the narrowest tail at its tip that can be cut
 * @param within what half pins may become, within half to twice the wished ones
 */
export const countRanges = (
  spec: Pick<ResolvedSpec, 'width' | 'pin' | 'halfPin' | 'depth' | 'slope'>,
  groove: Groove,
  leastTip: number,
  within?: Range,
): CountRange[] => {
  const { width, pin, halfPin, depth, slope } = spec;
  const loss = depth * rise(slope);
  const [bandFrom, bandTo] = grooveBand(groove);
  const reach = bandTo + loss;
  const given = halfPinRange(halfPin.lower, within);
  const lower = { least: given.least, most: Math.min(given.most, bandFrom - loss) };
  const upper = halfPinRange(halfPin.upper, within);
  if (lower.least > lower.most + EPSILON || upper.least > upper.most + EPSILON) return [];
  const ranges: CountRange[] = [];
  for (let tails = 1; ; tails++) {
    const room = width - (tails - 1) * pin;
    const widest = (room - upper.least - lower.least) / tails;
    if (widest < leastTip - EPSILON) return ranges;
    const beside = room - upper.least - reach;
    const most = tails === 1 ? widest : Math.min(widest, beside / (tails - 1));
    const least = Math.max(leastTip, reach - lower.most, (room - upper.most - lower.most) / tails);
    if (least <= most + EPSILON && (tails > 1 || beside >= -EPSILON))
      ranges.push({ tails, least: Math.min(least, most), most, room, lower, upper, reach, wished: halfPin });
  }
};

/** Whether a count may have tails of a width. */
export const allows = ({ least, most }: CountRange, tip: number): boolean =>
  tip >= least - EPSILON && tip <= most + EPSILON;

/**
 * The half pins that change least for tails of a width that the count allows. The sum of squares is least where both
 * change by as much; where a bound forbids that, at the bound.
 */
export const halfPinsFor = (range: CountRange, tip: number): MovedHalfPins => {
  const { tails, room, lower, upper, reach, wished } = range;
  const both = room - tails * tip;
  // Each bound, and how it moves for each mm of tail width; of equal ones the one that stands still.
  const atLeast = highest([
    [lower.least, 0],
    [reach - tip, -1],
    [both - upper.most, -tails],
  ]);
  const atMost = highest([
    [-lower.most, 0],
    [-(both - upper.least), tails],
  ]);
  const [ceiling, sinks] = [-atMost[0], -atMost[1]];
  const free = (wished.lower + both - wished.upper) / 2;
  const [half, moves] =
    free < atLeast[0] ? atLeast : free > ceiling ? [ceiling, sinks] : ([free, -tails / 2] as const);
  const [byLower, byUpper] = [half - wished.lower, both - half - wished.upper];
  return {
    lower: half,
    upper: both - half,
    change: byLower ** 2 + byUpper ** 2,
    growth: 2 * byLower * moves + 2 * byUpper * (-tails - moves),
  };
};

type Moving = readonly [at: number, moves: number];

const highest = (bounds: readonly Moving[]): Moving =>
  bounds.reduce((most, bound) => (bound[0] > most[0] ? bound : most));
