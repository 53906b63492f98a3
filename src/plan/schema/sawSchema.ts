import * as z from 'zod';
import type { Unit } from '../../units/unit.ts';
import { group, lengths, optional } from './leaves.ts';
import * as ranges from './ranges.ts';

/** What a shop loses between a board and its parts. */
export const sawSchema = (unit: Unit) => {
  const length = lengths(unit);
  const keep = length(ranges.KEEP);
  return group(
    '{kerf: 3, edge: 3, ends: 25, face: 1, keep: [300, 50]}',
    optional({
      kerf: length(ranges.KERF).describe('The width of a saw cut. 3 mm, or 1/8 in, unless given.'),
      edge: length(ranges.EDGE).describe(
        'What is left on each long edge of a part, to plane. 3 mm, or 1/8 in, unless given.',
      ),
      ends: length(ranges.ENDS).describe(
        'What is cut off each end of a board first. 25 mm, or 1 in, unless given.',
      ),
      face: length(ranges.FACE).describe('What is planed off each face. 1 mm, or 1/32 in, unless given.'),
      keep: z
        .tuple([keep, keep], { error: 'two lengths, [length, width]' })
        .transform(([long, wide]) => ({ length: long, width: wide }))
        .describe(
          'The least offcut worth keeping: its length and its width. [300, 50], or in inches [12, 2], unless given.',
        ),
    }),
  );
};
