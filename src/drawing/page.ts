import type { Affine } from './affine.ts';
import type { Drawing } from './drawing.ts';

/** A drawing laid on a page: `at` takes the drawing's mm to the page's. */
export interface Placed {
  readonly drawing: Drawing;
  readonly at: Affine;
}

/** A sheet of paper, in mm, its origin at the bottom left and y upward. */
export interface Page {
  readonly width: number;
  readonly height: number;
  readonly placed: readonly Placed[];
}
