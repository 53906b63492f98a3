import { EPSILON } from './epsilon.ts';
import { formatLength, nextMark, typedLength } from './formatLength.ts';
import { type Notation, unitOf } from './notation.ts';
import type { Unit } from './unit.ts';

/** A length inside a sentence, in mm, whose notation is chosen when the sentence is shown. */
export interface LengthWord {
  readonly mm: number;
  /** Of a bound: the side of it on which a length is right. */
  readonly right?: 'above' | 'below';
  /** Of a tool's size: those that it is sold in, none beyond `until`. */
  readonly sold?: { readonly sizes: SoldSizes; readonly until: number };
}

/** The sizes that a tool is sold in, ascending, in mm, by the unit that it is bought in. */
export type SoldSizes = Readonly<Record<Unit, readonly number[]>>;

/** A sentence about lengths that does not yet know how the user reads them. */
export type Phrase = readonly (string | LengthWord)[];

/** A length for a phrase, in mm. */
export const mm = (value: number): LengthWord => ({ mm: value });

/** The least that a length may be, in mm. In inches it is told as the first mark of a rule that is not less, to be typed as it is. */
export const atLeast = (value: number): LengthWord => ({ mm: value, right: 'above' });

/** The most that a length may be, in mm; in inches, the last mark of a rule that is not more. */
export const atMost = (value: number): LengthWord => ({ mm: value, right: 'below' });

/** The largest size that is sold, of at most `most` and at least `least` mm; `most` itself where none is. */
export const soldAtMost = (most: number, sizes: SoldSizes, least = 0): LengthWord => ({
  ...atMost(most),
  sold: { sizes, until: least },
});

/** The smallest size that is sold, of at least `least` mm; that itself where none is. */
export const soldAtLeast = (least: number, sizes: SoldSizes): LengthWord => ({
  ...atLeast(least),
  sold: { sizes, until: Number.POSITIVE_INFINITY },
});

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
export const speak = (phrase: Phrase, notation: Notation): string => spell(phrase, notation, formatLength);

/** The phrase as it is to be typed: each length is one word, that no command line parts and no quotation mark ends. */
export const typeOut = (phrase: Phrase, notation: Notation): string => spell(phrase, notation, typedLength);

const spell = (phrase: Phrase, notation: Notation, format: typeof formatLength): string =>
  phrase.map((word) => (typeof word === 'string' ? word : format(shown(word, notation), notation))).join('');

const shown = ({ mm: value, right, sold }: LengthWord, notation: Notation): number => {
  if (right === undefined) return value;
  const [least, most] = right === 'above' ? [value, sold?.until ?? value] : [sold?.until ?? value, value];
  const sizes = sold?.sizes[unitOf(notation)].filter(
    (size) => size >= least - EPSILON && size <= most + EPSILON,
  );
  return sizes?.at(right === 'above' ? 0 : -1) ?? nextMark(value, right, notation);
};
