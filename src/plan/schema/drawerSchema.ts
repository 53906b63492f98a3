import * as z from 'zod';
import type { Range } from '../../units/range.ts';
import type { Unit } from '../../units/unit.ts';
import { builtSchema } from './builtSchema.ts';
import { type cornerKeys, cornerKind, ownLengthKeys } from './cornerSchema.ts';
import { fittingsKeys } from './fittingsSchema.ts';
import { choice, group, lengths, name, optional, wholeNumber } from './leaves.ts';
import { openingSchema } from './openingSchema.ts';
import * as ranges from './ranges.ts';

/** The keys that a plan gives for every drawer, and any drawer may override; `corner`: those of any corner. */
export const drawerKeys = (unit: Unit, corner: ReturnType<typeof cornerKeys>) => {
  const length = lengths(unit);
  const gap = length(ranges.CLEARANCE);
  const strip = length(ranges.THICKNESS);
  const overlap = length(ranges.LIP);

  const board = (what: string, thickness: Range = ranges.THICKNESS) =>
    group(
      '{thickness: 11, species: "Ash, white"}',
      optional({
        thickness: length(thickness).describe(what),
        species: name('the name of a wood').describe('The wood, by its name.'),
        grain: choice('flatsawn', 'quartersawn').describe(
          'How the boards were sawn from the log: which way they move most. `flatsawn` is plain-sawn: growth rings roughly parallel to the face; it moves more across its width, and is assumed unless given.',
        ),
      }),
    );
  const slips = group('{width: 10, height: 18}', {
    width: strip.describe("A slip's width, from the side inwards."),
    height: strip.describe("A slip's height, from the side's lower edge up."),
  });
  const lip = group(
    '{sides: 6, top: 6, bottom: 0}',
    optional({
      sides: overlap.describe('On the left and on the right, each. 0 unless given.'),
      top: overlap.describe('Above. 0 unless given.'),
      bottom: overlap.describe('Below. 0 unless given.'),
    }),
  );

  return optional({
    stock: group(
      '{front: {thickness: 20}, side: {thickness: 11}}',
      optional({
        front: board('Their thickness. Must be given where there are drawers.').describe('The fronts.'),
        side: board('Their thickness. Must be given where there are drawers.').describe('The sides.'),
        back: board("Their thickness. The sides' unless given.").describe(
          'The backs. As the sides, in all that is not given.',
        ),
        bottom: board("Their thickness. The groove's width unless given.", ranges.BOTTOM_THICKNESS).describe(
          'The bottoms.',
        ),
      }),
    ).describe('What the parts are made of.'),
    joint: group('{slope: "1:7", pin: 5}', {
      ...optional({
        kind: cornerKind().describe('The kind of joint at the front corners. `lapped` unless given.'),
      }),
      ...corner,
      ...ownLengthKeys(unit),
    }).describe(
      'The front corners. Single corners take from it what they do not give, where their kind has it, but for their kind and how their tails are spaced.',
    ),
    groove: group(
      '{offset: 10, width: 5, depth: 5}',
      optional({
        offset: gap.describe(
          "From the reference edge to the groove's lower edge. 10 mm, or 3/8 in, unless given.",
        ),
        width: length(ranges.GROOVE).describe(
          "The groove's width. Unless given, 5 mm, or 1/4 in, or the thickness of a thinner bottom.",
        ),
        depth: length(ranges.GROOVE).describe(
          "The groove's depth. Unless given, half the sides' thickness when planed flush, or half the slips' width where that is less, down to the half millimetre or to 1/32 in.",
        ),
        stopped: z
          .union([gap, choice('auto', 'none')], { error: 'a length, auto or none' })
          .describe(
            "Where the sides' groove begins, from their front ends: a length, or `auto` for where the bottom begins. So no groove shows at the front of a through joint. `none`, for a groove that runs through, unless given.",
          ),
      }),
    ).describe('The groove for the bottom, in the front and the sides.'),
    fit: group(
      '{side: 0.5, top: 1, behind: 10}',
      optional({
        side: gap.describe('The clearance on each side. 0.5 mm, or 1/64 in, unless given.'),
        top: z
          .union([gap, z.literal('auto')], { error: 'a length, or auto' })
          .describe(
            'The clearance above: a length, or `auto` for what leaves a gap of 0.5 mm when the wood is dampest, by the climate. 1 mm, or 1/32 in, unless given.',
          ),
        behind: gap.describe('The clearance behind. 10 mm, or 3/8 in, unless given.'),
      }),
    ).describe('The clearance between a drawer and its opening.'),
    back: group(
      '{drop: 4, joint: {pin: 6}}',
      optional({
        drop: gap.describe(
          "How far the back's upper edge is below the sides'. 4 mm, or 5/32 in, unless given.",
        ),
        joint: group('{pin: 6, tails: 3}', corner).describe(
          "The back corners, always through joints. As the front's, but for the tails, unless given.",
        ),
      }),
    ).describe('The back and its corners.'),
    bottom: group(
      '{kind: panel, slack: 0.5}',
      optional({
        kind: choice('panel', 'solid').describe(
          'A panel that does not move, or solid wood with its grain from side to side. `panel` unless given.',
        ),
        slack: gap.describe(
          'The slack of the bottom in its groove, at each side. 0.5 mm, or 1/64 in, unless given.',
        ),
        slips: z
          .union([slips, z.literal('none')], { error: 'written {width: 10, height: 18}, or none' })
          .describe(
            'Drawer slips, narrow strips glued inside the sides to carry the groove. `none` unless given.',
          ),
      }),
    ).describe('The bottom.'),
    front: group(
      '{lip: 6}',
      optional({
        lip: z
          .union(
            [
              overlap.transform((all) => ({ sides: all, top: all, bottom: all })),
              lip.transform(({ sides = 0, top = 0, bottom = 0 }) => ({ sides, top, bottom })),
            ],
            { error: 'one length all round, or written {sides: 6, top: 6, bottom: 0}' },
          )
          .describe(
            "The lip: how far the front extends over its opening's edges. 0, for an inset front, unless given.",
          ),
      }),
    ).describe('The front.'),
    ...fittingsKeys(unit),
  });
};

/** One kind of drawer; `keys`: those that the plan may give for every drawer. */
export const drawerSchema = (unit: Unit, keys: ReturnType<typeof drawerKeys>) => {
  const size = lengths(unit)(ranges.SPACE);
  const box = group('{width: 280, height: 76, depth: 420}', {
    width: size.describe('From left to right.'),
    height: size.describe('From bottom to top.'),
    depth: size.describe('From front to back.'),
  });
  return group('{name: Buttons, opening: {width: 280, height: 76, depth: 420}}', {
    name: name('the name of a drawer').describe('What the drawer is called; no two may have one name.'),
    ...optional({
      count: wholeNumber(ranges.COUNT).describe('The quantity: equal drawers to make. 1 unless given.'),
      opening: openingSchema(unit).describe(
        'The clear hole that the drawer slides into, as planned or as measured. Give this or `size`.',
      ),
      size: box.describe("The drawer's outside size, lip included, in place of `opening`."),
    }),
    ...keys,
    ...optional({ asBuilt: builtSchema(unit) }),
  });
};
