import type { Complaint } from '../../units/complaint.ts';
import { type Phrase, say } from '../../units/phrase.ts';
import { quote, unicode } from '../../units/quote.ts';
import type { Fonts } from '../fonts.ts';
import { fontOf, fontsFor, lettersOf } from './setText.ts';
import { isPlainWord, type Word } from './words.ts';

/** Scripts by the standard's names (UAX 24), with the languages where those are known better. */
const SCRIPTS: readonly (readonly [script: string, name: string])[] = [
  ['Han', 'Chinese characters'],
  ['Hiragana', 'Japanese, Hiragana'],
  ['Katakana', 'Japanese, Katakana'],
  ['Hangul', 'Korean, Hangul'],
  ...[
    ...['Devanagari', 'Bengali', 'Gurmukhi', 'Gujarati', 'Oriya', 'Tamil', 'Telugu', 'Kannada', 'Malayalam'],
    ...['Sinhala', 'Thai', 'Lao', 'Tibetan', 'Myanmar', 'Khmer', 'Mongolian', 'Ethiopic', 'Cherokee'],
    ...['Arabic', 'Hebrew', 'Syriac', 'Thaana', 'Armenian', 'Georgian', 'Greek', 'Cyrillic', 'Latin'],
    ...['Balinese', 'Javanese', 'Sundanese', 'Tagalog', 'Cham', 'Bopomofo', 'Yi'],
  ].map((script): [string, string] => [script, script]),
];

const scriptOf = (letter: string): string =>
  SCRIPTS.find(([script]) => new RegExp(`\\p{Script=${script}}`, 'u').test(letter))?.[1] ??
  (/\p{L}/u.test(letter) ? 'another script' : 'a sign');

/**
 * Complains of each word with a letter that none of the fonts has, of the first such letter.
 * @param remedy what to try
 */
export const missingLetters = (words: readonly Word[], fonts: Fonts, remedy: Phrase): Complaint[] =>
  words.flatMap(({ at, text }) => {
    if (isPlainWord(text)) return [];
    const chain = fontsFor('regular', fonts);
    const missing = lettersOf(text).find(
      ({ letter }) => !isPlainWord(letter) && fontOf(letter, chain) === undefined,
    );
    if (missing === undefined) return [];
    const { letter } = missing;
    const name = `${quote(letter)} (${scriptOf(letter)}, ${unicode(letter.codePointAt(0) ?? 0)})`;
    const fontsHere = fonts.other === undefined ? 'the fonts of the sheets lack' : 'the chosen font lacks';
    return [{ at, says: say`${fontsHere} the letter ${name} of ${quote(text)}`, remedy }];
  });
