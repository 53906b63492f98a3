import { type Affine, apply } from '../../src/drawing/affine.ts';
import type { Box } from '../../src/drawing/drawing.ts';

/** The upright box round a mapped box. */
export const mapBox = (map: Affine, { x0, y0, x1, y1 }: Box): Box => {
  const corners = [apply(map, [x0, y0]), apply(map, [x1, y0]), apply(map, [x0, y1]), apply(map, [x1, y1])];
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
};
