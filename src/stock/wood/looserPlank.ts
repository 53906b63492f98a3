import type { Point } from '../../drawing/drawing.ts';
import type { Plank } from '../plank.ts';

/** Steps in which a sloping edge is taken, over its length. */
const STEPS = 12;

/** Whether all edges of a board and of its defects are along x or y. */
export const isSquare = ({ outline, defects }: Plank): boolean =>
  isRectilinear(outline) && defects.every((defect) => isRectilinear(defect.outline));

const isRectilinear = (points: readonly Point[]): boolean =>
  points.every(([x, y], i) => {
    const [px, py] = points.at(i - 1) ?? [x, y];
    return px === x || py === y;
  });

const places = (points: readonly Point[]): number[] => {
  const xs = points.map(([x]) => x);
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const even = Array.from({ length: STEPS - 1 }, (_, i) => least + ((most - least) * (i + 1)) / STEPS);
  return [...new Set([...xs, ...even])].sort((a, b) => a - b);
};

/** The y at which the border stands over an x, of the edges that reach from one x to a greater one. */
const crossings = (points: readonly Point[], x0: number, x1: number): [atStart: number, atEnd: number][] =>
  points
    .flatMap(([bx, by], i): [number, number][] => {
      const [ax, ay] = points.at(i - 1) ?? [bx, by];
      if (Math.min(ax, bx) > x0 || Math.max(ax, bx) < x1 || ax === bx) return [];
      const at = (x: number) => ay + ((by - ay) * (x - ax)) / (bx - ax);
      return [[at(x0), at(x1)]];
    })
    .sort((a, b) => a[0] + a[1] - b[0] - b[1]);

/**
 * A board that holds at least as much, with edges along x and y only: sloping edges become steps outside the outline, and
 * inside defects. Whatever no layout of it can do, none of the board itself can.
 */
export const looserPlank = (plank: Plank): Plank => {
  if (isSquare(plank)) return plank;
  return { ...plank, outline: stepsOutside(plank.outline), defects: plank.defects.flatMap(stepsInside) };
};

const stepsOutside = (points: readonly Point[]): readonly Point[] => {
  if (isRectilinear(points)) return points;
  const xs = places(points);
  const lower: Point[] = [];
  const upper: Point[] = [];
  for (let i = 1; i < xs.length; i++) {
    const [x0 = 0, x1 = 0] = [xs[i - 1], xs[i]];
    const ys = crossings(points, x0, x1).flat();
    const [low, high] = [Math.min(...ys), Math.max(...ys)];
    lower.push([x0, low], [x1, low]);
    upper.push([x0, high], [x1, high]);
  }
  return [...lower, ...upper.reverse()];
};

const stepsInside = (defect: Plank['defects'][number]): Plank['defects'][number][] => {
  const { kind, outline } = defect;
  if (isRectilinear(outline)) return [defect];
  const xs = places(outline);
  return xs.flatMap((x1, i) => {
    const x0 = xs[i - 1];
    if (x0 === undefined) return [];
    const borders = crossings(outline, x0, x1);
    return borders.flatMap((below, k) => {
      const above = borders[k + 1];
      if (k % 2 === 1 || above === undefined) return [];
      const [low, high] = [Math.max(...below), Math.min(...above)];
      if (high <= low) return [];
      const rectangle: Point[] = [
        [x0, low],
        [x1, low],
        [x1, high],
        [x0, high],
      ];
      return [{ kind, outline: rectangle }];
    });
  });
};
