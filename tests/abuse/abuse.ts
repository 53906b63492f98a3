import fc from 'fast-check';
import type { Complaint } from '../../src/units/complaint.ts';
import { speak } from '../../src/units/phrase.ts';

/** What became of an input that was answered as it should be. */
export type Answer = 'valid' | 'refused';

/** How many inputs were answered in each way. */
export type Counts = Record<Answer, number>;

/** One interface under abuse. */
export interface Abuse {
  readonly name: string;
  /** What part of a run's inputs it is given: slow interfaces get fewer. */
  readonly share: number;
  /** Gives it so many inputs. Throws where one is answered otherwise than it should be. */
  readonly run: (numRuns: number, seed?: number) => Promise<Counts>;
}

/** @param judge throws where the answer is neither valid nor a clear refusal */
export const abuse = <T>(
  name: string,
  share: number,
  given: fc.Arbitrary<T>,
  judge: (value: T) => Answer | Promise<Answer>,
): Abuse => ({
  name,
  share,
  run: async (numRuns, seed) => {
    const counts: Counts = { valid: 0, refused: 0 };
    const property = fc.asyncProperty(given, async (value) => {
      counts[await judge(value)] += 1;
    });
    await fc.assert(property, { numRuns, ...(seed !== undefined && { seed }) });
    return counts;
  },
});

export const must = (holds: boolean, what: string): void => {
  if (!holds) throw new Error(what);
};

/** No line is longer; what a user wrote is cut short in it. */
const LONGEST = 700;

/** What was given: text, as users do, or numbers in process, which may be none. */
type Given = 'text' | 'numbers';

/** A line that a user can read: no machine's words, no line ends, no control characters. */
export const mustBeClear = (line: string, given: Given = 'text'): void => {
  must(line.length > 0 && line.length < LONGEST, `a line of ${line.length} letters: ${line.slice(0, 80)}`);
  must(!/\p{Cc}|[\u202A-\u202E\u2066-\u2069]/u.test(line), `control characters in: ${line}`);
  const own = line.replace(/"(?:[^"\\]|\\.)*"/gu, '""');
  must(!/undefined|\[object/u.test(own), `unclear: ${line}`);
  must(given === 'numbers' || !/NaN|Infinity/u.test(own), `unclear: ${line}`);
};

/** Complaints that say something, in either unit, however it is written. */
export const refused = (complaints: readonly Complaint[], given: Given = 'text'): 'refused' => {
  must(complaints.length > 0, 'refused without a reason');
  for (const { says, hint } of complaints)
    for (const notation of ['mm', 'in', 'in/1000'] as const) {
      mustBeClear(speak(says, notation), given);
      if (hint !== undefined) mustBeClear(speak(hint, notation), given);
    }
  return 'refused';
};

/** Every number in a value, however deep, is finite. */
export const mustBeFinite = (value: unknown, path = 'value'): void => {
  if (typeof value === 'number') must(Number.isFinite(value), `${path} is ${value}`);
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) mustBeFinite(inner, `${path}.${key}`);
};
