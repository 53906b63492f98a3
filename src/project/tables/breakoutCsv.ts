import { blankLetters } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { csv } from '../../render/csv.ts';
import { decimalLength } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';

const LENGTHS = ['x', 'y', 'length', 'width', 'thickness'];

/** Which part comes out of which board, one blank a line; what is missing has no board. */
export const breakoutCsv = ({ planks, blanks, breakout }: BrokenOut, units: Notation): string => {
  const placed = breakout.boards.flatMap(({ plank, blanks }) =>
    blanks.map((at) => ({ wanted: at.wanted, at, board: planks[plank] })),
  );
  const missing = breakout.missing.map((wanted) => ({ wanted, at: undefined, board: undefined }));
  const length = (value: number | undefined) => (value === undefined ? '' : decimalLength(value, units));
  return csv([
    [
      ...['board', 'copy', 'drawer', 'part', 'index', 'strip', 'spare', 'turned'],
      ...LENGTHS.map((title) => `${title} ${unitOf(units)}`),
      'piece',
      'letter',
    ],
    ...[...placed, ...missing].flatMap(({ wanted, at, board }) => {
      const blank = blanks[wanted];
      if (blank === undefined) return [];
      return [
        [
          board?.name ?? '',
          String(board?.copy ?? ''),
          blank.drawer,
          blank.part,
          String(blank.index ?? ''),
          String(blank.strip ?? ''),
          blank.spare ? 'yes' : '',
          at?.turned ? 'yes' : '',
          length(at?.x),
          length(at?.y),
          length((at ?? blank).length),
          length((at ?? blank).width),
          length(board?.thickness ?? blank.thickness),
          String(at?.piece ?? ''),
          blankLetters(wanted),
        ],
      ];
    }),
  ]);
};
