import { dirname, resolve } from 'node:path';
import { Failure, WRONG_INPUT } from '../files/failure.ts';
import { decode } from '../plan/read/decode.ts';
import { nearest } from '../plan/read/locate.ts';
import { parse } from '../plan/read/parse.ts';
import { firstComplaints, formatPlanComplaint } from '../plan/read/planComplaint.ts';
import { wordsOf } from '../render/letters/words.ts';
import type { Complaint } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { say } from '../units/phrase.ts';
import { readyLetters } from './readyLetters.ts';

/** Makes ready the letters of a plan's names, in its own font file unless one is given. */
export const readyPlanLetters = async (
  file: string,
  bytes: Uint8Array,
  given: string | undefined,
  units: Notation,
): Promise<void> => {
  const decoded = decode(bytes);
  if (!decoded.ok) return;
  const { value, find } = parse(decoded.text);
  const planned = typeof value === 'object' && value !== null && 'font' in value ? value.font : undefined;
  const at = (place: Complaint['at']) => nearest(find, place);
  const font =
    given !== undefined
      ? { path: given, where: '--font' }
      : typeof planned === 'string'
        ? {
            path: file === '-' ? planned : resolve(dirname(file), planned),
            where: `${file}:${at(['font']).line}:${at(['font']).column} font`,
          }
        : undefined;
  await readyLetters({
    words: wordsOf(value).filter(({ at: [first] }) => first !== 'font'),
    ...(font && { font }),
    remedy: say`give a font file that has it by --font, or by font: in the plan`,
    refuse: (complaints) => {
      throw new Failure(
        firstComplaints(complaints.map((complaint) => ({ ...at(complaint.at), complaint }))).map((each) =>
          formatPlanComplaint(file, each, units),
        ),
        WRONG_INPUT,
      );
    },
  });
};
