import type { Drawer } from '../drawer/drawer.ts';

/** Where a measure in mm along one axis of a drawer lies on a sketch, in mm. */
export type Axis = (measure: number) => number;

/** The axes of a sketch, from the left side's outer face to the right, from the front's outer face to the back, and up from the reference edge. */
export interface SketchAxes {
  readonly across: Axis;
  readonly back: Axis;
  readonly up: Axis;
}

/** The least and the most that a board's thickness takes of a sketch: in mm, and as a share of the view. */
const LEAST_BOARD = 2.6;
const MOST_BOARD = 0.2;

/** The least measures of a view, in mm. */
const LEAST = { width: 40, depth: 36, height: 12 };

/** Axes of about one scale, but no view is too small to letter and thin boards are drawn thick enough to see. */
export const sketchAxes = ({ spec: { stock }, sizes }: Drawer, scale: number): SketchAxes => {
  const { width, depth, height, wall } = sizes;
  const over = Math.max(LEAST.width, width * scale);
  const along = Math.max(LEAST.depth, depth * scale);
  const board = (thickness: number, view: number) =>
    Math.min(Math.max(thickness * scale, LEAST_BOARD), MOST_BOARD * view);
  return {
    across: ends(width, over, [wall, board(wall, over)], [wall, board(wall, over)], scale),
    back: ends(
      depth,
      along,
      [stock.front.thickness, board(stock.front.thickness, along)],
      [stock.back.thickness, board(stock.back.thickness, along)],
      scale,
    ),
    up: (z) => z * Math.max(scale, LEAST.height / height),
  };
};

/** A straight map between two boards that have scales of their own; to scale beyond them. */
const ends =
  (
    length: number,
    shown: number,
    [first, firstShown]: readonly [number, number],
    [last, lastShown]: readonly [number, number],
    scale: number,
  ): Axis =>
  (measure) => {
    if (measure < 0) return measure * scale;
    if (measure > length) return shown + (measure - length) * scale;
    if (measure < first) return (measure / first) * firstShown;
    if (measure > length - last) return shown - ((length - measure) / last) * lastShown;
    return firstShown + ((measure - first) / (length - first - last)) * (shown - firstShown - lastShown);
  };
