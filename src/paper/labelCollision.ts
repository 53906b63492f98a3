import { touches } from '../drawing/clip.ts';
import type { Box, Mark, Point } from '../drawing/drawing.ts';
import { textBox } from '../drawing/textBox.ts';

/** Lines and boxes that text must be clear of. */
export interface Obstacles {
  readonly lines: readonly (readonly [Point, Point])[];
  readonly boxes: readonly Box[];
}

const overlap = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

/** The lines, edges of areas and texts of some marks that enter a region. */
export const obstaclesIn = (region: Box, marks: readonly Mark[]): Obstacles => {
  const lines: [Point, Point][] = [];
  const boxes: Box[] = [];
  for (const mark of marks) {
    if (mark.kind === 'text') {
      const box = textBox(mark);
      if (overlap(region, box)) boxes.push(box);
      continue;
    }
    for (const { points, closed = mark.kind === 'fill' } of mark.paths)
      points.forEach((a, i) => {
        const b = points[i + 1] ?? (closed ? points[0] : undefined);
        if (b !== undefined && touches(region, a, b)) lines.push([a, b]);
      });
  }
  // Long lines are the likeliest obstacles, so they are tested first.
  const reach = ([a, b]: [Point, Point]) => Math.abs(a[0] - b[0]) + Math.abs(a[1] - b[1]);
  lines.sort((a, b) => reach(b) - reach(a));
  return { lines, boxes };
};

export const isClear = (box: Box, { lines, boxes }: Obstacles): boolean =>
  !boxes.some((other) => overlap(box, other)) && !lines.some(([a, b]) => touches(box, a, b));
