import { type Affine, compose } from './affine.ts';
import type { Drawing } from './drawing.ts';

/**
 * A drawing laid on a page: `at` takes the drawing's mm to the page's. It may be drawn anew whenever it is asked for, so
 * that a page takes the memory of one of its drawings.
 */
export interface Placed {
  readonly drawing: Drawing;
  readonly at: Affine;
}

/** A sheet of paper, in mm, its origin at the bottom left and y upward. */
export interface PrintPage {
  readonly width: number;
  readonly height: number;
  readonly placed: readonly Placed[];
}

/** The same, taken further by a map. */
export const movePlaced = (placed: Placed, further: Affine): Placed => ({
  get drawing() {
    return placed.drawing;
  },
  at: compose(placed.at, further),
});
