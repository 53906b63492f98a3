import type { Box, Mark, Path, Point } from './drawing.ts';

/**
 * The stretch of a straight line inside a box, its border included, as shares of the way from `a` to `b`.
 * After Liang and Barsky, "A new concept and method for line clipping" (1984).
 */
const insideOf = ({ x0, y0, x1, y1 }: Box, a: Point, b: Point): readonly [number, number] | undefined => {
  // Most lines are far from the box; these tests reject them soonest.
  if (Math.max(a[0], b[0]) < x0 || Math.min(a[0], b[0]) > x1) return undefined;
  if (Math.max(a[1], b[1]) < y0 || Math.min(a[1], b[1]) > y1) return undefined;
  let from = 0;
  let to = 1;
  const run = b[0] - a[0];
  const rise = b[1] - a[1];
  for (const [step, room] of [
    [-run, a[0] - x0],
    [run, x1 - a[0]],
    [-rise, a[1] - y0],
    [rise, y1 - a[1]],
  ] as const) {
    if (step === 0) {
      if (room < 0) return undefined;
      continue;
    }
    const share = room / step;
    if (step < 0) from = Math.max(from, share);
    else to = Math.min(to, share);
  }
  return from <= to ? [from, to] : undefined;
};

/** Whether any part of a straight line is inside a box or on its border. */
export const touches = (box: Box, a: Point, b: Point): boolean => insideOf(box, a, b) !== undefined;

/** The point at a share of the way from `a` to `b`, exactly on the border where it is cut. */
const cutAt = ({ x0, y0, x1, y1 }: Box, a: Point, b: Point, share: number): Point => {
  if (share === 0) return a;
  if (share === 1) return b;
  const x = a[0] + (b[0] - a[0]) * share;
  const y = a[1] + (b[1] - a[1]) * share;
  return [Math.min(Math.max(x, x0), x1), Math.min(Math.max(y, y0), y1)];
};

const samePoint = (a: Point | undefined, b: Point): boolean => a?.[0] === b[0] && a[1] === b[1];

/** The parts of a line inside a box: open lines, or the whole line itself where all of it is inside. */
export const clipLine = (box: Box, { points, closed = false }: Path): Path[] => {
  const inside = ([x, y]: Point) => x >= box.x0 && x <= box.x1 && y >= box.y0 && y <= box.y1;
  if (points.every(inside)) return [{ points, closed }];
  const pieces: Point[][] = [];
  points.forEach((a, i) => {
    const b = points[i + 1] ?? (closed ? points[0] : undefined);
    if (b === undefined) return;
    const stretch = insideOf(box, a, b);
    if (stretch === undefined || (stretch[0] === stretch[1] && !samePoint(a, b))) return;
    const start = cutAt(box, a, b, stretch[0]);
    const end = cutAt(box, a, b, stretch[1]);
    const last = pieces.at(-1);
    if (last !== undefined && samePoint(last.at(-1), start)) last.push(end);
    else pieces.push([start, end]);
  });
  // The last part of a closed line continues through its first point.
  const [first] = pieces;
  const last = pieces.at(-1);
  if (closed && first !== undefined && last !== undefined && first !== last) {
    const [start, ...rest] = first;
    if (start !== undefined && samePoint(last.at(-1), start)) {
      last.push(...rest);
      pieces.shift();
    }
  }
  return pieces.map((piece) => ({ points: piece }));
};

/**
 * The part of an area inside a box, as one area. Where the area leaves the box and returns, its parts stay joined along
 * the border, which makes no difference to a fill. After Sutherland and Hodgman, "Reentrant polygon clipping" (1974).
 */
export const clipArea = (box: Box, { points }: Path): Path | undefined => {
  const sides = [
    { axis: 0, bound: box.x0, sign: 1 },
    { axis: 0, bound: box.x1, sign: -1 },
    { axis: 1, bound: box.y0, sign: 1 },
    { axis: 1, bound: box.y1, sign: -1 },
  ] as const;
  let rest: readonly Point[] = points;
  for (const { axis, bound, sign } of sides) {
    const depth = (point: Point) => sign * (point[axis] - bound);
    rest = rest.flatMap((b, i): Point[] => {
      const a = rest.at(i - 1) ?? b;
      const [before, after] = [depth(a), depth(b)];
      const kept = after >= 0 ? [b] : [];
      if (before >= 0 === after >= 0) return kept;
      const share = before / (before - after);
      const crossing: Point =
        axis === 0 ? [bound, a[1] + (b[1] - a[1]) * share] : [a[0] + (b[0] - a[0]) * share, bound];
      return [crossing, ...kept];
    });
  }
  return rest.length < 3 ? undefined : { points: rest, closed: true };
};

/** The parts of some marks inside a box. Text is left out, not cut: the caller places it. */
export const clipMarks = (box: Box, marks: readonly Mark[]): Mark[] =>
  marks.flatMap((mark): Mark[] => {
    if (mark.kind === 'text') return [];
    const paths =
      mark.kind === 'stroke'
        ? mark.paths.flatMap((path) => clipLine(box, path))
        : mark.paths.flatMap((path) => clipArea(box, path) ?? []);
    return paths.length === 0 ? [] : [{ ...mark, paths }];
  });
