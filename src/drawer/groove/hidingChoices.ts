import type { ResolvedSpec } from '../../joint/defaults.ts';
import { smallPinIn } from '../../joint/houndsTooth.ts';
import type { Joint, TailCount } from '../../joint/joint.ts';
import { LEAST_PIN } from '../../joint/jointLimits.ts';
import type { SharedSpacing } from '../../joint/jointSpec.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { leastTip, meanTip, mostTails, shares, tailRoom } from '../../joint/spacing.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Range } from '../../units/range.ts';
import { rise } from '../../units/slope.ts';
import { GROOVE_SPARE } from '../drawerLimits.ts';
import { frontCorner } from '../drawerSizes.ts';
import type { DrawerSpec, Groove } from '../drawerSpec.ts';

/** A number of tails that hides the groove, with the lower half pin that it needs. */
export interface HidingChoice extends TailCount {
  /** Narrow width, in mm: the nearest to the wished one. */
  readonly lowerHalfPin: number;
}

/** What must lie inside the lowest tail's base: the groove with its spare at both edges. A rebate begins at the edge. */
export const grooveBand = ({ offset, width, rebate }: Groove): readonly [from: number, to: number] => [
  rebate ? 0 : offset - GROOVE_SPARE,
  offset + width + GROOVE_SPARE,
];

/**
 * An edge of what can hold the groove in the lowest tail's base: how far up its tip it lies, as a part of the tip's width, and
 * how far in from there, in mm.
 */
interface HoldEdge {
  readonly share: number;
  readonly inset: number;
}

/** What of the lowest tail's base can hold the groove. */
interface Hold {
  readonly lower: HoldEdge;
  readonly upper: HoldEdge;
}

/** All of the base: from its tip's edges in, each by what the slope takes. */
const wholeBase = ({ depth, slope }: Pick<ResolvedSpec, 'depth' | 'slope'>): Hold => {
  const inset = depth * rise(slope);
  return { lower: { share: 0, inset }, upper: { share: 1, inset } };
};

/** All of the base, or what a small pin in the tail's middle leaves below it and above it, where the groove would reach one. */
const holdsOf = (spec: ResolvedSpec, groove: Groove): readonly Hold[] => {
  const whole = wholeBase(spec);
  if (groove.rebate || spec.smallPin === undefined || !reachesSmallPins(spec, groove)) return [whole];
  const [tip, inMiddle] = [[0, 0] as const, 1 / 2];
  const inset = smallPinIn(tip, spec.smallPin, spec).wide[1];
  return [
    { lower: whole.lower, upper: { share: inMiddle, inset } },
    { lower: { share: inMiddle, inset }, upper: whole.upper },
  ];
};

/** Whether the groove comes so near to the tails' ends, in the side or in the front, that it would cross a small pin there. */
export const reachesSmallPins = (spec: ResolvedSpec, { stopped = 0, depth }: Groove): boolean => {
  if (spec.smallPin === undefined) return false;
  const small = smallPinIn([0, 0], spec.smallPin, spec).depth;
  return stopped < small - EPSILON || depth > spec.depth - small + EPSILON;
};

/**
 * What the lower half pin's narrow width h must lie between for `count` tails to hide the groove.
 *
 * From the lower shoulder, where there is one, the lowest tail's tip is [h, h + f (R - h)], f being its share of all the tails'
 * width and R what the other pins leave for h and the tails. A hold in its base begins a f (R - h) + i above the tip's lower
 * edge and ends b f (R - h) - j above it. To hold the band [c, d] it needs h (1 - a f) ≤ c - i - a f R and
 * h (1 - b f) ≥ d + j - b f R; where b f = 1, as over all of a single tail, the latter does not depend on h and is what must
 * be spare. Nor may any base grow too narrow to cut. A rebate lies in the half pin instead, whose narrow width must hold it.
 */
