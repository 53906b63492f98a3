/** A rectangle in px, y downward. */
export interface Target {
  readonly x0: number;
  readonly x1: number;
  readonly top: number;
  readonly bottom: number;
}

/** The size that a finger needs, in px (WCAG 2.2, 2.5.5), and the least height where neighbours are near (2.5.8). */
export const FINGER = 44;
const LEAST = 24;

/** Targets side by side, each for every second line; every fourth where lines are very close. */
const columnsFor = (lines: readonly number[]): 2 | 4 =>
  lines.every((y, i) => Math.abs((lines[i + 2] ?? Number.POSITIVE_INFINITY) - y) >= LEAST) ? 2 : 4;

/**
 * Where a finger takes hold of a line: in columns to both sides of the middle, so that the targets of neighbours do not
 * overlap; those in one column share the height between them.
 * @param lines heights of all lines in px, from the lowest on the screen up
 * @param top the height above which nothing may reach
 */
export const lineTarget = (lines: readonly number[], i: number, middle: number, top: number): Target => {
  const columns = columnsFor(lines);
  const here = lines[i] ?? 0;
  const half = (other: number | undefined): number =>
    other === undefined ? FINGER / 2 : Math.min(FINGER / 2, Math.abs(other - here) / 2);
  const x0 = middle + ((i % columns) - columns / 2) * FINGER;
  const highest = Math.max(top, here - half(lines[i + columns]));
  return {
    x0,
    x1: x0 + FINGER,
    top: highest,
    bottom: Math.max(highest, here + half(lines[i - columns])),
  };
};

/** Where a finger takes hold of an upright, above the boards: as wide as its neighbours allow. */
export const uprightTarget = (x: number, uprights: readonly number[], bottom: number): Target => {
  const half = (side: -1 | 1): number =>
    Math.min(
      FINGER / 2,
      ...uprights.map((other) => (other - x) * side).flatMap((away) => (away > 0 ? [away / 2] : [])),
    );
  return { x0: x - half(-1), x1: x + half(1), top: bottom - FINGER, bottom };
};

/** Where a finger takes hold of a spacer: over the edge of the tail board's end, beside the targets at either hand. */
export const spacerTarget = (
  edge: number,
  middle: number,
  { from, to }: { readonly from: number; readonly to: number },
): Target => {
  const x1 = Math.min(edge + FINGER / 2, to);
  return {
    x0: Math.max(from, x1 - FINGER),
    x1,
    top: middle - FINGER / 2,
    bottom: middle + FINGER / 2,
  };
};
