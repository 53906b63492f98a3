import { accept, type Result, refuse } from './complaint.ts';
import { say } from './phrase.ts';
import { quote, unicode } from './quote.ts';

export const LONGEST_NAME = 80;

/** Control characters, broken letters, line ends, and marks that turn the reading direction of what follows. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069]/u;

/**
 * Reads a name in any language, without the blanks round it.
 * @returns the name, or a complaint with an empty place: no letters or more than 80, or one that cannot be printed
 * @example
 * ```ts
 * const name = parseName('  Buttons ');
 * if (name.ok) console.log(name.value); // Buttons
 * ```
 */
export const parseName = (text: string): Result<string> => {
  const plain = text.trim();
  const letters = nameKey(plain) === '' ? 0 : [...plain].length;
  if (letters < 1 || letters > LONGEST_NAME)
    return refuse({
      at: [],
      says: say`${quote(plain)} has ${letters} letters; it must have 1 to ${LONGEST_NAME}`,
    });
  const unprintable = UNPRINTABLE.exec(plain)?.[0].charCodeAt(0);
  return unprintable === undefined
    ? accept(plain)
    : refuse({
        at: [],
        says: say`this holds a character that cannot be printed, ${unicode(unprintable)}`,
        hint: say`letters, figures, blanks and signs only`,
      });
};

/**
 * What names are compared by: it is equal for names that differ only in capitals, blanks, characters that do not show
 * (Unicode's default ignorables) and the encoding of their letters (Unicode's form NFKC). Sheets, on paper and as files,
 * are known by these names.
 */
export const nameKey = (name: string): string =>
  name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s\p{Default_Ignorable_Code_Point}]+/gu, '');

/**
 * The names in a list that repeat an earlier one.
 * @returns the index of each, and that of the first equal name; undefined entries are skipped
 */
export const repeatedNames = (
  names: readonly (string | undefined)[],
): { readonly name: string; readonly index: number; readonly first: number }[] => {
  const seen = new Map<string, number>();
  return names.flatMap((name, index) => {
    if (name === undefined) return [];
    const key = nameKey(name);
    const first = seen.get(key);
    if (first !== undefined) return [{ name, index, first }];
    seen.set(key, index);
    return [];
  });
};