const lowerHalfPinBounds = (
  spec: ResolvedSpec,
  spacing: SharedSpacing,
  groove: Groove,
  count: number,
  { lower, upper }: Hold,
) => {
  const [low, high] = grooveBand(groove);
  const { lower: shoulder } = spec.shape.shoulder;
  const [from, to] = [low - shoulder, high - shoulder];
  const all = shares(spacing, count);
  const [first = 1] = all;
  const room = tailRoom(spec, count) + spec.halfPin.lower;
  const [below, above] = [lower.share * first, upper.share * first];
  const mostForBases = room - leastTip(spec) / Math.min(...all);
  if (groove.rebate)
    return { room, least: to, spare: 0, mostForGroove: Number.POSITIVE_INFINITY, mostForBases };
  return {
    room,
    least: above === 1 ? Number.NEGATIVE_INFINITY : (to + upper.inset - above * room) / (1 - above),
    spare: above === 1 ? room - upper.inset - to : 0,
    mostForGroove: (from - lower.inset - below * room) / (1 - below),
    mostForBases,
  };
};

/** Whether laps on both boards cover whatever groove there is, so that it may lie anywhere, or a mitred shoulder covers this one. */
const isCovered = (spec: ResolvedSpec, groove: Groove): boolean =>
  kindOf(spec).sockets === 'closed' || isInShoulder(spec.shape, groove);

/**
 * Whether the groove in the sides comes out at their tails' ends, in sight, unless it stops short of them; or a rebate in front
 * and back at their pins' ends.
 */
export const comesOut = (spec: DrawerSpec): boolean =>
  (spec.groove.rebate ? kindOf(spec.joint).sockets !== 'closed' : kindOf(spec.joint).sockets === 'open') &&
  spec.bottom.hold.kind === 'groove' &&
  !isInShoulder(frontCorner(spec).shape, spec.groove);

/** Whether all of a groove, with its spare at both edges, lies where the boards are mitred right through. */
export const isInShoulder = (
  { shoulder }: Pick<ResolvedSpec['shape'], 'shoulder'>,
  groove: Groove,
): boolean => {
  const [from, to] = grooveBand(groove);
  return from >= -EPSILON && to <= shoulder.lower + EPSILON;
};

/** The numbers of tails up to the most that may be: only their own where groups say how many there are. */
const countsUpTo = (most: number, spacing: SharedSpacing): number[] =>
  spacing.kind === 'grouped'
    ? [spacing.tails].filter((tails) => tails <= most)
    : Array.from({ length: most }, (_, i) => i + 1);

/** Every number of tails, equal or graded, that hides the groove, in rising order; a wished number is not regarded. */
export const hidingChoices = (spec: ResolvedSpec, spacing: SharedSpacing, groove: Groove): HidingChoice[] => {
  const { lower, upper } = spec.halfPin;
  if (isCovered(spec, groove))
    return countsUpTo(mostTails(spec, spacing), spacing).map((tails) => ({
      tails,
      tip: meanTip(spec, tails),
      lowerHalfPin: lower,
    }));
  const most = mostTails({ ...spec, halfPin: { lower: LEAST_PIN, upper } }, spacing);
  const holds = holdsOf(spec, groove);
  return countsUpTo(most, spacing).flatMap((tails): HidingChoice[] => {
    const [nearest] = holds
      .flatMap((hold): HidingChoice[] => {
        const bounds = lowerHalfPinBounds(spec, spacing, groove, tails, hold);
        const least = Math.max(LEAST_PIN, bounds.least);
        const most = Math.min(bounds.mostForGroove, bounds.mostForBases);
        if (least > most + EPSILON || bounds.spare < -EPSILON) return [];
        const lowerHalfPin = Math.min(most, Math.max(least, lower));
        return [{ tails, tip: (bounds.room - lowerHalfPin) / tails, lowerHalfPin }];
      })
      .sort((a, b) => Math.abs(a.lowerHalfPin - lower) - Math.abs(b.lowerHalfPin - lower));
    return nearest === undefined ? [] : [nearest];
  });
};

/** What the lower half pin must lie between for a lowest tail of a given width to hide the groove. */
export const lowerHalfPinUnder = (
  joint: Pick<Joint, 'depth' | 'slope' | 'shoulder'>,
  groove: Groove,
  tip: number,
  { lower, upper }: Hold = wholeBase(joint),
): Range => {
  const [from, to] = grooveBand(groove);
  if (groove.rebate) return { least: to - joint.shoulder.lower, most: Number.POSITIVE_INFINITY };
  return {
    least: to - joint.shoulder.lower + upper.inset - upper.share * tip,
    most: from - joint.shoulder.lower - lower.inset - lower.share * tip,
  };
};

