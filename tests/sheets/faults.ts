import { touches } from '../../src/drawing/clip.ts';
import type { Box, Point } from '../../src/drawing/drawing.ts';
import { PENS } from '../../src/drawing/pens.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { CAP_HEIGHT } from '../../src/drawing/textWidth.ts';
import { NO_SPLITS, type Piece, type Splits } from '../../src/paper/piece.ts';

const grown = ({ x0, y0, x1, y1 }: Box, by: number): Box => ({
  x0: x0 - by,
  y0: y0 - by,
  x1: x1 + by,
  y1: y1 + by,
});

const overlap = (a: Box, b: Box): boolean =>
  a.x0 < b.x1 - 1e-9 && b.x0 < a.x1 - 1e-9 && a.y0 < b.y1 - 1e-9 && b.y0 < a.y1 - 1e-9;

/** Whether a point lies inside a closed line: an upward ray crosses it an odd number of times. */
const inside = (points: readonly Point[], [x, y]: Point): boolean =>
  points.filter(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
    return ax > x !== bx > x && ay + ((by - ay) * (x - ax)) / (bx - ax) > y;
  }).length %
    2 ===
  1;

/** Everything that is wrong with a piece's labels: too small, over one another, over a line, outside, over a split. */
export const faults = (piece: Piece, splits: Splits = NO_SPLITS): string[] => {
  const { marks } = piece.draw(splits);
  const labels = marks.flatMap((mark) => (mark.kind === 'text' ? [{ ...mark, box: textBox(mark) }] : []));
  const strokes = marks.flatMap((mark) => (mark.kind === 'stroke' ? [mark] : []));
  const outline =
    strokes.find(({ role, pen }) => role === 'outline' && pen === 'cut')?.paths[0]?.points ?? [];
  return labels.flatMap(({ text, size, box }, i) => {
    const wrong: string[] = [];
    if (size * CAP_HEIGHT < 2.4 - 1e-9) wrong.push(`${text} is ${size * CAP_HEIGHT} mm high`);
    for (const other of labels.slice(i + 1))
      if (overlap(box, other.box)) wrong.push(`${text} lies over ${other.text}`);
    for (const { role, pen, paths } of strokes) {
      const room = grown(box, PENS[pen].width / 2 - 1e-9);
      for (const { points, closed } of paths)
        points.forEach((a, k) => {
          const b = points[k + 1] ?? (closed === true ? points[0] : undefined);
          if (b !== undefined && touches(room, a, b)) wrong.push(`${text} lies over a line of ${role}`);
        });
    }
    const corners: Point[] = [
      [box.x0, box.y0],
      [box.x1, box.y0],
      [box.x1, box.y1],
      [box.x0, box.y1],
    ];
    if (!corners.every((corner) => inside(outline, corner))) wrong.push(`${text} lies outside`);
    if (splits.x.some((x) => x > box.x0 && x < box.x1) || splits.y.some((y) => y > box.y0 && y < box.y1))
      wrong.push(`${text} lies over a split`);
    return wrong;
  });
};
