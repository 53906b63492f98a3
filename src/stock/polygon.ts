import type { Box, Point } from '../drawing/drawing.ts';

/** Corners of a closed outline in order; straight lines between them, and from the last to the first. In mm. */
export type Polygon = readonly Point[];

/** Less than this is no width, in mm. */
const NOTHING = 1e-6;

type Edge = readonly [a: Point, b: Point];

const edgesOf = (polygon: Polygon): Edge[] =>
  polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length] ?? a]);

/** The least box round a polygon. */
export const extentsOf = (polygon: Polygon): Box => ({
  x0: Math.min(...polygon.map(([x]) => x)),
  y0: Math.min(...polygon.map(([, y]) => y)),
  x1: Math.max(...polygon.map(([x]) => x)),
  y1: Math.max(...polygon.map(([, y]) => y)),
});

/** The area inside, in mm²: above 0 where the corners run counterclockwise. */
export const signedArea = (polygon: Polygon): number =>
  edgesOf(polygon).reduce((sum, [[ax, ay], [bx, by]]) => sum + (ax * by - bx * ay) / 2, 0);

/** The corners of a rectangle, counterclockwise. */
export const rectangle = ({ x0, y0, x1, y1 }: Box): Polygon => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/** The first two edges that meet where they should not, by the index of the corner that each starts at; none in a simple polygon. */
export const selfCrossing = (polygon: Polygon): readonly [number, number] | undefined => {
  const edges = edgesOf(polygon);
  const last = edges.length - 1;
  for (const [i, one] of edges.entries())
    for (let j = i + 1; j <= last; j++) {
      const other = edges[j];
      if (other === undefined) continue;
      const isNext = j === i + 1;
      const isBefore = i === 0 && j === last;
      if (isNext || isBefore ? foldsBack(isNext ? [one, other] : [other, one]) : meet(one, other))
        return [i, j];
    }
  return undefined;
};

/** Which side of a line from `a` to `b` a point lies on: above 0 on its left. */
const sideOf = ([[ax, ay], [bx, by]]: Edge, [x, y]: Point): number =>
  (bx - ax) * (y - ay) - (by - ay) * (x - ax);

const foldsBack = ([[a, b], [, c]]: readonly [Edge, Edge]): boolean =>
  sideOf([a, b], c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) <= 0;

/** Whether two straight lines cross or touch. */
const meet = (one: Edge, other: Edge): boolean => {
  const [a, b] = other.map((point) => Math.sign(sideOf(one, point)));
  const [c, d] = one.map((point) => Math.sign(sideOf(other, point)));
  if (a !== b && c !== d) return true;
  const box = extentsOf(other);
  return a === 0 && b === 0 && one.some(([x, y]) => x >= box.x0 && x <= box.x1 && y >= box.y0 && y <= box.y1);
};

/** The stretches of y inside a simple polygon at one x, from the lowest; `x` is that of no corner. */
const sectionAt = (polygon: Polygon, x: number): number[] =>
  edgesOf(polygon)
    .flatMap(([[ax, ay], [bx, by]]) => (ax < x === bx < x ? [] : [ay + ((x - ax) / (bx - ax)) * (by - ay)]))
    .sort((a, b) => a - b);

/** The x at which two lines cross; none where they do not. */
const crossings = (a: Polygon, b: Polygon): number[] =>
  edgesOf(a).flatMap((one) =>
    edgesOf(b).flatMap((other) => {
      const [from, to] = [sideOf(other, one[0]), sideOf(other, one[1])];
      return from < 0 === to < 0 ? [] : [one[0][0] + (from / (from - to)) * (one[1][0] - one[0][0])];
    }),
  );

