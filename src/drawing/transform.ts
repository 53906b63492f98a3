import { type Affine, apply } from './affine.ts';
import type { Mark, PenName, Point, StrokeMark } from './drawing.ts';

/** Lines mapped, all with one pen, as for a small picture of them. */
export const transformMarks = (lines: readonly StrokeMark[], map: Affine, pen: PenName): StrokeMark[] =>
  lines.map((mark) => ({
    ...mark,
    pen,
    paths: mark.paths.map((path) => ({ ...path, points: path.points.map((point) => apply(map, point)) })),
  }));

/** The same marks moved to the right and upward, mm. */
export const translateMarks = (marks: readonly Mark[], right: number, up: number): Mark[] => {
  const moved = ([x, y]: Point): Point => [x + right, y + up];
  return marks.map((mark) =>
    mark.kind === 'text'
      ? { ...mark, at: moved(mark.at) }
      : { ...mark, paths: mark.paths.map((path) => ({ ...path, points: path.points.map(moved) })) },
  );
};
