import type { Drawer } from '../../drawer/drawer.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';

/** From a position along one axis of a drawer, mm, to its position on a sketch, mm. */
export type Axis = (measure: number) => number;

/** The axes of a sketch, from the left side's outer face to the right, from the front's outer face to the back, and up from the reference edge. */
export interface SketchAxes {
  readonly across: Axis;
  readonly back: Axis;
  readonly up: Axis;
}

/** Thickness on a sketch: the least of a board, mm, and the most of all boards at one end, as a share of the view. */
const LEAST_BOARD = 2.6;
const MOST_BOARDS = 0.18;

/** Least sizes of a view, ems of text. */
const LEAST = { width: 10.5, depth: 9.4, height: 3 };

/** Axes of about one scale, except that every view is large enough for its lettering and thin boards are thick enough to see. */
export const sketchAxes = (
  { spec: { stock }, sizes, boards }: Drawer,
  scale: number,
  type: TypeSizes,
): SketchAxes => {
  const { width, depth, height, wall } = sizes;
  const over = Math.max(LEAST.width * type.text, width * scale);
  const along = Math.max(LEAST.depth * type.text, depth * scale);
  const end = (view: number, ...thicknesses: readonly number[]): End => {
    const thickness = thicknesses.reduce((sum, each) => sum + each, 0);
    const least = thicknesses.length * LEAST_BOARD;
    return { thickness, shown: Math.min(Math.max(thickness * scale, least), MOST_BOARDS * view) };
  };
  const side = end(over, wall, ...(boards.slip === undefined ? [] : [boards.slip.thickness]));
  return {
    across: ends(width, over, side, side, scale),
    back: ends(depth, along, end(along, stock.front.thickness), end(along, stock.back.thickness), scale),
    up: (z) => z * Math.max(scale, (LEAST.height * type.text) / height),
  };
};

/** Thickness of the boards at one end of an axis, and as shown, mm. */
interface End {
  readonly thickness: number;
  readonly shown: number;
}

/** A linear map between two ends with scales of their own; to `scale` beyond them. */
const ends =
  (length: number, shown: number, first: End, last: End, scale: number): Axis =>
  (measure) => {
    if (measure < 0) return measure * scale;
    if (measure > length) return shown + (measure - length) * scale;
    if (measure < first.thickness) return (measure / first.thickness) * first.shown;
    if (measure > length - last.thickness) return shown - ((length - measure) / last.thickness) * last.shown;
    const share = (measure - first.thickness) / (length - first.thickness - last.thickness);
    return first.shown + share * (shown - first.shown - last.shown);
  };
