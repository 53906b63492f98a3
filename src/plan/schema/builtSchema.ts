import * as z from 'zod';
import { BUILT_PARTS } from '../../drawer/drawerSpec.ts';
import type { Unit } from '../../units/unit.ts';
import { choice, group, lengths, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** Boards of a drawer as they came out. */
export const builtSchema = (unit: Unit) => {
  const length = lengths(unit);
  return z
    .array(
      group('{part: side, hand: left, thickness: 10.6}', {
        part: choice(...BUILT_PARTS).describe('Which part it is.'),
        ...optional({
          index: wholeNumber(ranges.COUNT).describe(
            'Which of the equal drawers it is of, from 1; only where `count` is over 1.',
          ),
          hand: choice('left', 'right').describe('Which side it is, seen from the front; for sides only.'),
          thickness: length(ranges.BUILT_THICKNESS).describe('Its thickness. As planned unless given.'),
          width: length(ranges.SPACE).describe('Its width when finished. As planned unless given.'),
          length: length(ranges.SPACE).describe('Its length when finished. As planned unless given.'),
        }),
      }),
      { error: 'a list of boards, such as [{part: side, hand: left, thickness: 10.6}]' },
    )
    .describe(
      'Boards that came out other than planned, such as `{part: side, hand: left, thickness: 10.6}`. What depends on them follows, on every sheet; corners that differ have templates of their own.',
    );
};
