import { checkSizes } from '../../joint/checkSizes.ts';
import { withDefaults } from '../../joint/defaults.ts';
import { isPlainEnd, pinLength } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { KINDS, kindOf } from '../../joint/kinds/kinds.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON, roundDown, roundUp } from '../../units/epsilon.ts';
import { finest, halfMark, type Notation } from '../../units/notation.ts';
import { atLeast, mm, say, soldAtMost } from '../../units/phrase.ts';
import { degrees, formatSlope } from '../../units/slope.ts';
import type { Fingers } from '../fingers/fingers.ts';
import { type Cutter, cutterSlope, diameterAt, leastPin } from './cutter.ts';
import { DOVETAIL_CUTTERS } from './soldSizes.ts';

/** How far a wished slope may lie from the cutter's, in degrees, and still mean the same: the cutter's is then laid out. */
const SAME_SLOPE = 0.5;

/** How far a wished width may lie under the cutter's, in mm: what rounding to a thousandth of an inch leaves. */
export const SAME_WIDTH = 0.02;

/** The same of a width that is typed as it is shown, to the nearest mark; such a pin is as wide as the cutter's cut. */
const sameMark = (notation: Notation = 'mm'): number => Math.max(SAME_WIDTH, halfMark(notation) + EPSILON);

/**
 * A wish as a cutter can cut it: with the cutter's slope, and with pins no narrower than its cut. A pin that is not given
 * becomes at least as wide. Where the tails are sawn, as the spaces between them do not run from face to face, only the
 * sockets are the cutter's, and pins may be as narrow as by hand.
 * @returns the wish with slope and pin set, or every limit of the cutter that it breaks; places name the joint's options,
 * and the cutter's keys under `cutter`
 */
export const fitToCutter = (wish: JointSpec, cutter: Cutter, fingers?: Fingers): Result<JointSpec> => {
  const sizes = checkSizes(wish);
  if (sizes.length > 0) return refuse(...sizes);
  if (wish.houndsTooth !== undefined)
    return refuse({
      at: ['spacing'],
      says: say`a hound's tooth cannot be cut along a guide: its small pins end half way, where a cutter would run on`,
      hint: say`even`,
      remedy: say`cut the joint by hand, without a cutter`,
    });
  const { depth, shape, proud } = withDefaults(wish);
  const wrong = [
    ...(fingers === undefined || isPlainEnd(shape) ? [] : [nothingToGuide(wish)]),
    ...checkSlope(wish, cutter),
    ...checkReach(wish, cutter, depth),
    // Only a cutter that reaches has a width at that depth; pins between tails that are sawn may be narrower.
    ...(depth > cutter.length + EPSILON || !isPlainEnd(shape)
      ? []
      : checkPins(wish, leastPin(cutter, depth))),
    ...(kindOf(wish).sockets === 'open'
      ? []
      : checkRound(cutter, depth, pinLength({ tailBoard: shape.tailBoard, proud }))),
  ];
  return wrong.length > 0 ? refuse(...wrong) : accept(withCutter(wish, cutter));
};

/** Fingers guard tails while the spaces between those are cut: of tails that are sawn they guard nothing. */
const nothingToGuide = ({ kind, shoulder }: JointSpec): Complaint => ({
  at: [shoulder === undefined ? 'kind' : 'shoulder'],
  says: say`the tails of a ${kind} joint${shoulder === undefined ? '' : ' with a mitred shoulder'} are sawn, so fingers that slide along a bar have nothing to guide there`,
  remedy: say`cut its sockets along a guide board, or all of it by hand, without fingers`,
});

/** The wish with the cutter's slope, and with pins no narrower than it can cut where it cuts the spaces for them. */
export const withCutter = (wish: JointSpec, cutter: Cutter): JointSpec => {
  const { depth, pin, shape } = withDefaults(wish);
  const sloped = { ...wish, slope: cutterSlope(cutter) };
  if (!isPlainEnd(shape)) return sloped;
  const least = leastPin(cutter, depth);
  const { spacing } = wish;
  return {
    ...sloped,
    pin: Math.max(pin, least),
    ...(spacing.kind === 'listed' &&
      spacing.pins && { spacing: { ...spacing, pins: spacing.pins.map((each) => Math.max(each, least)) } }),
    ...(spacing.kind === 'grouped' &&
      spacing.groupPin !== undefined && {
        spacing: { ...spacing, groupPin: Math.max(spacing.groupPin, least) },
      }),
  };
};

