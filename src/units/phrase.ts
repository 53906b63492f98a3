import { formatLength, type Unit } from './length.ts';

/** A length inside a sentence, in mm, whose unit is chosen when the sentence is shown. */
export interface LengthWord {
  readonly mm: number;
}

/** A sentence about lengths that does not yet know in which unit the user reads. */
export type Phrase = readonly (string | LengthWord)[];

/** A length for a phrase, in mm. */
export const mm = (value: number): LengthWord => ({ mm: value });

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

/** The phrase as text, lengths with their unit. */
export const speak = (phrase: Phrase, unit: Unit): string =>
  phrase.map((word) => (typeof word === 'string' ? word : formatLength(word.mm, unit))).join('');
