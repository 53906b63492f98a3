import type { Rect } from '../wood/clearStarts.ts';

/**
 * Which of some rectangles in one piece no cuts from edge to edge can free from each other: those of the first part that holds
 * several and cannot be cut on; none where all can be freed. On the way from the board cuts change between crosscuts and rips
 * at most three times, and after the third time they only trim.
 * @param kerf in the unit of the rectangles
 * @param runs the kinds of cuts made on the way to the piece, no two alike in turn
 */
export const stuckTogether = (
  rects: readonly Rect[],
  kerf: number,
  runs: readonly ('crosscut' | 'rip')[],
): readonly Rect[] => {
  if (rects.length < 2) return [];
  const last = runs.at(-1);
  // The last run goes on; on a whole board either may be first.
  const ways =
    last === undefined ? (['x', 'y'] as const) : [last === 'crosscut' ? ('x' as const) : ('y' as const)];
  const stuck = ways.map((axis) => stuckFrom(rects, kerf, axis, Math.max(1, runs.length)));
  return stuck.reduce((least, each) => (each.length < least.length ? each : least));
};

const stuckFrom = (rects: readonly Rect[], kerf: number, axis: 'x' | 'y', run: number): readonly Rect[] => {
  if (rects.length < 2) return [];
  if (run > 3) return rects;
  for (const part of partsAlong(rects, kerf, axis)) {
    const stuck = stuckFrom(part, kerf, axis === 'x' ? 'y' : 'x', run + 1);
    if (stuck.length > 0) return stuck;
  }
  return [];
};

/** Cut apart wherever a saw passes between. */
const partsAlong = (rects: readonly Rect[], kerf: number, axis: 'x' | 'y'): readonly (readonly Rect[])[] => {
  const [low, high] = axis === 'x' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
  const parts: Rect[][] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const rect of rects.toSorted((a, b) => a[low] - b[low])) {
    if (rect[low] >= end + kerf) parts.push([rect]);
    else parts.at(-1)?.push(rect);
    end = Math.max(end, rect[high]);
  }
  return parts;
};
