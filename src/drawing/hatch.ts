import type { Box, Path, Point } from './drawing.ts';

/** Distance between hatch lines, mm. */
const SPACING = 2.2;
const STEP = SPACING * Math.SQRT2;

/**
 * Hatch lines at 45 degrees inside a closed polygon of any simple shape, left out inside the `clear` boxes.
 * All hatches of a drawing are on the same lines, so hatching continues across neighbouring areas.
 */
export const hatch = (polygon: readonly Point[], clear: readonly Box[] = []): Path[] => {
  const paths: Path[] = [];
  for (const [k, crossings] of crossingsOf(polygon)) {
    const level = k * STEP;
    // Most lines cross an area twice, which needs no sorting.
    if (crossings.length > 2) crossings.sort((p, q) => p - q);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [a = 0, b = 0] = [crossings[i], crossings[i + 1]];
      for (const [from, to] of without([Math.min(a, b), Math.max(a, b)], level, clear))
        if (to - from > 0.05)
          paths.push({
            points: [
              [from, from - level],
              [to, to - level],
            ],
          });
    }
  }
  return paths;
};

/**
 * The x of each hatch line's crossings with the sides of a polygon, by the line's number. Along one line x - y is constant,
 * so x alone gives the place on the line.
 */
const crossingsOf = (polygon: readonly Point[]): Map<number, number[]> => {
  const lines = new Map<number, number[]>();
  let from = polygon.at(-1) ?? [0, 0];
  for (const to of polygon) {
    const [before, after] = [from[0] - from[1], to[0] - to[1]];
    const last = Math.floor(Math.max(before, after) / STEP);
    for (let k = Math.floor(Math.min(before, after) / STEP) + 1; k <= last; k++) {
      const x = from[0] + ((to[0] - from[0]) * (before - k * STEP)) / (before - after);
      const crossings = lines.get(k);
      if (crossings === undefined) lines.set(k, [x]);
      else crossings.push(x);
    }
    from = to;
  }
  return lines;
};

type Span = readonly [from: number, to: number];

/** The parts outside some boxes of a stretch of the line x - y = level. */
const without = (span: Span, level: number, boxes: readonly Box[]): readonly Span[] =>
  boxes.reduce<readonly Span[]>(
    (left, { x0, x1, y0, y1 }) => {
      const from = Math.max(x0, y0 + level);
      const to = Math.min(x1, y1 + level);
      if (from >= to || left.every(([a, b]) => to <= a || from >= b)) return left;
      return left.flatMap(([a, b]) =>
        [[a, Math.min(b, from)] as const, [Math.max(a, to), b] as const].filter(([p, q]) => q > p),
      );
    },
    [span],
  );
