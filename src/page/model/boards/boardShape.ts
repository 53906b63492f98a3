import type { Box, Point } from '../../../drawing/drawing.ts';
import { extentsOf, type Polygon } from '../../../stock/polygon.ts';

/** How long a board is and how wide at either end, in mm. */
export interface BoardSizes {
  readonly length: number;
  readonly left: number;
  readonly right: number;
}

/** Whether a board has four corners, square ends and a straight lower edge, so that its sizes are all there is to it. */
const isPlain = (outline: Polygon): boolean => {
  const { x0, y0, x1 } = extentsOf(outline);
  const has = (test: (point: Point) => boolean) => outline.some(test);
  return (
    outline.length === 4 &&
    outline.every(([x]) => x === x0 || x === x1) &&
    has(([x, y]) => x === x0 && y === y0) &&
    has(([x, y]) => x === x1 && y === y0)
  );
};

/** The sizes of a board; one of irregular outline is as wide as its extent at both ends. */
export const boardSizes = (outline: Polygon): BoardSizes => {
  const { x0, y0, x1, y1 } = extentsOf(outline);
  const widthAt = (end: number): number =>
    isPlain(outline) ? Math.max(...outline.flatMap(([x, y]) => (x === end ? [y - y0] : []))) : y1 - y0;
  return { length: x1 - x0, left: widthAt(x0), right: widthAt(x1) };
};

/** Whether the two ends of a board may differ in width. */
export const hasTwoWidths = isPlain;

/** A board's outline with other sizes: what lies right of its middle, and above it, moves. */
export const resized = (outline: Polygon, sizes: BoardSizes): Polygon => {
  const before = boardSizes(outline);
  const { x0, y0, x1, y1 } = extentsOf(outline);
  const [middle, half] = [(x0 + x1) / 2, (y0 + y1) / 2];
  return outline.map(([x, y]): Point => {
    const end = x < middle ? 'left' : 'right';
    return [x < middle ? x : x + sizes.length - before.length, y < half ? y : y + sizes[end] - before[end]];
  });
};

/** An outline moved and stretched from its own extents to others. */
export const fittedInto = (outline: Polygon, box: Box): Polygon => {
  const from = extentsOf(outline);
  const along = (box.x1 - box.x0) / (from.x1 - from.x0);
  const across = (box.y1 - box.y0) / (from.y1 - from.y0);
  return outline.map(([x, y]): Point => [box.x0 + (x - from.x0) * along, box.y0 + (y - from.y0) * across]);
};

/** The end of a board that a defect starts at and takes the full width of; undefined where it lies otherwise. */
export const endOfDefect = (defect: Polygon, board: Polygon): 'left' | 'right' | undefined => {
  const [own, on] = [extentsOf(defect), extentsOf(board)];
  if (defect.length !== 4 || own.y0 > on.y0 || own.y1 < on.y1) return undefined;
  if (own.x0 === on.x0 && own.x1 < on.x1) return 'left';
  return own.x1 === on.x1 && own.x0 > on.x0 ? 'right' : undefined;
};
