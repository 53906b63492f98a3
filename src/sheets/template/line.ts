import type { Path } from '../../drawing/drawing.ts';

/** A straight line. */
export const straight = (x0: number, y0: number, x1: number, y1: number): Path => ({
  points: [
    [x0, y0],
    [x1, y1],
  ],
});
