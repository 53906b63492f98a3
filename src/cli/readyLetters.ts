import { Failure, refuseOptions, WRONG_INPUT } from '../files/failure.ts';
import { readInput } from '../files/readInput.ts';
import { addLetters } from '../files/writeDrawn.ts';
import { isPlainWord, type Word } from '../render/letters/words.ts';
import type { Complaint } from '../units/complaint.ts';
import { type Phrase, say, speak } from '../units/phrase.ts';

/** Words that a drawing may show, the font file chosen for them, and how what is wrong with them is said. */
interface Wanted {
  readonly words: readonly Word[];
  readonly font?: { readonly path: string; readonly where: string };
  /** What to try where a letter is missing. */
  readonly remedy: Phrase;
  readonly refuse: (complaints: readonly Complaint[]) => never;
}

/**
 * Makes ready what is needed to measure and draw words that the sheets' own font does not set letter by letter; nothing is
 * loaded where there are none. Throws a Failure where a letter is in no font, or the chosen file is no font.
 */
export const readyLetters = async ({ words, font, remedy, refuse }: Wanted): Promise<void> => {
  const special = words.filter(({ text }) => !isPlainWord(text));
  if (special.length === 0 && font === undefined) return;
  const { checkFont, LARGEST_FONT } = await import('../render/letters/checkFont.ts');
  const { missingLetters } = await import('../render/letters/missingLetters.ts');
  const { measureWith } = await import('../render/letters/setText.ts');
  let other: Uint8Array | undefined;
  if (font !== undefined) {
    const fail = (lines: readonly string[]): never => {
      throw new Failure(
        lines.map((line) => `${font.where}: ${line}`),
        WRONG_INPUT,
      );
    };
    other = await readInput(font.path, 'a font', LARGEST_FONT).catch((error: unknown) => {
      if (error instanceof Failure) return fail(error.lines);
      throw error;
    });
    const wrong = checkFont(other);
    if (wrong !== undefined) fail([`${font.path}: ${speak(wrong, 'mm')}`]);
  }
  const fonts = addLetters(
    special.map(({ text }) => text),
    other,
  );
  const missing = missingLetters(special, fonts, remedy);
  if (missing.length > 0) refuse(missing);
  measureWith(fonts);
};

/** Makes ready the letters of a single corner's name. */
export const readyNameLetters = (name: string | undefined, font: string | undefined): Promise<void> =>
  readyLetters({
    words: name === undefined ? [] : [{ at: ['name'], text: name }],
    ...(font !== undefined && { font: { path: font, where: '--font' } }),
    remedy: say`give a font file that has it by --font`,
    refuse: (complaints) => refuseOptions(complaints, 'mm'),
  });