/** How far the groove's band lies inside a hold of the lowest tail's base at its lower and its upper edge; under 0 where it is outside. */
const edgeMargins = (spec: ResolvedSpec, groove: Groove, lowerHalfPin: number, tip: number, hold: Hold) => {
  const { least, most } = lowerHalfPinUnder({ ...spec, shoulder: spec.shape.shoulder }, groove, tip, hold);
  return { lower: most - lowerHalfPin, upper: lowerHalfPin - least };
};

/** The margins in the hold in which the least of them is the most. */
const bestOf = (
  spec: ResolvedSpec,
  groove: Groove,
  marginsIn: (hold: Hold) => readonly number[],
): readonly number[] =>
  holdsOf(spec, groove)
    .map(marginsIn)
    .sort((a, b) => Math.min(...b) - Math.min(...a))[0] ?? [];

/**
 * By how much each condition of the groove rule is met, in mm; the groove can be hidden where none is under 0. In one hold
 * every margin is linear in the groove's offset, in the pin and in the slope's rise.
 *
 * Where the number of tails is free these are a single tail's margins: no other count leaves the lowest tail more room.
 */
export const grooveMargins = (spec: ResolvedSpec, groove: Groove): readonly number[] => {
  if (isCovered(spec, groove)) return [];
  const { spacing, halfPin } = spec;
  return bestOf(spec, groove, (hold) => {
    if (spacing.kind === 'listed')
      return Object.values(edgeMargins(spec, groove, halfPin.lower, spacing.tails[0] ?? 0, hold));
    const bounds = lowerHalfPinBounds(spec, spacing, groove, spacing.tails ?? 1, hold);
    return [bounds.mostForGroove, bounds.mostForBases]
      .flatMap((most) => [most - LEAST_PIN, most - bounds.least])
      .concat(bounds.spare);
  });
};

/** The margins where the lower half pin stays as wished: of a single tail where the number of tails is free. */
export const keptMargins = (spec: ResolvedSpec, groove: Groove): readonly number[] => {
  const { spacing, halfPin } = spec;
  if (spacing.kind === 'listed') return grooveMargins(spec, groove);
  const count = spacing.tails ?? 1;
  const tip = (shares(spacing, count)[0] ?? 1) * tailRoom(spec, count);
  return bestOf(spec, groove, (hold) => [
    ...Object.values(edgeMargins(spec, groove, halfPin.lower, tip, hold)),
    // With the wished half pin, some base may be too narrow to cut, wherever the groove lies.
    lowerHalfPinBounds(spec, spacing, groove, count, hold).mostForBases - halfPin.lower,
  ]);
};

/** By how much the groove misses the lowest tail, its spare included, in mm. */
export interface GrooveMiss {
  /** How far it lies too low. */
  readonly low: number;
  /** How far it reaches too high. */
  readonly high: number;
}

/** The miss that is left when the lower half pin has taken the best width it can; listed widths stay as they are. */
export const grooveMiss = (spec: ResolvedSpec, groove: Groove): GrooveMiss => {
  const { spacing, halfPin } = spec;
  const [lower = 0, upper = 0] = bestOf(spec, groove, (hold) => {
    if (spacing.kind === 'listed')
      return Object.values(edgeMargins(spec, groove, halfPin.lower, spacing.tails[0] ?? 0, hold));
    const count = spacing.tails ?? 1;
    const { room, mostForGroove, mostForBases } = lowerHalfPinBounds(spec, spacing, groove, count, hold);
    const best = Math.max(LEAST_PIN, Math.min(mostForGroove, mostForBases));
    const tip = (shares(spacing, count)[0] ?? 1) * (room - best);
    return Object.values(edgeMargins(spec, groove, best, tip, hold));
  });
  return { low: Math.max(0, -lower), high: Math.max(0, -upper) };
};
