import type { Complaint } from '../../units/complaint.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { isInRange, lengthOrNaN } from '../../units/range.ts';

/** What was measured on a trial joint, in mm. */
export interface Measured {
  /** How far a tail moves from side to side in its socket; less than 0, how much must come off before it goes in. */
  readonly looseness: number;
  /** How far the tail board's outside face is proud of the pins' ends; less than 0, below flush. */
  readonly proud?: number;
  /** The gap between the tails' ends and the floors of their sockets. */
  readonly short?: number;
}

/** More looseness than this is no fit to be corrected, but a mistake in setting out or in setting up; in mm. */
export const MOST_MEASURED = 5;
/** Deeper than any board is thick. */
export const MOST_DEPTH = 200;

/** What is wrong with the depth of a trial, in mm. */
export const checkDepth = (depth: number): Complaint[] =>
  depth > 0 && depth <= MOST_DEPTH
    ? []
    : [
        {
          at: ['depth'],
          says: say`the depth is ${lengthOrNaN(depth)}; it must be more than ${mm(0)} and at most ${atMost(MOST_DEPTH)}`,
        },
      ];

/** What is wrong with the measurements, each by itself. */
export const checkMeasured = (measured: Measured): Complaint[] => {
  const { looseness, proud = 0, short = 0 } = measured;
  const between = (at: keyof Measured, what: string, value: number, least: number): Complaint[] =>
    isInRange(value, { least, most: MOST_MEASURED })
      ? []
      : [
          {
            at: [at],
            says: say`${what} is ${lengthOrNaN(value)}; what a trial can correct is ${atLeast(least)} to ${atMost(MOST_MEASURED)}`,
            remedy: say`set out and cut the trial joint again`,
          },
        ];
  return [
    ...between('looseness', 'the looseness (tight is less than 0)', looseness, -MOST_MEASURED),
    ...between('proud', 'the amount proud (below flush is less than 0)', proud, -MOST_MEASURED),
    ...between('short', "the gap at the tails' ends", short, 0),
  ];
};

/** A correction as large as what it corrects; `than` says what that is. */
export const checkMove = (change: number, size: number, at: keyof Measured, than: Phrase): Complaint[] =>
  Math.abs(change) < size
    ? []
    : [
        {
          at: [at],
          says: say`the correction would be ${mm(Math.abs(change))}, larger than ${than}`,
          remedy: say`measure again, or take a cutter with another angle`,
        },
      ];

/** The same of how far the cutter runs in, and of the tails. */
export const checkSideMoves = ({ proud = 0, short = 0 }: Measured, size: number): Complaint[] => [
  ...checkMove(proud, size, 'proud', say`the joint's ${mm(size)}`),
  ...checkMove(short, size, 'short', say`the joint's ${mm(size)}`),
];
