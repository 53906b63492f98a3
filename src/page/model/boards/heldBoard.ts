import type { Box, Point } from '../../../drawing/drawing.ts';
import { BOARD_LENGTH, BOARD_WIDTH, DEFECT } from '../../../plan/schema/ranges.ts';
import type { Plank } from '../../../stock/plank.ts';
import { extentsOf, type Polygon } from '../../../stock/polygon.ts';
import { MM_PER_INCH, type Unit } from '../../../units/unit.ts';
import { type BoardSizes, boardSizes, endOfDefect } from './boardShape.ts';

/** What of a board is held: its right end, its upper edge, one of its defects or parts, or a place where a defect is drawn. */
export type Grip = 'length' | 'width' | 'drawing' | `defect ${number}` | `part ${number}`;

/** What a hand has made of what it holds. */
export type Held =
  | { readonly is: 'sizes'; readonly sizes: BoardSizes }
  | { readonly is: 'defect'; readonly defect: number; readonly box: Box }
  | { readonly is: 'drawn'; readonly box: Box };

/** The step of the arrow keys and of dragging on a board, in mm: as a board is measured, to a mm or to 1/16 inch. */
export const boardStep = (unit: Unit): number => (unit === 'mm' ? 1 : MM_PER_INCH / 16);

const within = (value: number, { least, most }: { readonly least: number; readonly most: number }): number =>
  Math.min(Math.max(value, least), most);

const nearest = (value: number, step: number): number => Math.round(value / step) * step;

/**
 * What is held, moved; as far as a board may have that size, and a defect lies on it.
 * @param by mm to the right and up
 * @param from where a defect begins to be drawn, in the board's coordinates
 */
export const moved = (
  { outline, defects }: Plank,
  grip: Grip,
  [dx, dy]: Point,
  unit: Unit,
  from: Point = [0, 0],
): Held | undefined => {
  const step = boardStep(unit);
  const sizes = boardSizes(outline);
  switch (grip) {
    case 'length': {
      const length = within(nearest(sizes.length + dx, step), BOARD_LENGTH);
      return { is: 'sizes', sizes: { ...sizes, length } };
    }
    case 'width': {
      const [narrow, wide] = [Math.min(sizes.left, sizes.right), Math.max(sizes.left, sizes.right)];
      const to = within(nearest(wide + dy, step), BOARD_WIDTH);
      const by = Math.max(to - wide, BOARD_WIDTH.least - narrow);
      return { is: 'sizes', sizes: { ...sizes, left: sizes.left + by, right: sizes.right + by } };
    }
    case 'drawing':
      return { is: 'drawn', box: drawnBox(outline, from, [from[0] + dx, from[1] + dy], step) };
    default: {
      const defect = Number(grip.slice('defect '.length));
      const shape = defects[defect]?.outline;
      return shape === undefined
        ? undefined
        : { is: 'defect', defect, box: movedDefect(shape, outline, [dx, dy], step) };
    }
  }
};

/** From one corner to the other, on the board. */
const drawnBox = (board: Polygon, a: Point, b: Point, step: number): Box => {
  const on = extentsOf(board);
  const along = (x: number) => within(on.x0 + nearest(x - on.x0, step), { least: on.x0, most: on.x1 });
  const across = (y: number) => within(on.y0 + nearest(y - on.y0, step), { least: on.y0, most: on.y1 });
  const [x0, x1] = [along(Math.min(a[0], b[0])), along(Math.max(a[0], b[0]))];
  const [y0, y1] = [across(Math.min(a[1], b[1])), across(Math.max(a[1], b[1]))];
  // What was drawn as a line is one step wide, inside the board.
  const [left, low] = [Math.min(x0, on.x1 - step), Math.min(y0, on.y1 - step)];
  return { x0: left, y0: low, x1: Math.max(x1, left + step), y1: Math.max(y1, low + step) };
};

/** One that takes a whole end reaches further or less far; any other moves, and its middle stays on the board. */
const movedDefect = (defect: Polygon, board: Polygon, [dx, dy]: Point, step: number): Box => {
  const [own, on] = [extentsOf(defect), extentsOf(board)];
  const end = endOfDefect(defect, board);
  const reach = { least: Math.max(step, DEFECT.least), most: on.x1 - on.x0 };
  if (end === 'left') return { ...own, x1: on.x0 + within(nearest(own.x1 - on.x0 + dx, step), reach) };
  if (end === 'right') return { ...own, x0: on.x1 - within(nearest(on.x1 - own.x0 - dx, step), reach) };
  const middle: Point = [(own.x0 + own.x1) / 2, (own.y0 + own.y1) / 2];
  const x = within(nearest(middle[0] + dx, step), { least: on.x0, most: on.x1 }) - middle[0];
  const y = within(nearest(middle[1] + dy, step), { least: on.y0, most: on.y1 }) - middle[1];
  return {
    x0: own.x0 + (dx === 0 ? 0 : x),
    x1: own.x1 + (dx === 0 ? 0 : x),
    y0: own.y0 + (dy === 0 ? 0 : y),
    y1: own.y1 + (dy === 0 ? 0 : y),
  };
};
