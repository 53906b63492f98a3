import * as z from 'zod';
import type { DefectKind } from '../../stock/plank.ts';
import type { Unit } from '../../units/unit.ts';
import { STOCKS } from './boardSchema.ts';
import { choice, group, lengths, name, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

const KNOTS = ['sound knot', 'loose knot'] as const satisfies readonly DefectKind[];

/** The keys of a group that has one for each stock. */
const forEachStock = <T extends z.ZodType>(schema: (stock: string) => T) =>
  optional(
    Object.fromEntries(STOCKS.map((stock) => [stock, schema(stock)])) as Record<(typeof STOCKS)[number], T>,
  );

/** One part that must come out of a board. */
const pinSchema = (unit: Unit) => {
  const place = lengths(unit)(ranges.PLACE);
  const printed = (what: string) => z.string({ error: `${what}, as breakout prints it` }).min(1);
  return group('{part: Buttons left side 1, board: Ash 2, at: [57, 120]}', {
    part: printed('the name of a part').describe(
      'The part by its name as breakout prints it, such as Buttons left side 1.',
    ),
    board: printed('the name of a board').describe(
      'The board; of several equal ones with its number, such as Ash 2 no. 1.',
    ),
    ...optional({
      at: z
        .tuple([place, place], { error: 'two lengths, [x, y]' })
        .describe(
          'Where the lower left corner of its blank lies, from the left end and the lower edge. Anywhere on the board unless given.',
        ),
      turned: z
        .boolean({ error: 'true or false' })
        .describe('Whether it lies half a turn round at that place. `false` unless given.'),
      across: z
        .boolean({ error: 'true or false' })
        .describe('Of a panel: whether its length lies across the board. `false` unless given.'),
    }),
  });
};

/** What is wished of the parts that come out of the boards. */
export const breakoutSchema = (unit: Unit) => {
  const word = choice('knot', ...KNOTS, 'check', 'shake', 'wane', 'sapwood', 'pith', 'wormhole', 'stain');
  const drawers = z
    .array(name('the name of a drawer'), { error: 'names of drawers, such as [Buttons, Thread]' })
    .min(1, { error: 'the name of at least one drawer' });
  return group(
    '{runThrough: [[Buttons, Thread]]}',
    optional({
      allow: group(
        '{side: [sapwood], bottom: [sound knot]}',
        forEachStock((stock) =>
          z
            .array(word, { error: 'a list of defects, such as [sapwood, sound knot]' })
            .transform((words) =>
              words.flatMap((each): DefectKind[] => (each === 'knot' ? [...KNOTS] : [each])),
            )
            .describe(
              `Defects that a ${stock} may have; knot stands for sound and loose ones. None unless given.`,
            ),
        ),
      ).describe('Defects that parts may have, away from joints and grooves.'),
      runThrough: z
        .union(
          [
            z.literal('none').transform(() => []),
            z.literal(['rows', 'stacks']),
            z.array(
              z.union(
                [
                  drawers.transform((names) => ({ kind: 'row' as const, drawers: names })),
                  group('{stack: [Cloth, Notions]}', {
                    stack: drawers.describe('From the bottom up.'),
                  }).transform(({ stack }) => ({ kind: 'stack' as const, drawers: stack })),
                ],
                { error: 'a list of drawers, or written {stack: [Cloth, Notions]}' },
              ),
            ),
          ],
          { error: 'none, rows, stacks, or a list such as [[Buttons, Thread], {stack: [Cloth, Notions]}]' },
        )
        .describe(
          'Fronts whose figure runs on from one to the next: each a row from left to right, or a stack; rows, stacks: all that the cabinet has of those. `none` unless given.',
        ),
      spare: group(
        '{front: 1}',
        forEachStock((stock) =>
          wholeNumber(ranges.SPARE).describe(`Second tries of each size of ${stock}. 0 unless given.`),
        ),
      ).describe('Second tries, where the boards have room for them.'),
      pinned: z
        .array(pinSchema(unit), { error: 'a list of pinned parts' })
        .max(ranges.BLANK.most, { error: `a list of at most ${ranges.BLANK.most} pinned parts` })
        .describe('Parts that must come out of a board of your choice; the rest is fitted round them.'),
    }),
  );
};
