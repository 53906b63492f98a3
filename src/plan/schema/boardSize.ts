import { accept, type Result, refuse } from '../../units/complaint.ts';
import { parseLength } from '../../units/parseLength.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { isInRange, type Range } from '../../units/range.ts';
import type { Unit } from '../../units/unit.ts';
import * as ranges from './ranges.ts';

/** A board of a merchant's list. */
export interface BoardSize {
  readonly length: number;
  readonly width: number;
  readonly count?: number;
}

/** Reads `1810 x 190`, or `1810 x 190 x 3` for three of them; `×` does as well. Lengths in mm. */
export const parseBoardSize = (text: string, unit: Unit): Result<BoardSize> => {
  const [long, wide, quantity, ...more] = text.split(/\s*[x×*]\s*/iu);
  const length = parseLength(long ?? '', unit);
  const width = parseLength(wide ?? '', unit);
  const count = quantity === undefined ? undefined : Number(quantity);
  if (!length.ok || !width.ok || more.length > 0 || !(count === undefined || Number.isInteger(count)))
    return refuse({
      at: [],
      says: say`${quote(text)} is no size of a board; it must be length x width, or length x width x quantity`,
      hint: say`${mm(1810)} x ${mm(190)} x 3`,
    });
  const outside = (what: string, value: number, { least, most }: Range) =>
    isInRange(value, { least, most })
      ? []
      : [{ at: [], says: say`its ${what} is ${mm(value)}; it must be ${mm(least)} to ${mm(most)}` }];
  const { least, most } = ranges.BOARDS;
  const wrong = [
    ...outside('length', length.value, ranges.BOARD_LENGTH),
    ...outside('width', width.value, ranges.BOARD_WIDTH),
    ...(count === undefined || isInRange(count, ranges.BOARDS)
      ? []
      : [{ at: [], says: say`its quantity is ${count}; it must be ${least} to ${most}` }]),
  ];
  return wrong.length > 0
    ? refuse(...wrong)
    : accept({ length: length.value, width: width.value, ...(count !== undefined && { count }) });
};
