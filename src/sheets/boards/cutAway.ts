import { clipLine } from '../../drawing/clip.ts';
import type { Box, Path, Point } from '../../drawing/drawing.ts';

/** The parts of some straight lines inside a simple polygon; what lies along its border counts as either. */
export const withinPolygon = (polygon: readonly Point[], lines: readonly Path[]): Path[] =>
  lines.flatMap((path) =>
    segments(path).flatMap(([a, b]) => {
      const cuts = [0, ...crossings(polygon, a, b), 1].sort((p, q) => p - q);
      return cuts.slice(1).flatMap((to, i): Path[] => {
        const from = cuts[i] ?? 0;
        const middle = along(a, b, (from + to) / 2);
        return to - from > TINY && holdsPoint(polygon, middle)
          ? [{ points: [along(a, b, from), along(a, b, to)] }]
          : [];
      });
    }),
  );

/** The parts of some straight lines outside boxes. */
export const outsideBoxes = (boxes: readonly Box[], lines: readonly Path[]): Path[] =>
  boxes.reduce<readonly Path[]>(
    (left, box) =>
      left.flatMap((path) =>
        segments(path).flatMap(([a, b]): Path[] => {
          const [inside] = clipLine(box, { points: [a, b] });
          const [p, q] = [inside?.points[0], inside?.points.at(-1)];
          if (p === undefined || q === undefined) return [{ points: [a, b] }];
          return [
            [a, p],
            [q, b],
          ].flatMap(([from, to]) =>
            from && to && distance(from, to) > TINY ? [{ points: [from, to] }] : [],
          );
        }),
      ),
    lines,
  ) as Path[];

/** Less than this is no line, as a share or in mm. */
const TINY = 1e-6;

type Segment = readonly [Point, Point];

const segments = ({ points, closed = false }: Path): Segment[] =>
  points.flatMap((a, i): Segment[] => {
    const b = points[i + 1] ?? (closed ? points[0] : undefined);
    return b === undefined ? [] : [[a, b]];
  });

const distance = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

const along = (a: Point, b: Point, share: number): Point => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
];

/** Where a line crosses the sides of a polygon, as shares of the way from `a` to `b`. */
const crossings = (polygon: readonly Point[], a: Point, b: Point): number[] => {
  const [run, rise] = [b[0] - a[0], b[1] - a[1]];
  return segments({ points: polygon, closed: true }).flatMap(([p, q]) => {
    const [sx, sy] = [q[0] - p[0], q[1] - p[1]];
    const cross = run * sy - rise * sx;
    if (cross === 0) return [];
    const share = ((p[0] - a[0]) * sy - (p[1] - a[1]) * sx) / cross;
    const on = ((p[0] - a[0]) * rise - (p[1] - a[1]) * run) / cross;
    return share > 0 && share < 1 && on >= 0 && on <= 1 ? [share] : [];
  });
};

/** Whether a point lies inside: a line upward from it crosses the border an odd number of times. */
export const holdsPoint = (polygon: readonly Point[], [x, y]: Point): boolean =>
  segments({ points: polygon, closed: true }).filter(
    ([[ax, ay], [bx, by]]) => ax > x !== bx > x && ay + ((by - ay) * (x - ax)) / (bx - ax) > y,
  ).length %
    2 ===
  1;
