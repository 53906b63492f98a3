import type { Complaint } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import type { CloserSpacing, EvenSpacing } from './jointSpec.ts';

/** Of each narrower tail to its inner neighbour, and how many there are at either edge. */
export const CLOSER_RANGE = { least: 0.5, most: 0.95 } as const;
export const CLOSER_TAILS_RANGE = { least: 1, most: 10 } as const;

/** Each narrower tail as a part of its inner neighbour, and how many there are at either edge: the outermost is half a middle one. */
export const USUAL_CLOSER = { ratio: 0.7, each: 2 } as const;

/**
 * Tails that are closer together towards both edges, where a wide board cups most: handbooks set the outermost pins of a
 * carcase nearer to each other (from memory: Wells and Hooper, *Modern Cabinet Work*, 1909; the proportions are common practice).
 * @param even their number, if it is given
 * @param ratio each narrower tail as a part of its inner neighbour; 0.7 unless given
 * @param each how many tails at either edge are narrower; 2 unless given
 */
export const closerEdges = (
  { tails }: EvenSpacing,
  ratio: number = USUAL_CLOSER.ratio,
  each: number = USUAL_CLOSER.each,
): CloserSpacing => ({ kind: 'closer-edges', ...(tails !== undefined && { tails }), ratio, each });

/** How wide tail `i` of `count` is, as a part of one in the middle: `ratio` for each step that it lies nearer to its edge. */
export const closerWeight = ({ ratio, each }: CloserSpacing, i: number, count: number): number =>
  ratio ** Math.max(0, each - Math.min(i, count - 1 - i));

/** The part that the outermost of `count` tails takes; with every tail more it gets less. */
export const narrowestCloser = (spacing: CloserSpacing, count: number): number => {
  const half = Math.floor(count / 2);
  const beside = Math.min(half, spacing.each);
  let sum = 0;
  for (let i = 0; i < beside; i++) sum += 2 * closerWeight(spacing, i, count);
  // Those between are equal: one where the others meet beside it, else as many as are left.
  if (count > 2 * beside) sum += (count - 2 * beside) * closerWeight(spacing, beside, count);
  return closerWeight(spacing, 0, count) / sum;
};

/** Everything that is wrong with such tails, whatever the board's width. */
export const checkCloser = ({ ratio, each }: CloserSpacing): Complaint[] => [
  ...(ratio >= CLOSER_RANGE.least && ratio <= CLOSER_RANGE.most
    ? []
    : [
        {
          at: ['closer'],
          says: say`each tail nearer to the edge is ${ratio} of its neighbour; it must be ${CLOSER_RANGE.least} to ${CLOSER_RANGE.most}`,
          hint: say`${USUAL_CLOSER.ratio}`,
        },
      ]),
  ...(Number.isInteger(each) && each >= CLOSER_TAILS_RANGE.least && each <= CLOSER_TAILS_RANGE.most
    ? []
    : [
        {
          at: ['closerTails'],
          says: say`${each} tails at either edge are narrower; it must be a whole number, ${CLOSER_TAILS_RANGE.least} to ${CLOSER_TAILS_RANGE.most}`,
          hint: say`${USUAL_CLOSER.each}`,
        },
      ]),
];

/** Advice where the board has too few tails for some of them to be closer, or for as many as are wished. */
export const adviseCloser = ({ each }: CloserSpacing, count: number): Complaint[] =>
  count > 2 * each
    ? []
    : [
        {
          at: ['closerTails'],
          says:
            count <= 2
              ? say`${count === 1 ? 'one tail has' : 'two tails have'} no wider ones between them: the joint is evenly spaced`
              : say`${count} tails are too few for ${each} narrower ones at either edge and equal ones between`,
          ...(count > 2 && { hint: say`${Math.floor((count - 1) / 2)}` }),
          remedy: say`use more tails`,
        },
      ];
