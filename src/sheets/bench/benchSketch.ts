import type { Drawer } from '../../drawer/drawer.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Size } from '../../paper/printable.ts';
import type { Notation } from '../../units/notation.ts';
import { type Block, picture, space, stack } from '../typeset/block.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { sketchAxes } from './sketchAxes.ts';
import { viewFromAbove } from './viewFromAbove.ts';
import { viewFromRight } from './viewFromRight.ts';

/** Gap between the views, mm. */
const GAP = 6;

/**
 * A dimensioned sketch of a drawer, from above and, below it, from the right, as large as the room allows. It exceeds a
 * room that is too small for its lettering.
 */
export const benchSketch = (drawer: Drawer, unit: Notation, type: TypeSizes, room: Size): Block[] => {
  const viewsAt = (scale: number) => {
    const axes = sketchAxes(drawer, scale, type);
    return [viewFromAbove(drawer, axes, unit, type), viewFromRight(drawer, axes, unit, type)];
  };
  const fits = (views: readonly Drawing[]): boolean => {
    const boxes = views.map(({ box }) => box);
    const height = boxes.reduce((sum, { y0, y1 }) => sum + y1 - y0, GAP);
    return height <= room.height && boxes.every(({ x0, x1 }) => x1 - x0 <= room.width);
  };
  const { width, depth } = drawer.sizes;
  const views = largest(viewsAt, fits, room.width / Math.max(width, depth));
  const [above = space(0), ...rest] = views.map(picture);
  return [stack([above, space(GAP)]), ...rest];
};

/** Views at the largest scale from 0 to `most` at which they fit, to within 1 % of `most`. */
const largest = (
  viewsAt: (scale: number) => Drawing[],
  fits: (views: readonly Drawing[]) => boolean,
  most: number,
): Drawing[] => {
  let [low, high] = [0, most];
  let best: Drawing[] | undefined;
  for (let step = 0; step < 7; step++) {
    const middle = (low + high) / 2;
    const views = viewsAt(middle);
    if (fits(views)) [low, best] = [middle, views];
    else high = middle;
  }
  return best ?? viewsAt(0);
};
