import * as z from 'zod';
import { KIND_NAMES, type OwnLengthKey } from '../../joint/kinds/kinds.ts';
import { KEYS_OF_SPACINGS, SPACING_WORDS, SPACINGS } from '../../joint/spacingWish.ts';
import type { Unit } from '../../units/unit.ts';
import { choice, group, lengthLists, lengths, number, optional, slope, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** The kinds of corner. */
export const cornerKind = () => choice(...KIND_NAMES);

/** What no corner takes from another: each has its own width to fill. */
export const SPACING_KEYS = [
  ...(['tails', 'pins', 'locked', 'graded'] as const),
  ...(['spacing', ...KEYS_OF_SPACINGS] as const),
] as const;

const TAILS = 'a whole number of tails, or a list of their widths from the reference edge up';

const GROUPS = 'a list of whole numbers of tails, one for each group, such as [2, 3, 2]';

/** The keys of any corner. */
export const cornerKeys = (unit: Unit) => {
  const length = lengths(unit);
  const lists = lengthLists(unit);
  const pin = length(ranges.PIN);
  const lowerAndUpper = 'one width, or two: [lower, upper]';
  return optional({
    slope: slope().describe("The slope of a tail's side: 1:7, 1 in 7 or 8.13deg. 1:8 unless given."),
    pin: pin.describe(
      "The pin width. Half the tail board's thickness, at least 3 mm, in inches to 1/32 and at least 1/8, unless given.",
    ),
    halfPin: z
      .union(
        [
          pin.transform((both) => ({ lower: both, upper: both })),
          z.tuple([pin, pin], { error: lowerAndUpper }).transform(([lower, upper]) => ({ lower, upper })),
        ],
        { error: lowerAndUpper },
      )
      .describe('The width of the half pins, both or [lower, upper]. As wide as a pin unless given.'),
    tails: z
      .union([wholeNumber(ranges.TAILS), lists(ranges.TAIL, { what: TAILS, least: 1 })], { error: TAILS })
      .describe(
        'The number of tails, or the tail width of each from the reference edge up. Chosen for the look unless given.',
      ),
    pins: lists(ranges.PIN, { what: 'a list of widths, one between every two tails' }).describe(
      'The pin widths between listed tails. All as wide as `pin` unless given.',
    ),
    locked: z
      .array(z.string({ error: 'the name of a width, such as tail 2' }), {
        error: 'a list of widths by their names, such as [lower half pin, tail 2]',
      })
      .describe(
        'Widths that stay as they are listed while others are changed on the page: `lower half pin`, `tail 1`, `pin 1` and so on. On the page only: it changes nothing that is made. None unless given.',
      ),
    graded: group('{ratio: 0.9, from: edge}', {
      ratio: number(ranges.RATIO).describe("Each tail's width as a part of its neighbour's."),
      ...optional({
        from: choice('edge', 'middle').describe(
          'From the reference edge up, or from the middle out to both edges. `edge` unless given.',
        ),
      }),
    }).describe('Tails that grow or shrink evenly. All equal unless given.'),
    spacing: z
      .enum(SPACINGS, { error: SPACING_WORDS })
      .describe(
        'How the tails are spaced: `even`; `hounds-tooth`, with a small pin in the middle of each tail of a through joint; `grouped`; or `closer-edges`, narrower towards both edges of a wide board, where it cups. The first two may be `graded`, to both edges alike from the `middle`. `even` unless given; the back corners have their own.',
      ),
    groups: z
      .array(wholeNumber(ranges.TAILS), { error: GROUPS })
      .min(2, { error: 'two groups or more' })
      .describe(
        'The number of tails in each group of grouped ones, from the reference edge up: [2, 3, 2]. Must be given for those.',
      ),
    groupPin: pin.describe('The pin width between groups. Three times `pin` unless given.'),
    smallPin: pin.describe(
      "The pin width of a hound's tooth's small pins, at least that of the narrowest chisel. Half of `pin`, in inches to 1/32, unless given.",
    ),
    closer: number(ranges.CLOSER).describe(
      'Of tails that are closer at the edges: the width of each narrower one as a part of its inner neighbour. 0.7 unless given.',
    ),
    closerTails: wholeNumber(ranges.CLOSER_TAILS).describe(
      'The number of narrower tails at either edge of those that are closer there. 2 unless given, so that the outermost is half as wide as those in the middle.',
    ),
    shoulder: choice('lower', 'upper', 'both').describe(
      'The edges of a through or lapped joint that are mitred right through, where a groove, a rebate or a moulding would show. None unless given; the back corners have their own.',
    ),
    shoulderWidth: length(ranges.LAP).describe(
      'The width of a mitred shoulder, in from the edge. Unless given, what covers the groove, at the lower edge; else as wide as the lap, or a quarter of the tail board, at least 3 mm or 1/8 in.',
    ),
    mitre: choice('corner').describe(
      'How boards of unequal thickness meet where they are mitred: `corner`, from the inside corner to the outside corner. To be given only where they differ.',
    ),
    proud: length(ranges.CLEARANCE).describe(
      "How far the tail board is proud of the pins' ends, to be planed flush. 0 unless given.",
    ),
    chisel: length(ranges.CHISEL).describe(
      'Width of the narrowest chisel in the rack. 3 mm, or 1/8 in, unless given.',
    ),
  });
};

/** What only some kinds of corner have. */
export const ownLengthKeys = (unit: Unit) => {
  const lap = lengths(unit)(ranges.LAP);
  const own = {
    lap: lap.describe(
      'The wood left in front of the tails where their ends do not show, as in a lapped joint. A quarter of the pin board, to the half millimetre, at least 3 mm, in inches to 1/32 and at least 1/8, unless given.',
    ),
    tailLap: lap.describe(
      'The wood that the tail board keeps outside the pins, where both boards have a lap. As wide as `lap` in a secret-mitred joint, else a quarter of the tail board, rounded as `lap` is, unless given.',
    ),
  } satisfies Record<OwnLengthKey, z.ZodType>;
  return optional(own);
};
