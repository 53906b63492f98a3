import { formatLength, nextMark } from './formatLength.ts';
import type { Notation } from './notation.ts';

/** A length inside a sentence, in mm, whose notation is chosen when the sentence is shown. */
export interface LengthWord {
  readonly mm: number;
  /** Of a bound: the side of it on which a length is right. */
  readonly right?: 'above' | 'below';
}

/** A sentence about lengths that does not yet know how the user reads them. */
export type Phrase = readonly (string | LengthWord)[];

/** A length for a phrase, in mm. */
export const mm = (value: number): LengthWord => ({ mm: value });

/** The least that a length may be, in mm. In inches it is told as the first mark of a rule that is not less, to be typed as it is. */
export const atLeast = (value: number): LengthWord => ({ mm: value, right: 'above' });

/** The most that a length may be, in mm; in inches, the last mark of a rule that is not more. */
export const atMost = (value: number): LengthWord => ({ mm: value, right: 'below' });

/**
 * Writes a phrase: say`the lap is ${mm(2)}`. Numbers and strings are put in as they are; phrases are put in whole.
 */
export const say = (
  strings: TemplateStringsArray,
  ...values: readonly (string | number | LengthWord | Phrase)[]
): Phrase =>
  strings.flatMap((text, i): Phrase => {
    const value = values[i];
    if (value === undefined) return [text];
    if (typeof value === 'number' || typeof value === 'string') return [text, String(value)];
    return 'mm' in value ? [text, value] : [text, ...value];
  });

/**
 * The phrase as text, lengths with their unit.
 * @example
 * ```ts
 * for (const { part, worked } of parts(project.set))
 *   console.log(part, worked.map((phrase) => speak(phrase, 'in')).join('; '));
 * ```
 */
export const speak = (phrase: Phrase, notation: Notation): string =>
  phrase
    .map((word) => (typeof word === 'string' ? word : formatLength(shown(word, notation), notation)))
    .join('');

const shown = ({ mm: value, right }: LengthWord, notation: Notation): number =>
  right === undefined ? value : nextMark(value, right, notation);
