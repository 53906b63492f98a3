import type { Mark, Point } from '../../src/drawing/drawing.ts';

/** A straight line as the saw's are drawn. */
export const line = (from: Point, to: Point): Mark => ({
  kind: 'stroke',
  role: 'square',
  pen: 'saw',
  paths: [{ points: [from, to] }],
});