const checkSlope = ({ slope }: JointSpec, cutter: Cutter): Complaint[] => {
  if (slope === undefined || Math.abs(degrees(slope) - cutter.angle) <= SAME_SLOPE) return [];
  const its = formatSlope(cutterSlope(cutter));
  return [
    {
      at: ['slope'],
      says: say`a slope of ${formatSlope(slope)} is not the cutter's: at ${cutter.angle} degrees it cuts ${its}`,
      hint: say`${its}`,
      remedy: say`take a cutter of ${degrees(slope).toFixed(1)} degrees`,
    },
  ];
};

const checkReach = (wish: JointSpec, { length }: Cutter, depth: number): Complaint[] =>
  depth <= length + EPSILON
    ? []
    : [
        {
          at: ['cutter', 'length'],
          says: say`the cutter cuts ${mm(length)} deep; the joint is ${mm(depth)} deep`,
          remedy: say`take a cutter with a cutting length of at least ${atLeast(depth)}, or ${KINDS[wish.kind].noDeeper(wish, length).words}`,
        },
      ];

/** The narrowest pin of a wish, where it gives any. */
const narrowestPin = ({ pin, spacing }: JointSpec): { at: string; width: number } | undefined => {
  const pins = spacing.kind === 'listed' ? spacing.pins : undefined;
  if (pins !== undefined && pins.length > 0) return { at: 'pins', width: Math.min(...pins) };
  return pin === undefined ? undefined : { at: 'pin', width: pin };
};

/** Advice where pins are wished for a little narrower than the cutter's cut, which they are then as wide as. */
export const advisePins = (wish: JointSpec, cutter: Cutter): Complaint[] => {
  const { depth, shape } = withDefaults(wish);
  const least = leastPin(cutter, depth);
  const pin = isPlainEnd(shape) ? narrowestPin(wish) : undefined;
  if (pin === undefined || least - pin.width < halfMark(finest(wish.notation ?? 'mm'))) return [];
  return [
    {
      at: [pin.at],
      says: say`a pin of ${mm(pin.width)} is ${mm(least - pin.width)} less than the cutter removes at this depth: it is made as wide as that`,
      hint: say`${atLeast(roundUp(least, 100))}`,
    },
  ];
};

const checkPins = ({ pin, spacing, notation }: JointSpec, least: number): Complaint[] => {
  const tooNarrow = (
    at: Complaint['at'],
    what: string,
    value: number | undefined,
    typed = notation,
  ): Complaint[] =>
    value === undefined || value >= least - sameMark(typed)
      ? []
      : [
          {
            at,
            says: say`${what} is ${mm(value)} wide; at this depth the cutter removes ${mm(least)}, so it may not be less`,
            hint: say`${atLeast(roundUp(least, 100))}`,
            remedy: say`take a cutter of smaller diameter`,
          },
        ];
  return [
    ...tooNarrow(['pin'], 'a pin', pin),
    ...(spacing.kind === 'grouped' ? tooNarrow(['groupPin'], 'a pin between groups', spacing.groupPin) : []),
    ...(spacing.kind === 'listed'
      ? (spacing.pins ?? []).flatMap((each, i) =>
          tooNarrow(['pins', i], `pin ${i + 1}`, each, spacing.notation),
        )
      : []),
  ];
};

/** The round at the socket's end must leave some of the tails' thickness square. */
const checkRound = (cutter: Cutter, depth: number, length: number): Complaint[] => {
  const radius = diameterAt(cutter, depth) / 2;
  return radius < length
    ? []
    : [
        {
          at: ['cutter', 'diameter'],
          says: say`the cutter's round of ${mm(radius)} takes all of a socket ${mm(length)} long`,
          hint: say`${soldAtMost(roundDown(cutter.diameter - 2 * radius + length, 10), DOVETAIL_CUTTERS)}`,
          remedy: say`take a thicker tail board`,
        },
      ];
};
