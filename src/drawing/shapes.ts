import type { Path, PenName, Point, Role, StrokeMark, TextMark } from './drawing.ts';

/** Lines of one role, drawn with one pen. */
export const stroke = (role: Role, pen: PenName, paths: readonly Path[]): StrokeMark => ({
  kind: 'stroke',
  role,
  pen,
  paths,
});

/** A straight line between two points. */
export const line = (x0: number, y0: number, x1: number, y1: number): Path => ({
  points: [
    [x0, y0],
    [x1, y1],
  ],
});

/** A closed line through these corners. */
export const polygon = (points: readonly Point[]): Path => ({ points, closed: true });

/** An upright rectangle between two opposite corners. */
export const rectangle = (x0: number, y0: number, x1: number, y1: number): Path =>
  polygon([
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);

/** A line of level text; regular and to the right of `at` by default. */
export const textMark = (
  text: string,
  at: Point,
  size: number,
  { weight = 'regular', anchor = 'start' }: Partial<Pick<TextMark, 'weight' | 'anchor'>> = {},
): TextMark => ({ kind: 'text', role: 'label', text, at, size, turn: 0, anchor, weight });
