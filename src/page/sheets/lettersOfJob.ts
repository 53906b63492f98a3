import { parse } from '../../plan/read/parse.ts';
import type { Fonts } from '../../render/fonts.ts';
import { checkFont } from '../../render/letters/checkFont.ts';
import { missingLetters } from '../../render/letters/missingLetters.ts';
import { measureWith } from '../../render/letters/setText.ts';
import { isPlainWord, wordsOf } from '../../render/letters/words.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';

/** The fonts for a plan's names, with the file that is chosen; or why it is no font, or which letters are in none. */
export const lettersOfJob = async (
  plan: string,
  fonts: Fonts,
  chosen: Blob | undefined,
): Promise<Result<Fonts>> => {
  const words = wordsOf(parse(plan).value).filter(({ at, text }) => at[0] !== 'font' && !isPlainWord(text));
  if (words.length === 0) return accept(fonts);
  const other = chosen && new Uint8Array(await chosen.arrayBuffer());
  const wrong = other && checkFont(other);
  if (wrong !== undefined) return refuse({ at: ['font'], says: wrong });
  const names = words.map(({ text }) => text);
  const all: Fonts = { ...fonts, names, ...(other && { other }) };
  const missing = missingLetters(words, all, say`choose a font file that has it, under Paper`);
  if (missing.length > 0) return refuse(...missing);
  measureWith(all);
  return accept(all);
};
