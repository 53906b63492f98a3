import type { Drawing, PenName, Point, Role } from '../../src/drawing/drawing.ts';

export type Segment = readonly [Point, Point];

/** Every straight line of a drawing's strokes, in one role and, where it is given, with one pen. */
export const segmentsOf = ({ marks }: Drawing, role: Role, pen?: PenName): Segment[] =>
  marks.flatMap((mark) =>
    mark.kind === 'stroke' && mark.role === role && (pen === undefined || mark.pen === pen)
      ? mark.paths.flatMap(({ points, closed }) =>
          points.flatMap((a, i): Segment[] => {
            const b = points[i + 1] ?? (closed === true ? points[0] : undefined);
            return b === undefined ? [] : [[a, b]];
          }),
        )
      : [],
  );

/** Takes a piece's mm to the page where its lower edge runs along a line. */
export const placing = ([from, to]: Segment): ((line: Segment) => Segment) => {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const place = ([x, y]: Point): Point => [from[0] + x * dx - y * dy, from[1] + x * dy + y * dx];
  return ([a, b]) => [place(a), place(b)];
};

const distance = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);

/** How far two lines are apart at their ends, whichever way each was drawn. */
const apart = ([a, b]: Segment, [c, d]: Segment): number =>
  Math.min(Math.max(distance(a, c), distance(b, d)), Math.max(distance(a, d), distance(b, c)));

/** The wanted lines that are not among those found, and the found that nobody wanted, as text. */
export const differences = (
  found: readonly Segment[],
  wanted: readonly Segment[],
  within = 1e-6,
): string[] => {
  const left = [...found];
  const missing = wanted.filter((line) => {
    const i = left.findIndex((other) => apart(line, other) <= within);
    if (i >= 0) left.splice(i, 1);
    return i < 0;
  });
  const show = (lines: readonly Segment[], what: string) =>
    lines.map((line) => `${what} ${JSON.stringify(line)}`);
  return [...show(missing, 'missing'), ...show(left, 'unwanted')];
};
