import type { Box } from '../../drawing/drawing.ts';
import type { Defect, Plank } from '../plank.ts';
import { holdsBox, rectangle, shareArea } from '../polygon.ts';
import type { Saw, Wanted } from '../wanted.ts';

/** Why a blank cannot come out of a place on a board. */
export type PlaceFault =
  /** The board is for other stocks. */
  | { readonly is: 'stock' }
  /** It is too thin. */
  | { readonly is: 'thin' }
  /** The grain would run across the blank. */
  | { readonly is: 'grain' }
  /** With the board's ends cut off it lies outside. */
  | { readonly is: 'outside' }
  /** It holds a defect that it may not have there. */
  | { readonly is: 'defect'; readonly defect: Defect };

/** A blank as it lies on a board, in mm. */
export interface Lying {
  readonly box: Box;
  readonly turned: boolean;
  /** With its length across the board. */
  readonly across: boolean;
}

type Board = Omit<Plank, 'copy' | 'done'>;

/** What keeps a blank from being of a board at all. */
export const boardFault = (
  { stocks, thickness }: Board,
  wanted: Wanted,
): Extract<PlaceFault, { is: 'stock' | 'thin' }> | undefined => {
  if (!stocks.includes(wanted.stock)) return { is: 'stock' };
  return thickness < wanted.thickness - 1e-6 ? { is: 'thin' } : undefined;
};

/**
 * What keeps a blank from lying at a place of a board; undefined where it may.
 * @param dust what sticks out by no more, in mm, does not count: places were rounded when they were printed
 */
export const placeFault = (
  board: Board,
  wanted: Wanted,
  lying: Lying,
  { ends }: Pick<Saw, 'ends'>,
  dust: number,
): PlaceFault | undefined => {
  const { outline, clean } = board;
  const { box, across } = lying;
  const wrong = boardFault(board, wanted);
  if (wrong !== undefined) return wrong;
  if (across && !wanted.eitherWay) return { is: 'grain' };
  const off = { left: clean.left ? 0 : ends, right: clean.right ? 0 : ends };
  if (!holdsBox(outline, { ...box, x0: box.x0 - off.left, x1: box.x1 + off.right }, dust))
    return { is: 'outside' };
  const defect = defectIn(board, wanted, lying, dust);
  return defect && { is: 'defect', defect };
};

/** The first defect of a board that a blank where it lies may not have. */
const defectIn = (
  { defects }: Board,
  { zones, allows }: Wanted,
  { box, turned, across }: Lying,
  dust: number,
): Defect | undefined => {
  const shut = zones.map(({ from, to }): Box => {
    const [[x0, y0], [x1, y1]] = across ? [flipped(from), flipped(to)] : [from, to];
    return turned
      ? { x0: box.x1 - x1, y0: box.y1 - y1, x1: box.x1 - x0, y1: box.y1 - y0 }
      : { x0: box.x0 + x0, y0: box.y0 + y0, x1: box.x0 + x1, y1: box.y0 + y1 };
  });
  return defects.find(({ kind, outline }) =>
    (allows.includes(kind) ? shut : [box]).some((part) => shareArea(rectangle(shrunk(part, dust)), outline)),
  );
};

const flipped = ([x, y]: readonly [number, number]): readonly [number, number] => [y, x];

const shrunk = ({ x0, y0, x1, y1 }: Box, dust: number): Box => ({
  x0: x0 + dust,
  y0: y0 + dust,
  x1: x1 - dust,
  y1: y1 - dust,
});
