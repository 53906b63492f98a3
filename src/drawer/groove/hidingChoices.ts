import type { ResolvedSpec } from '../../joint/defaults.ts';
import type { Joint, TailCount } from '../../joint/joint.ts';
import { LEAST_PIN } from '../../joint/jointLimits.ts';
import type { SharedSpacing } from '../../joint/jointSpec.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { leastTip, meanTip, mostTails, shares, tailRoom } from '../../joint/spacing.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Range } from '../../units/range.ts';
import { rise } from '../../units/slope.ts';
import { GROOVE_SPARE } from '../drawerLimits.ts';
import type { Groove } from '../drawerSpec.ts';

/** A number of tails that hides the groove, with the lower half pin that it needs. */
export interface HidingChoice extends TailCount {
  /** Narrow width, in mm: the nearest to the wished one. */
  readonly lowerHalfPin: number;
}

/** What must lie inside the lowest tail's base: the groove with its spare at both edges. */
export const grooveBand = ({ offset, width }: Groove): readonly [from: number, to: number] => [
  offset - GROOVE_SPARE,
  offset + width + GROOVE_SPARE,
];

/**
 * What the lower half pin's narrow width h must lie between for `count` tails to hide the groove.
 *
 * From the lower shoulder, where there is one, the lowest tail's base is [h + Ls, h + f (R - h) - Ls], f being its share of all the tails' width and R what the other
 * pins leave for h and the tails. To hold the band [a, b] it needs h ≤ a - Ls and h (1 - f) ≥ b + Ls - f R; with a single
 * tail (f = 1) the latter does not depend on h and is what must be spare. Nor may any base grow too narrow to cut.
 */
const lowerHalfPinBounds = (spec: ResolvedSpec, spacing: SharedSpacing, groove: Groove, count: number) => {
  const [from, to] = grooveBand(groove);
  const loss = spec.depth * rise(spec.slope);
  const begin = spec.shape.shoulder.lower;
  const all = shares(spacing, count);
  const first = all[0] ?? 1;
  const room = tailRoom(spec, count) + spec.halfPin.lower;
  const single = count === 1;
  return {
    room,
    least: single ? Number.NEGATIVE_INFINITY : (to - begin + loss - first * room) / (1 - first),
    spare: single ? begin + room - loss - to : 0,
    mostForGroove: from - begin - loss,
    mostForBases: room - leastTip(spec) / Math.min(...all),
  };
};

/** Whether laps on both boards cover whatever groove there is, so that it may lie anywhere, or a mitred shoulder covers this one. */
const isCovered = (spec: ResolvedSpec, groove: Groove): boolean =>
  kindOf(spec).sockets === 'closed' || isInShoulder(spec.shape, groove);

/** Whether all of a groove, with its spare at both edges, lies where the boards are mitred right through. */
export const isInShoulder = (
  { shoulder }: Pick<ResolvedSpec['shape'], 'shoulder'>,
  groove: Groove,
): boolean => {
  const [from, to] = grooveBand(groove);
  return from >= -EPSILON && to <= shoulder.lower + EPSILON;
};

/** Every number of tails, equal or graded, that hides the groove, in rising order; a wished number is not regarded. */
export const hidingChoices = (spec: ResolvedSpec, spacing: SharedSpacing, groove: Groove): HidingChoice[] => {
  const { lower, upper } = spec.halfPin;
  if (isCovered(spec, groove))
    return Array.from({ length: mostTails(spec, spacing) }, (_, i) => ({
      tails: i + 1,
      tip: meanTip(spec, i + 1),
      lowerHalfPin: lower,
    }));
  const mostCounts = mostTails({ ...spec, halfPin: { lower: LEAST_PIN, upper } }, spacing);
  const choices: HidingChoice[] = [];
  for (let tails = 1; tails <= mostCounts; tails++) {
    const bounds = lowerHalfPinBounds(spec, spacing, groove, tails);
    const least = Math.max(LEAST_PIN, bounds.least);
    const most = Math.min(bounds.mostForGroove, bounds.mostForBases);
    if (least > most + EPSILON || bounds.spare < -EPSILON) continue;
    const lowerHalfPin = Math.min(most, Math.max(least, lower));
    choices.push({ tails, tip: (bounds.room - lowerHalfPin) / tails, lowerHalfPin });
  }
  return choices;
};

/** What the lower half pin must lie between for a lowest tail of a given width to hide the groove. */
export const lowerHalfPinUnder = (
  { depth, slope, shoulder }: Pick<Joint, 'depth' | 'slope' | 'shoulder'>,
  groove: Groove,
  tip: number,
): Range => {
  const [from, to] = grooveBand(groove);
  const loss = depth * rise(slope);
  return { least: to - shoulder.lower + loss - tip, most: from - shoulder.lower - loss };
};

/** How far the groove's band lies inside the lowest tail's base at its lower and its upper edge; under 0 where it is outside. */
const edgeMargins = (spec: ResolvedSpec, groove: Groove, lowerHalfPin: number, tip: number) => {
  const { least, most } = lowerHalfPinUnder({ ...spec, shoulder: spec.shape.shoulder }, groove, tip);
  return { lower: most - lowerHalfPin, upper: lowerHalfPin - least };
};

/**
 * By how much each condition of the groove rule is met, in mm; the groove can be hidden where none is under 0. Every
 * margin is linear in the groove's offset, in the pin and in the slope's rise.
 *
 * Where the number of tails is free these are a single tail's margins: no other count leaves the lowest tail more room.
 */
export const grooveMargins = (spec: ResolvedSpec, groove: Groove): number[] => {
  if (isCovered(spec, groove)) return [];
  const { spacing, halfPin } = spec;
  if (spacing.kind === 'listed')
    return Object.values(edgeMargins(spec, groove, halfPin.lower, spacing.tails[0] ?? 0));
  const bounds = lowerHalfPinBounds(spec, spacing, groove, spacing.tails ?? 1);
  return [bounds.mostForGroove, bounds.mostForBases]
    .flatMap((most) => [most - LEAST_PIN, most - bounds.least])
    .concat(bounds.spare);
};

/** The margins where the lower half pin stays as wished: of a single tail where the number of tails is free. */
export const keptMargins = (spec: ResolvedSpec, groove: Groove): number[] => {
  const { spacing, halfPin } = spec;
  if (spacing.kind === 'listed') return grooveMargins(spec, groove);
  const count = spacing.tails ?? 1;
  const { mostForBases } = lowerHalfPinBounds(spec, spacing, groove, count);
  const tip = (shares(spacing, count)[0] ?? 1) * tailRoom(spec, count);
  return [
    ...Object.values(edgeMargins(spec, groove, halfPin.lower, tip)),
    // With the wished half pin, some base may be too narrow to cut, wherever the groove lies.
    mostForBases - halfPin.lower,
  ];
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
  let edges: { lower: number; upper: number };
  if (spacing.kind === 'listed') edges = edgeMargins(spec, groove, halfPin.lower, spacing.tails[0] ?? 0);
  else {
    const count = spacing.tails ?? 1;
    const { room, mostForGroove, mostForBases } = lowerHalfPinBounds(spec, spacing, groove, count);
    const lower = Math.max(LEAST_PIN, Math.min(mostForGroove, mostForBases));
    edges = edgeMargins(spec, groove, lower, (shares(spacing, count)[0] ?? 1) * (room - lower));
  }
  return { low: Math.max(0, -edges.lower), high: Math.max(0, -edges.upper) };
};
