import type { Complaint, Place } from './complaint.ts';
import { EPSILON } from './epsilon.ts';
import { atLeast, atMost, mm, type Phrase, say } from './phrase.ts';

/** The least and the most of a value, both allowed. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** Whether a value is in its range; not-a-number never is. */
export const isInRange = (value: number, { least, most }: Range): boolean =>
  value >= least - EPSILON && value <= most + EPSILON;

/** The complaint about a length, in mm, outside its range; what is not given is not judged. */
export const checkRange = (
  at: Place,
  what: string,
  value: number | undefined,
  range: Range,
  hint?: Phrase,
): Complaint[] =>
  value === undefined || isInRange(value, range)
    ? []
    : [
        {
          at,
          says: say`${what} is ${lengthOrNaN(value)}; it must be ${atLeast(range.least)} to ${atMost(range.most)}`,
          ...(hint && { hint }),
        },
      ];

/** A length in mm for a sentence, or that it is none. */
export const lengthOrNaN = (value: number): Phrase =>
  Number.isFinite(value) ? say`${mm(value)}` : say`not a number`;
