import type { Box, Mark } from './drawing.ts';
import { PENS } from './pens.ts';
import { textBox } from './textBox.ts';

/** The bounding box of marks, mm, with the width of their lines. */
export const boxOfMarks = (marks: readonly Mark[]): Box => {
  const box = {
    x0: Number.POSITIVE_INFINITY,
    y0: Number.POSITIVE_INFINITY,
    x1: Number.NEGATIVE_INFINITY,
    y1: Number.NEGATIVE_INFINITY,
  };
  const reach = (x: number, y: number) => {
    box.x0 = Math.min(box.x0, x);
    box.y0 = Math.min(box.y0, y);
    box.x1 = Math.max(box.x1, x);
    box.y1 = Math.max(box.y1, y);
  };
  for (const mark of marks) {
    if (mark.kind === 'text') {
      const { x0, y0, x1, y1 } = textBox(mark);
      reach(x0, y0);
      reach(x1, y1);
      continue;
    }
    const half = mark.kind === 'stroke' ? PENS[mark.pen].width / 2 : 0;
    for (const { points } of mark.paths)
      for (const [x, y] of points) {
        reach(x - half, y - half);
        reach(x + half, y + half);
      }
  }
  return box;
};
