import { type Affine, compose } from './affine.ts';
import type { Drawing } from './drawing.ts';

/**
 * A drawing on a page: `at` maps the drawing's mm to the page's. `drawing` may be a getter that draws on each access, so
 * that a page needs the memory of one of its drawings.
 */
export interface Placed {
  readonly drawing: Drawing;
  readonly at: Affine;
}

/** A sheet of paper, mm, its origin at the lower left and y upward. */
export interface PrintPage {
  readonly width: number;
  readonly height: number;
  readonly placed: readonly Placed[];
}

/** The same drawing, moved further by a map. */
export const movePlaced = (placed: Placed, further: Affine): Placed => ({
  get drawing() {
    return placed.drawing;
  },
  at: compose(placed.at, further),
});
