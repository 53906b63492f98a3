import type { Drawer } from '../../drawer/drawer.ts';
import type { Size } from '../../paper/printable.ts';
import type { Notation } from '../../units/notation.ts';
import { type Block, picture, space, stack } from '../typeset/block.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { type SketchAxes, sketchAxes } from './sketchAxes.ts';
import { viewFromAbove } from './viewFromAbove.ts';
import { viewFromRight } from './viewFromRight.ts';

/** Gap between the views, mm. */
const GAP = 6;

/** Steps of halving in a search for a scale: to within 1 % of the largest. */
const STEPS = 7;

/**
 * A dimensioned sketch of a drawer, from above and, below it, from the right: to scale if the room allows, and as large as
 * it allows. It exceeds a room that is too small for its lettering.
 */
export const benchSketch = (drawer: Drawer, unit: Notation, type: TypeSizes, room: Size): Block[] => {
  const axesAt = (scale: number) => sketchAxes(drawer, scale, type);
  const fromRight = (axes: SketchAxes, brief: boolean) => viewFromRight(drawer, axes, unit, type, brief);
  const { box: smallest } = fromRight(axesAt(0), false);
  const brief = smallest.x1 - smallest.x0 > room.width;
  const viewsAt = (scale: number) => {
    const axes = axesAt(scale);
    return [viewFromAbove(drawer, axes, unit, type), fromRight(axes, brief)];
  };
  const fits = (scale: number): boolean => {
    const boxes = viewsAt(scale).map(({ box }) => box);
    const height = boxes.reduce((sum, { y0, y1 }) => sum + y1 - y0, GAP);
    return height <= room.height && boxes.every(({ x0, x1 }) => x1 - x0 <= room.width);
  };
  const { width, depth } = drawer.sizes;
  const most = room.width / Math.max(width, depth);
  const [, least] = parted(0, most, (scale) => !axesAt(scale).toScale);
  const [scale] = axesAt(least).toScale && fits(least) ? parted(least, most, fits) : parted(0, least, fits);
  const [above = space(0), ...rest] = viewsAt(scale).map(picture);
  return [stack([above, space(GAP)]), ...rest];
};

/** The ends of a short stretch in which something that is so at `low` ceases to be so at `high`. */
const parted = (low: number, high: number, isSo: (value: number) => boolean): readonly [number, number] => {
  let [yes, no] = [low, high];
  for (let step = 0; step < STEPS; step++) {
    const middle = (yes + no) / 2;
    if (isSo(middle)) yes = middle;
    else no = middle;
  }
  return [yes, no];
};
