import type { Point } from '../../src/drawing/drawing.ts';
import type { Plank } from '../../src/stock/plank.ts';
import type { Saw, Wanted } from '../../src/stock/wanted.ts';
import type { Sizes } from './exactBoards.ts';
import { numbers, plank, want } from './randomBoards.ts';

/** All lengths are whole numbers of these, in mm. */
const GRID = 10;

/** Whether two convex outlines have area in common: no side of either has all of the other beyond it. */
export const meet = (a: readonly Point[], b: readonly Point[]): boolean =>
  [a, b].every((own, i) => {
    const other = i === 0 ? b : a;
    return own.every(([x0, y0], k) => {
      const [x1, y1] = own[(k + 1) % own.length] ?? [x0, y0];
      return other.some(([x, y]) => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) > 1e-9);
    });
  });

/** Whether all corners of a box lie in a convex outline. */
export const holds = (outline: readonly Point[], box: readonly Point[]): boolean =>
  outline.every(([x0, y0], k) => {
    const [x1, y1] = outline[(k + 1) % outline.length] ?? [x0, y0];
    return box.every(([x, y]) => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) >= -1e-9);
  });

/** A rectangle by its sides. */
export const box = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/**
 * All that one board with a convex outline and convex defects, at whatever slopes, can give with every blank and cut on a grid:
 * counts of each size of which no other has more. Every place of the grid is tried, so that no rule of where blanks may begin is
 * needed; crosscuts, rips, crosscuts and a trim, or rips first.
 */
export const latticeYields = (plank: Plank, sizes: readonly Sizes[], saw: Saw): number[][] => {
  const found = [false, true].flatMap((ripped) => yieldsOneWay(plank, sizes, saw, ripped));
  const isLess = (u: readonly number[], v: readonly number[]) =>
    u !== v && u.every((n, i) => n <= (v[i] ?? 0));
  return found.filter(
    (u, k) => !found.some((v, l) => isLess(u, v) && (l < k || u.some((n, i) => n < (v[i] ?? 0)))),
  );
};