/** Whether two simple polygons have any area in common; touching is none. */
export const shareArea = (a: Polygon, b: Polygon): boolean => {
  const [one, other] = [extentsOf(a), extentsOf(b)];
  const [from, to] = [Math.max(one.x0, other.x0), Math.min(one.x1, other.x1)];
  if (to - from < NOTHING || Math.min(one.y1, other.y1) - Math.max(one.y0, other.y0) < NOTHING) return false;
  // Between two neighbouring places both are bounded by straight lines that do not cross.
  const places = [...a.map(([x]) => x), ...b.map(([x]) => x), ...crossings(a, b)]
    .filter((x) => x >= from && x <= to)
    .sort((p, q) => p - q);
  return places.some((x, i) => {
    const next = places[i + 1] ?? x;
    if (next - x < NOTHING) return false;
    const middle = (x + next) / 2;
    return common(sectionAt(a, middle), sectionAt(b, middle));
  });
};

/** Whether two sets of stretches, each as its ends in turn, have any in common. */
const common = (a: readonly number[], b: readonly number[]): boolean =>
  stretches(a).some(([from, to]) =>
    stretches(b).some(([low, high]) => Math.min(to, high) - Math.max(from, low) > NOTHING),
  );

const stretches = (ends: readonly number[]): (readonly [number, number])[] =>
  ends.flatMap((from, i) => (i % 2 === 0 ? [[from, ends[i + 1] ?? from] as const] : []));

/** Whether a box lies inside a simple polygon, to within `dust` mm. */
export const holdsBox = (polygon: Polygon, { x0, y0, x1, y1 }: Box, dust = 1e-6): boolean =>
  freeWithin(polygon, x0 + dust, x1 - dust).some(([low, high]) => low <= y0 + dust && high >= y1 - dust);

/** The stretches of y that are inside a simple polygon all the way from one x to another. */
const freeWithin = (polygon: Polygon, from: number, to: number): (readonly [number, number])[] => {
  // What enters the way from any side is an edge, or a part of one.
  const blocked = edgesOf(polygon).flatMap(([a, b]) => {
    const [low, high] = a[0] <= b[0] ? [a, b] : [b, a];
    if (high[0] <= from || low[0] >= to) return [];
    const at = (x: number) =>
      low[1] +
      ((Math.min(Math.max(x, low[0]), high[0]) - low[0]) / (high[0] - low[0] || 1)) * (high[1] - low[1]);
    const ends = low[0] === high[0] ? [low[1], high[1]] : [at(from), at(to)];
    return [[Math.min(...ends), Math.max(...ends)] as const];
  });
  const first = sectionAt(polygon, between(polygon, from, to));
  return stretches(first).flatMap((stretch) =>
    blocked.reduce<(readonly [number, number])[]>(
      (left, [low, high]) =>
        left.flatMap(([a, b]) => [
          ...(Math.min(b, low) > a ? [[a, Math.min(b, low)] as const] : []),
          ...(b > Math.max(a, high) ? [[Math.max(a, high), b] as const] : []),
        ]),
      [stretch],
    ),
  );
};

/** An x between two others that is that of no corner. */
const between = (polygon: Polygon, from: number, to: number): number => {
  const inside = polygon.map(([x]) => x).filter((x) => x > from && x < to);
  return (from + Math.min(to, ...inside)) / 2;
};

/** The width of the widest rectangle of a length, along x, that a simple polygon has room for; 0 where there is none. */
export const widestOf = (polygon: Polygon, length: number): number => {
  const { x0, x1 } = extentsOf(polygon);
  const last = x1 - length;
  if (last < x0 - NOTHING) return 0;
  const widthAt = (x: number): number =>
    Math.max(0, ...freeWithin(polygon, x + NOTHING, x + length - NOTHING).map(([low, high]) => high - low));
  const places = [x0, last, ...polygon.flatMap(([x]) => [x, x - length])]
    .filter((x) => x >= x0 && x <= last)
    .sort((a, b) => a - b);
  // Between two such places the width grows and then shrinks, so its peak is found by thirds.
  return places.reduce((widest, place, i) => {
    let [from, to] = [place, places[i + 1] ?? place];
    while (to - from > 1e-3) {
      const [left, right] = [from + (to - from) / 3, to - (to - from) / 3];
      if (widthAt(left) < widthAt(right)) from = left;
      else to = right;
    }
    return Math.max(widest, widthAt(place), widthAt(from), widthAt(to));
  }, 0);
};
