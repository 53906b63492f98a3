import type { Unit } from '../../units/unit.ts';
import { group, lengths, measures, name, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** Pulls, locks and stops, which a plan gives for every drawer, and any drawer may override. */
export const fittingsKeys = (unit: Unit) => {
  const length = lengths(unit);
  const hole = length(ranges.HOLE);
  const part = length(ranges.FITTING);
  const measure = measures(unit);
  return {
    pulls: group(
      '{number: 2, above: 4%, fromEnds: 25%, holes: {diameter: 5}}',
      optional({
        number: wholeNumber(ranges.PULLS).describe('1 in the middle, 2, or 0 for none. 1 unless given.'),
        above: measure(ranges.ABOVE, ranges.ABOVE_SHARE).describe(
          "Above the middle of the front's height: a length, or a share of that height such as `4%`; less than 0: below. 0 unless given.",
        ),
        fromEnds: measure(ranges.SPACE, ranges.FROM_ENDS).describe(
          "Of two, from each end of the front to the middle: a length, or a share of the front's length. 25 % unless given.",
        ),
        lineUpWith: name('the name of a drawer').describe(
          'A drawer of the cabinet: pulls of other rows line up with those of its row. In place of `fromEnds`.',
        ),
        holes: group(
          '{diameter: 5, spacing: 64}',
          optional({
            diameter: hole.describe('Diameter to drill. 5 mm, or 3/16 in, unless given.'),
            spacing: part.describe('Between the two holes of one pull, side by side. One hole unless given.'),
          }),
        ).describe('The holes of one pull.'),
        size: group('{width: 28, height: 28}', {
          width: part.describe('From left to right.'),
          height: part.describe('From bottom to top.'),
        }).describe(
          'What a pull covers, seen from the front. Unless given, 28 mm or 1-1/8 in each way; with two holes, 14 mm or 1/2 in wider than those and half as high.',
        ),
      }),
    ).describe('The pulls of the fronts. None unless given.'),
    locks: group(
      '{pin: 20, keyhole: 6, body: {width: 50, height: 32, depth: 10}}',
      optional({
        number: wholeNumber(ranges.LOCKS).describe('1 in the middle, or 0 for none. 1 unless given.'),
        pin: part.describe(
          "From the front's upper edge, or its rebate's, down to the keyhole. 20 mm, or 3/4 in, unless given.",
        ),
        keyhole: hole.describe('Diameter to drill for the key. 6 mm, or 1/4 in, unless given.'),
        body: group('{width: 50, height: 32, depth: 10}', {
          width: part.describe('From left to right.'),
          height: part.describe("From the front's upper edge down."),
          depth: part.describe('From the inside face.'),
        }).describe(
          'What is let into the inside face. 50 x 32 x 10 mm, or 2 x 1-1/4 x 3/8 in, unless given.',
        ),
      }),
    ).describe('The locks of the fronts, let in at the upper edge. None unless given.'),
    stops: group(
      '{number: 2, width: 40, thickness: 6, depth: 25}',
      optional({
        number: wholeNumber(ranges.PULLS).describe('2, 1 in the middle, or 0 for none. 2 unless given.'),
        fromSides: measure(ranges.SPACE, ranges.FROM_ENDS).describe(
          "Of two, from each side of the opening to the middle: a length, or a share of the opening's width. 20 % unless given.",
        ),
        width: part.describe('Along the rail. 40 mm, or 1-1/2 in, unless given.'),
        thickness: part.describe('How far it stands above the rail. 6 mm, or 1/4 in, unless given.'),
        depth: part.describe('From front to back. 25 mm, or 1 in, unless given.'),
        behind: length(ranges.CLEARANCE).describe(
          "From the rail's front edge back to the stop. Unless given, the front's thickness, less that of its lip.",
        ),
      }),
    ).describe(
      'Blocks fixed to the rail under each drawer, which its front runs against. None unless given.',
    ),
  };
};