const yieldsOneWay = (plank: Plank, sizes: readonly Sizes[], saw: Saw, ripped: boolean): number[][] => {
  const [right, top] = [0, 1].map((axis) => Math.max(...plank.outline.map((point) => point[axis] ?? 0)));
  const [long = 0, high = 0] = (ripped ? [top, right] : [right, top]).map((most = 0) =>
    Math.ceil(most / GRID),
  );
  const kerf = saw.kerf / GRID;
  const own = sizes.map(({ length, width }) =>
    (ripped ? [width, length] : [length, width]).map((size) => size / GRID),
  );
  const [left, end] = [plank.clean.left ? 0 : saw.ends, plank.clean.right ? 0 : saw.ends];
  const isFree = (x: number, y: number, l: number, w: number): boolean => {
    const [x0, y0, x1, y1] = [x, y, x + l, y + w].map((at) => at * GRID) as [number, number, number, number];
    const [bx0, by0, bx1, by1] = ripped ? [y0, x0, y1, x1] : [x0, y0, x1, y1];
    return (
      holds(plank.outline, box(bx0 - left, by0, bx1 + end, by1)) &&
      !plank.defects.some(({ outline }) => meet(box(bx0, by0, bx1, by1), outline))
    );
  };
  const free = own.map(([l = 0, w = 0]) =>
    Array.from({ length: long + 1 }, (_, x) =>
      Array.from({ length: high + 1 }, (_, y) => x + l <= long && y + w <= high && isFree(x, y, l, w)),
    ),
  );
  /** The first x from which a size lies free between two heights. */
  const next = (size: number, from: number, low: number, top: number): number => {
    const w = own[size]?.[1] ?? 0;
    for (let x = from; x <= long; x++)
      for (let y = low; y + w <= top; y++) if (free[size]?.[x]?.[y]) return x;
    return Number.POSITIVE_INFINITY;
  };
  const key = (counts: readonly number[]) => counts.join();
  const plus = (a: readonly number[], b: readonly number[]): number[] | undefined => {
    const sum = a.map((n, i) => n + (b[i] ?? 0));
    return sum.some((n, i) => n > (sizes[i]?.count ?? 0)) ? undefined : sum;
  };
  type Reached = Map<string, { readonly counts: readonly number[]; readonly end: number }>;
  const put = (into: Reached, counts: readonly number[], end: number): boolean => {
    const before = into.get(key(counts));
    if (before !== undefined && before.end <= end) return false;
    into.set(key(counts), { counts, end });
    return true;
  };
  const none = sizes.map(() => 0);
  const one = (size: number) => none.map((_, i) => (i === size ? 1 : 0));
  const strip = (from: number, low: number, top: number): Reached => {
    const reached: Reached = new Map();
    const grow = (counts: readonly number[], begin: number): void => {
      own.forEach(([l = 0], size) => {
        const more = plus(counts, one(size));
        if (more === undefined) return;
        const end = next(size, begin, low, top) + l;
        if (end <= long && put(reached, more, end)) grow(more, end + kerf);
      });
    };
    grow(none, from);
    return reached;
  };
  const stack = (from: number, low: number, known: Map<number, Reached>): Reached => {
    const before = known.get(low);
    if (before !== undefined) return before;
    const reached: Reached = new Map();
    for (let top = low + 1; top <= high; top++) {
      const above = stack(from, top + kerf, known);
      for (const { counts, end } of strip(from, low, top).values()) {
        put(reached, counts, end);
        for (const other of above.values()) {
          const sum = plus(counts, other.counts);
          if (sum !== undefined) put(reached, sum, Math.max(end, other.end));
        }
      }
    }
    known.set(low, reached);
    return reached;
  };
  // From each x on: what lies in one section from there, then in sections after it.
  const rest = new Map<number, number[][]>();
  const from = (x: number): number[][] => {
    const before = rest.get(x);
    if (before !== undefined) return before;
    const all = new Map<string, number[]>([[key(none), none]]);
    if (x <= long) {
      for (const counts of from(x + 1)) all.set(key(counts), counts);
      for (const { counts, end } of stack(x, 0, new Map()).values())
        for (const more of from(end + kerf)) {
          const sum = plus(counts, more);
          if (sum !== undefined) all.set(key(sum), sum);
        }
    }
    rest.set(x, [...all.values()]);
    return [...all.values()];
  };
  return from(0);
};

/** A saw whose cuts stay on the grid. */
export const GRID_SAW: Saw = { kerf: GRID, ends: 2 * GRID, keep: { length: 300, width: 50 } };

/** Up to 12 blanks of at most three sizes, and three boards that slope at every side, with up to two slanting defects each. */
export const slopingSet = (
  seed: number,
): { readonly planks: Plank[]; readonly sizes: Sizes[]; readonly wanted: Wanted[] } => {
  const random = numbers(seed * 104729);
  const between = (least: number, most: number) => Math.round(least + random() * (most - least));
  const onGrid = (least: number, most: number) => GRID * between(least / GRID, most / GRID);
  const planks = Array.from({ length: 3 }, () => {
    const [length, width] = [onGrid(400, 700), onGrid(100, 180)];
    const [askew, slope] = [() => between(0, 15), () => between(0, 12)];
    const slant = (): Point[] => {
      const [x, y] = [between(0, length - 70), between(0, width - 30)];
      return [
        [x, y],
        [x + between(20, 70), y + between(0, 10)],
        [x + between(0, 40), y + between(15, 30)],
      ];
    };
    return plank(
      [
        [askew(), slope()],
        [length - askew(), slope()],
        [length - askew(), width - slope()],
        [askew(), width - slope()],
      ],
      {
        defects: Array.from({ length: between(0, 2) }, () => ({ kind: 'shake', outline: slant() })),
        clean: { left: random() < 0.3, right: random() < 0.3 },
      },
    );
  });
  const sizes = Array.from({ length: between(1, 3) }, () => ({
    length: onGrid(130, 300),
    width: onGrid(30, 70),
    count: between(2, 4),
  }));
  const wanted = sizes.flatMap(({ length, width, count }) =>
    Array.from({ length: count }, () => want(length, width)),
  );
  return { planks, sizes, wanted };
};
