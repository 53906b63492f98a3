import * as z from 'zod';
import type { Unit } from '../../units/unit.ts';
import { parseBoardSize } from './boardSize.ts';
import { cutSchema } from './cutSchema.ts';
import { choice, group, lengths, name, optional, text, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** The stocks that boards are listed for. */
export const STOCKS = ['front', 'side', 'back', 'bottom'] as const;

/** The most corners of an outline, and the most defects of a board: every blank is tried against them. */
const MOST_CORNERS = 60;
const MOST_DEFECTS = 100;

const SEVERAL = 'front, side, back or bottom, or a list of them';

/** The stocks whose parts come out of a board: one, or a list. */
const stockSchema = () =>
  z
    .union(
      [choice(...STOCKS).transform((one) => [one]), z.array(choice(...STOCKS)).min(1, { error: SEVERAL })],
      {
        error: SEVERAL,
      },
    )
    .transform((stocks) => [...new Set(stocks)]);

const outlineSchema = (unit: Unit) => {
  const place = lengths(unit)(ranges.PLACE);
  const corners = `3 to ${MOST_CORNERS} corners in order, such as [[0, 0], [1800, 0], [1800, 190]]`;
  return z
    .array(z.tuple([place, place], { error: 'a corner, written [x, y]' }), { error: corners })
    .min(3, { error: corners })
    .max(MOST_CORNERS, { error: corners });
};

/** What is wrong at one place of a board. */
const defectSchema = (unit: Unit) => {
  const length = lengths(unit);
  const place = length(ranges.PLACE);
  const extent = length(ranges.DEFECT);
  const two = (what: string) => ({ error: `two lengths, [${what}]` });
  return group('{kind: knot, at: [640, 80], size: [60, 45]}', {
    kind: choice('knot', 'check', 'shake', 'wane', 'sapwood', 'pith', 'wormhole', 'stain').describe(
      'What it is; a check is a crack along the grain that starts at an end.',
    ),
    ...optional({
      sound: z
        .boolean({ error: 'true or false' })
        .describe('Of a knot: whether it is firm. `false`, for a loose one, unless given.'),
      at: z.tuple([place, place], two('x, y')).describe('Its middle, from the left end and the lower edge.'),
      size: z
        .tuple([extent, extent], two('length, width'))
        .describe('Its extent along and across the board.'),
      from: choice('left', 'right').describe('The end that it starts at, over the full width.'),
      length: extent.describe('How far it reaches from that end.'),
      outline: outlineSchema(unit).describe(
        'Its corners in order, in place of `at` and `size`, or of `from`.',
      ),
    }),
  });
};

/** One kind of board, as it lies with its show face up. */
export const boardSchema = (unit: Unit) => {
  const length = lengths(unit);
  const width = length(ranges.BOARD_WIDTH);
  const widths = 'one width, or two: [at the left end, at the right end]';
  return group('{name: Cherry 1, stock: front, thickness: 26, length: 2150, width: 230}', {
    name: name('the name of a board').describe('What is written on the board; no two may have one name.'),
    stock: stockSchema().describe(
      'The parts that come out of it: front, side, back or bottom, or a list of them. Slips are sawn from what is for sides.',
    ),
    thickness: length(ranges.BOARD_THICKNESS).describe('Its thickness as bought, before planing.'),
    ...optional({
      length: length(ranges.BOARD_LENGTH).describe('Of a board with square ends: its length.'),
      width: z
        .union(
          [
            width.transform((both) => ({ left: both, right: both })),
            z.tuple([width, width], { error: widths }).transform(([left, right]) => ({ left, right })),
          ],
          { error: widths },
        )
        .describe(
          'Its width, or [at the left end, at the right end] where that differs; the lower edge is straight.',
        ),
      size: text('length x width, or length x width x quantity, such as 1810 x 190 x 3', (given) =>
        parseBoardSize(given, unit),
      ).describe("In place of `length`, `width` and `count`, as in a merchant's list: 1810 x 190 x 3."),
      outline: outlineSchema(unit).describe(
        'Its corners in order, in place of `length` and `width`: x from its left end, y from its lower edge.',
      ),
      count: wholeNumber(ranges.BOARDS).describe('The quantity of equal boards. 1 unless given.'),
      defects: z
        .array(defectSchema(unit), { error: 'a list of defects' })
        .max(MOST_DEFECTS, { error: `a list of at most ${MOST_DEFECTS} defects` })
        .describe('What is wrong with it, and where. None unless given: then it is clear.'),
      clean: choice('left', 'right', 'both').describe(
        'The ends that have been cut already: nothing more is cut off there. None unless given.',
      ),
      bow: choice('long', 'cup').describe(
        'Bent along its length, so short parts are taken from it first, or across its width, so narrow ones are. Flat unless given.',
      ),
      keep: z
        .boolean({ error: 'true or false' })
        .describe('Whether it is spared while other boards do. `false` unless given.'),
      figure: choice('left', 'right').describe('The end at which fronts begin. Either unless given.'),
      cut: cutSchema().describe(
        'What has been cut of it already, copied from what breakout --json printed; its lengths are in mm. Of several equal boards it is the first. Nothing unless given.',
      ),
    }),
  });
};
