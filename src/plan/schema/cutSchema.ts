import * as z from 'zod';
import { choice, group, name, number, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** What has been cut of a board, as the program printed it: lengths are mm, whatever the plan's unit is. */
export const cutSchema = () => {
  const length = number(ranges.PLACE);
  const number0 = wholeNumber(ranges.SECTION);
  const cut = group('{kind: crosscut, piece: 0, at: 622}', {
    kind: choice('crosscut', 'rip').describe('Across the board, or along it.'),
    piece: number0.describe(
      'What it is cut in: 0 is the board, and cut k, from 0, leaves 2k + 1 at its left or below it, and 2k + 2 at its right or above it.',
    ),
    at: length.describe('Where the saw cut begins, in mm.'),
  });
  const blank = group(
    '{drawer: Buttons, part: front, index: 1, turned: false, x: 28, y: 0, length: 315, width: 81, piece: 2}',
    {
      drawer: name('the name of a drawer').describe('The drawer that it is for.'),
      part: choice('front', 'side', 'back', 'bottom', 'slip').describe('The part that it becomes.'),
      turned: z.boolean({ error: 'true or false' }).describe('Whether it lies half a turn round.'),
      x: length.describe('Its left end, in mm.'),
      y: length.describe('Its lower edge, in mm.'),
      length: length.describe('Its length as sawn, in mm.'),
      width: length.describe('Its width as sawn, in mm.'),
      piece: number0.describe('The number that the cuts give it.'),
      ...optional({
        index: wholeNumber(ranges.BLANK).describe('Which of the equal parts; odd sides are left ones.'),
        strip: wholeNumber(ranges.BLANK).describe(
          'Which strip of an edge-jointed part, from the reference edge up.',
        ),
        spare: z.literal(true, { error: 'true' }).describe('Whether it is a second try.'),
        letter: z.string({ error: 'text' }).describe('What stood for it on board sheets; not read.'),
        why: z.string({ error: 'text' }).describe('Why it lay there; not read.'),
      }),
    },
  );
  return group('{cuts: [...], blanks: [...]}', {
    cuts: z
      .array(cut, { error: 'a list of cuts' })
      .max(ranges.SECTION.most, { error: 'a list of cuts' })
      .describe('The cuts that have been made, in order: any first part of those printed.'),
    blanks: z.array(blank, { error: 'a list of blanks' }).describe('The blanks that they gave.'),
  });
};
