import { type Affine, apply } from './affine.ts';
import type { PenName, StrokeMark } from './drawing.ts';

/** A small picture of some lines: mapped, all with one pen. */
export const transformMarks = (lines: readonly StrokeMark[], map: Affine, pen: PenName): StrokeMark[] =>
  lines.map((mark) => ({
    ...mark,
    pen,
    paths: mark.paths.map((path) => ({ ...path, points: path.points.map((point) => apply(map, point)) })),
  }));
