import * as z from 'zod';
import type { Range } from '../../units/range.ts';
import type { Unit } from '../../units/unit.ts';
import { type cornerKeys, cornerKind, ownLengthKeys } from './cornerSchema.ts';
import { PART, partKeys, sizeSchema } from './drawerSchema.ts';
import { choice, group, lengths, name, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** One kind of box; `corner`: the keys of any corner. */
export const boxSchema = (unit: Unit, corner: ReturnType<typeof cornerKeys>) => {
  const length = lengths(unit);
  const gap = length(ranges.CLEARANCE);
  const part = (what: string, thickness?: Range) => group(PART, optional(partKeys(unit, what, thickness)));
  return group('{name: Button box, size: {width: 200, height: 80, depth: 140}}', {
    name: name('the name of a box').describe(
      'What the box is called; no two drawers, boxes or corners may have one name.',
    ),
    size: sizeSchema(unit).describe(
      "The box's outside size: as high as its sides with the lid and the saw cut; a top that is laid on the edges is in addition.",
    ),
    ...optional({
      count: wholeNumber(ranges.COUNT).describe('The quantity: equal boxes to make. 1 unless given.'),
      stock: group(
        '{front: {thickness: 9}}',
        optional({
          front: part("Its thickness. The plan's front's unless given.").describe('The front.'),
          side: part("Their thickness. As the plan's sides, else as the front, unless given.").describe(
            'The sides.',
          ),
          back: part("Its thickness. The front's unless given.").describe(
            'The back. As the front, in all that is not given.',
          ),
          bottom: part("Its thickness. The groove's width unless given.", ranges.BOTTOM_THICKNESS).describe(
            'The bottom.',
          ),
        }),
      ).describe('What its parts are made of. What is not given is taken from `stock` above.'),
      kind: cornerKind().describe('The kind of joint at all four corners. `through` unless given.'),
      joint: group('{slope: "1:7", pin: 5}', { ...corner, ...ownLengthKeys(unit) }).describe(
        'All four corners. What is not given is taken from `joint` above as single corners take it.',
      ),
      groove: group(
        '{offset: 10, width: 5, depth: 4}',
        optional({
          offset: gap.describe(
            "From the lower edge to the groove's lower edge. As in a drawer unless given.",
          ),
          width: length(ranges.GROOVE).describe("The groove's width. As in a drawer unless given."),
          depth: length(ranges.GROOVE).describe(
            "The groove's depth. Unless given, half the thinnest of its boards, or what laps leave where that is less, down to the half millimetre or to 1/32 in.",
          ),
          stopped: z
            .union([gap, choice('auto', 'none')], { error: 'a length, auto or none' })
            .describe(
              "Where the sides' grooves end, from both ends: a length, `auto` for where the bottom begins, or `none` where they may run through. Unless given, `auto` where they would show at a through corner.",
            ),
        }),
      ).describe('The groove for the bottom, on all four sides.'),
      bottom: group(
        '{kind: panel, slack: 0.5}',
        optional({
          kind: choice('panel', 'solid').describe(
            'A panel that does not move, or solid wood with its grain from side to side. `panel` unless given.',
          ),
          hold: choice('groove', 'rebate').describe(
            'What holds it: a groove on all four sides, or a rebate along the lower edges, as high as the bottom is thick and as deep as a groove. `groove` unless given.',
          ),
          slack: gap.describe(
            'The slack of the bottom in its grooves, on all four sides. As in a drawer unless given.',
          ),
        }),
      ).describe('The bottom.'),
      lid: group('{height: 25, kerf: 1.5}', {
        height: length(ranges.WIDTH).describe(
          "The lid's height, a part of the box's: from the upper edge down to the saw cut, or to where a lid made apart lies on the box.",
        ),
        ...optional({
          kerf: length(ranges.KERF).describe(
            'What saw and plane take between box and lid. 1.5 mm, or 1/16 in, unless given.',
          ),
          made: choice('sawn', 'apart').describe(
            'How the lid is made: `sawn` off when the box is glued up, a pin lying over the saw cut; or `apart`, with corners of its own, its top in a groove as the bottom. `sawn` unless given.',
          ),
        }),
      }).describe('The lid. None unless given.'),
    }),
  });
};
