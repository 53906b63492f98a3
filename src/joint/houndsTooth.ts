import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { nearestMark } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { rise } from '../units/slope.ts';
import type { ResolvedSpec } from './defaults.ts';
import type { Interval, Joint, SmallPin } from './joint.ts';
import { LEAST_BASE } from './jointLimits.ts';

/** How deep a small pin reaches into its tail, as a part of the tails' length. */
const DEPTH = 1 / 2;

/** Half as wide as a pin, in inches to 1/32, and at least as wide as the narrowest chisel, which chops its socket. */
export const defaultSmallPin = (pin: number, chisel: number, notation: Notation): number =>
  Math.max(chisel, notation === 'mm' ? pin / 2 : nearestMark(pin / 2, 'in/32'));

/**
 * What a small pin asks of its tail beside what any tail needs, in mm at the tip: on either side of it, at its floor, the
 * tail of tip t keeps (t - narrow) / 2 - L s, and it is to keep as much there as any base.
 */
export const smallPinTakes = (narrow: number): number => narrow + LEAST_BASE;

/** The same in words: what the narrowest tail keeps. */
export const keptBeside = ({ smallPin }: Pick<ResolvedSpec, 'smallPin'>): Phrase | undefined =>
  smallPin === undefined
    ? undefined
    : say`${mm(LEAST_BASE)} on either side of a small pin of ${mm(smallPin)}`;

/** The small pin in the middle of a tail: a pin's shape, at the joint's slope, half as deep. */
export const smallPinIn = (
  [from, to]: Interval,
  narrow: number,
  joint: Pick<Joint, 'depth' | 'slope'>,
): SmallPin => {
  const middle = (from + to) / 2;
  const depth = joint.depth * DEPTH;
  const across = (width: number): Interval => [middle - width / 2, middle + width / 2];
  return { narrow: across(narrow), wide: across(narrow + 2 * depth * rise(joint.slope)), depth };
};

/** Advice where small pins look like the pins (proportions from memory). */
export const adviseSmallPins = (narrow: number, pin: number): Complaint[] =>
  narrow < pin - EPSILON
    ? []
    : [
        {
          at: ['smallPin'],
          says: say`small pins of ${mm(narrow)} are no narrower than the pins of ${mm(pin)}: the joint looks like one of more tails`,
          hint: say`${mm(pin / 2)}`,
          remedy: say`use wider pins`,
        },
      ];
