import type { Box, Path, Point } from './drawing.ts';

/** Distance between hatch lines, in mm. */
const SPACING = 2.2;
const STEP = SPACING * Math.SQRT2;

/**
 * Hatch lines at 45 degrees inside a closed polygon of any simple shape, left out inside the `clear` boxes.
 * All hatches of a drawing fall on the same lines, so neighbouring areas run on into each other.
 */
export const hatch = (polygon: readonly Point[], clear: readonly Box[] = []): Path[] => {
  // Along one hatch line x - y is constant, so x alone says where on the line a point lies.
  const levels = polygon.map(([x, y]) => x - y);
  const first = Math.ceil(Math.min(...levels) / STEP);
  const last = Math.floor(Math.max(...levels) / STEP);
  const paths: Path[] = [];
  for (let k = first; k <= last; k++) {
    const level = k * STEP;
    for (const [from, to] of without(inside(polygon, level), level, clear))
      if (to - from > 0.05)
        paths.push({
          points: [
            [from, from - level],
            [to, to - level],
          ],
        });
  }
  return paths;
};

type Span = readonly [from: number, to: number];

/** Where the line x - y = level lies inside the polygon, as spans of x. */
const inside = (polygon: readonly Point[], level: number): Span[] => {
  const crossings: number[] = [];
  let from = polygon.at(-1) ?? [0, 0];
  let before = from[0] - from[1] - level;
  for (const to of polygon) {
    const after = to[0] - to[1] - level;
    if (before < 0 !== after < 0) crossings.push(from[0] + ((to[0] - from[0]) * before) / (before - after));
    from = to;
    before = after;
  }
  // Most areas are crossed twice, which takes no sorting.
  if (crossings.length > 2) crossings.sort((p, q) => p - q);
  const spans: Span[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [a = 0, b = 0] = crossings.slice(i, i + 2);
    spans.push(a < b ? [a, b] : [b, a]);
  }
  return spans;
};

const without = (spans: readonly Span[], level: number, boxes: readonly Box[]): readonly Span[] =>
  boxes.reduce<readonly Span[]>((left, { x0, x1, y0, y1 }) => {
    const from = Math.max(x0, y0 + level);
    const to = Math.min(x1, y1 + level);
    if (from >= to) return left;
    return left.flatMap(([a, b]): Span[] =>
      to <= a || from >= b
        ? [[a, b]]
        : [[a, Math.min(b, from)] as const, [Math.max(a, to), b] as const].filter(([p, q]) => q > p),
    );
  }, spans);
