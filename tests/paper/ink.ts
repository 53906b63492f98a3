import { type Affine, apply } from '../../src/drawing/affine.ts';
import type { Box, Mark, Path, Point } from '../../src/drawing/drawing.ts';
import { PENS } from '../../src/drawing/pens.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { mapBox } from '../drawing/mapBox.ts';

/** The box round all ink, line widths included; white grounds are no ink. */
export const inkBox = (marks: readonly Mark[], map: Affine): Box => {
  const boxes = marks.flatMap((mark): Box[] => {
    if (mark.kind === 'text') return [mapBox(map, textBox(mark))];
    const half = mark.kind === 'stroke' ? PENS[mark.pen].width / 2 : 0;
    return mark.paths
      .flatMap(({ points }) => points.map((point) => apply(map, point)))
      .map(([x, y]) => ({ x0: x - half, y0: y - half, x1: x + half, y1: y + half }));
  });
  return {
    x0: Math.min(...boxes.map(({ x0 }) => x0)),
    y0: Math.min(...boxes.map(({ y0 }) => y0)),
    x1: Math.max(...boxes.map(({ x1 }) => x1)),
    y1: Math.max(...boxes.map(({ y1 }) => y1)),
  };
};

export const isInside = (inner: Box, outer: Box): boolean =>
  inner.x0 >= outer.x0 - 1e-6 &&
  inner.y0 >= outer.y0 - 1e-6 &&
  inner.x1 <= outer.x1 + 1e-6 &&
  inner.y1 <= outer.y1 + 1e-6;

export const overlaps = (a: Box, b: Box): boolean =>
  a.x0 < b.x1 - 1e-6 && b.x0 < a.x1 - 1e-6 && a.y0 < b.y1 - 1e-6 && b.y0 < a.y1 - 1e-6;

export const segmentsOf = ({ points, closed }: Path): (readonly [Point, Point])[] => {
  const [first] = points;
  const ends = closed === true && first !== undefined ? [...points, first] : points;
  return ends.slice(1).map((b, i) => [ends[i] ?? b, b]);
};

export const lengthOf = (paths: readonly Path[]): number =>
  paths.flatMap(segmentsOf).reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
