import { blankLetters, reasonWords } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { woodUsed } from '../../drawer/blanks/yieldOf.ts';
import { extentsOf } from '../../stock/polygon.ts';

/**
 * What comes out of which board, for another program: lengths in mm, places in the plan's own coordinates.
 * @example
 * ```ts
 * const broken = breakOutProject(project, { effort: 0.1 });
 * if (broken !== undefined)
 *   for (const { name, copy, blanks, cuts } of breakoutRecord(broken).boards)
 *     console.log(`${name} ${copy}: ${blanks.length} parts by ${cuts.length} cuts`);
 * ```
 */
export const breakoutRecord = (broken: BrokenOut) => {
  const { planks, blanks, runs, unlisted, breakout, toBuy } = broken;
  const wood = woodUsed(broken);
  return {
    boards: breakout.boards.flatMap(({ plank, blanks: placed, cuts, offcuts }) => {
      const board = planks[plank];
      if (board === undefined) return [];
      const { x0, y0, x1, y1 } = extentsOf(board.outline);
      return [
        {
          name: board.name,
          copy: board.copy,
          length: x1 - x0,
          width: y1 - y0,
          blanks: placed.flatMap((blank) => {
            const part = blanks[blank.wanted];
            if (part === undefined) return [];
            const { drawer, part: name, index, strip, spare } = part;
            const { turned, x, y, length, width, piece } = blank;
            return [
              {
                drawer,
                part: name,
                ...(index !== undefined && { index }),
                ...(strip !== undefined && { strip }),
                ...(spare && { spare }),
                letter: blankLetters(blank.wanted),
                ...{ turned, x, y, length, width, piece },
                why: reasonWords(blank.why, blanks),
              },
            ];
          }),
          cuts: cuts.map(({ kind, piece, at }) => ({ kind, piece, at })),
          offcuts,
        },
      ];
    }),
    runs: runs.map(({ kind, drawers }, i) => {
      const board = planks[breakout.runs[i]?.plank ?? -1];
      return {
        kind,
        drawers,
        board: board?.name ?? null,
        copy: board?.copy ?? null,
        met: board !== undefined,
      };
    }),
    missing: breakout.missing.flatMap((wanted) => {
      const blank = blanks[wanted];
      if (blank === undefined) return [];
      const { drawer, part, index, strip, length, width, finished } = blank;
      return [
        {
          ...{ drawer, part, index },
          ...(strip !== undefined && { strip }),
          letter: blankLetters(wanted),
          ...{ length, width, thickness: finished },
        },
      ];
    }),
    toBuy,
    unlisted,
    used: wood.used,
    yield: wood.yield,
    bound: breakout.missing.length > 0 ? null : (breakout.bound ?? null),
    volume: wood.volume,
  };
};
