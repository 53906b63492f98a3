import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { MM_PER_INCH } from '../../units/unit.ts';
import { isPlainEnd, type Joint } from '../joint.ts';
import type { CornerWish } from '../jointSpec.ts';
import type { BoardNames, JointShape, Thicknesses } from './kind.ts';
import { defaultLap } from './lap.ts';

/** Of a joint that reaches both edges. */
export const NO_SHOULDER = { lower: 0, upper: 0 } as const;

type Wished = Thicknesses &
  Pick<CornerWish, 'shoulder' | 'shoulderWidth' | 'lowerShoulder' | 'proud' | 'mitre'>;

/** As wide as the pin board's lap, or a quarter of the tail board, rounded as a lap is; at least 3, or 1/8 in (common practice, from memory). */
export const defaultShoulder = ({ tailBoard, notation = 'mm' }: Thicknesses, lap?: number): number =>
  lap === undefined
    ? defaultLap(tailBoard, notation)
    : Math.max(lap, notation === 'mm' ? 3 : MM_PER_INCH / 8);

/**
 * The mitred shoulders that are wished of a joint that needs none, and the mitre that they make of its corner.
 * @param usual their width where nothing gives it, in mm
 */
export const wishedShoulders = (given: Wished, usual: number): Pick<JointShape, 'shoulder' | 'mitre'> => {
  const { shoulder, shoulderWidth, lowerShoulder } = given;
  if (shoulder === undefined) return { shoulder: NO_SHOULDER };
  return {
    shoulder: {
      lower: shoulder === 'upper' ? 0 : (shoulderWidth ?? lowerShoulder ?? usual),
      upper: shoulder === 'lower' ? 0 : (shoulderWidth ?? usual),
    },
    mitre: mitreOf(given),
  };
};

/** The mitre from the inside corner to the outside corner: off the tail board's face its tangent is ts / tp. */
export const mitreOf = ({ tailBoard, pinBoard }: Thicknesses): NonNullable<Joint['mitre']> => ({
  degrees: inDegrees(tailBoard, pinBoard),
});

export const inDegrees = (rise: number, run: number): number => (Math.atan2(rise, run) * 180) / Math.PI;

/** Boards of unequal thickness meet at no mitre of 45 degrees; how they are to meet is for the maker to say. */
export const checkMitre = ({ tailBoard, pinBoard, mitre }: Wished): Complaint[] =>
  mitre !== undefined || Math.abs(tailBoard - pinBoard) < EPSILON
    ? []
    : [
        {
          at: ['mitre'],
          says: say`a tail board of ${mm(tailBoard)} and a pin board of ${mm(pinBoard)} do not meet at 45 degrees; say how they are mitred`,
          hint: say`corner`,
          remedy: say`make both boards equally thick`,
        },
      ];

/** What is wrong with shoulders that are wished of a joint that needs none. */
export const checkShoulders = (given: Wished): Complaint[] =>
  given.shoulder === undefined
    ? []
    : [
        ...checkMitre(given),
        ...((given.proud ?? 0) > EPSILON
          ? [
              {
                at: ['proud'],
                says: say`at a mitred shoulder the tail board ends at the corner, so it cannot be proud of the pins`,
                remedy: say`remove it, or the shoulder`,
              },
            ]
          : []),
      ];

/** An angle in words: `30.96°`. */
export const angle = (degrees: number): string => `${Number(degrees.toFixed(2))}°`;

/** What else is done at the stages of the work. */
export interface MoreWork {
  readonly afterGauging?: readonly Phrase[];
  readonly afterTails?: readonly Phrase[];
  readonly afterScribing?: readonly Phrase[];
  readonly afterPins?: readonly Phrase[];
}

/**
 * How a joint with shoulders, or with other work than that of tails and pins, is made by hand: its tails first, and its mitres last
 * (handbooks of joinery, from memory).
 */
export const shoulderWork = (joint: Joint, { tail, pin, routed }: BoardNames, more: MoreWork): Phrase[] => {
  const {
    shoulder: { lower, upper },
    mitre,
  } = joint;
  const { afterGauging = [], afterTails = [], afterScribing = [], afterPins = [] } = more;
  const scribe = say`Scribe the pins from the tails, or use the templates.`;
  if (mitre === undefined)
    return afterGauging.length === 0
      ? []
      : [
          say`Gauge the baselines all round.`,
          ...afterGauging,
          say`Saw and chop the tails.`,
          ...afterTails,
          scribe,
          ...afterScribing,
          say`Saw the pins, chop the sockets.`,
          ...afterPins,
        ];
  const widths =
    lower > 0 && upper > 0 && Math.abs(lower - upper) > EPSILON
      ? say`${mm(lower)} in from the lower edge and ${mm(upper)} from the upper one`
      : say`${mm(Math.max(lower, upper))} in from the ${lower > 0 ? (upper > 0 ? 'edges' : 'lower edge') : 'upper edge'}`;
  const slant = say`On the ${pin} saw the shoulder line at a slant, no deeper than the mitre.`;
  return [
    say`Knife the shoulder’s line ${widths}, right over both ends and down the faces.`,
    say`Gauge the baselines: on outside faces only between the shoulders. On each shouldered edge knife the mitre, from the baseline inside to the outside corner.`,
    ...afterGauging,
    ...(routed && !isPlainEnd(joint) ? [say`Scribe the tails from the sockets, or use the templates.`] : []),
    say`Saw the ${tail}’s shoulder line down to the baseline. ${routed && isPlainEnd(joint) ? 'Saw and chop the half space beside it.' : 'Saw and chop the tails.'}`,
    ...afterTails,
    say`Saw the ${tail}’s mitre a shaving outside its line.`,
    ...(routed
      ? [slant]
      : afterScribing.length === 0
        ? [say`${scribe} ${slant} Saw and chop.`]
        : [scribe, ...afterScribing, say`${slant} Saw and chop.`]),
    ...afterPins,
    say`Saw the ${pin}’s mitre, again a shaving outside its line.`,
    say`Press the joint home as far as the mitre lets it. Pare both mitres along a block of ${angle(mitre.degrees)} until joint and mitre close together.`,
  ];
};
