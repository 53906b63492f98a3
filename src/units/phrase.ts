import { formatLength, markInches } from './formatLength.ts';
import type { Unit } from './unit.ts';

/** A length inside a sentence, in mm, whose unit is chosen when the sentence is shown. */
export interface LengthWord {
  readonly mm: number;
  /** Of a bound: the side of it on which a length is right. */
  readonly right?: 'above' | 'below';
}

/** A sentence about lengths that does not yet know in which unit the user reads. */
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
export const speak = (phrase: Phrase, unit: Unit): string =>
  phrase.map((word) => (typeof word === 'string' ? word : formatLength(shown(word, unit), unit))).join('');

const shown = ({ mm: value, right }: LengthWord, unit: Unit): number =>
  unit === 'mm' || right === undefined ? value : markInches(value, right);
