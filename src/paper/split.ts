import { EPSILON } from '../units/epsilon.ts';
import { NO_SPLITS, type Piece, type Splits } from './piece.ts';
import type { Size } from './printable.ts';

/** Width of a part's tab under its neighbour, for tape, mm. */
export const TAB = { least: 5, most: 10 };

/** Half the width of a register cross, mm. */
export const CROSS = 3;

/** Room for the widths of lines along the edges of a split, mm. */
export const LINE_ROOM = 0.25;

type Interval = readonly [number, number];

/** Length of the piece in a room, in one direction, mm: at the piece's start, between two splits, at its end. */
const capacities = (room: number, overhang: number) => ({
  first: room - overhang - TAB.most - LINE_ROOM,
  between: room - CROSS - TAB.most - 2 * LINE_ROOM,
  last: room - CROSS - overhang - LINE_ROOM,
});

/** The lowest place for a split at or above `from`. */
const lowestFrom = (intervals: readonly Interval[], from: number): number =>
  Math.min(...intervals.filter(([, hi]) => hi >= from - EPSILON).map(([lo]) => Math.max(lo, from)));

/** The best place for a split within a range: as far inside its interval as a tab needs, then nearest to `wish`. */
const bestWithin = (intervals: readonly Interval[], range: Interval, wish: number): number => {
  const places = intervals
    .filter(([lo, hi]) => hi >= range[0] - EPSILON && lo <= range[1] + EPSILON)
    .map(([lo, hi]) => {
      const at = Math.min(Math.max((lo + hi) / 2, lo, range[0]), hi, range[1]);
      return { at, inside: Math.min(at - lo, hi - at, TAB.most), off: Math.abs(at - wish) };
    });
  const best = places.reduce((a, b) =>
    b.inside > a.inside + EPSILON || (b.inside > a.inside - EPSILON && b.off < a.off) ? b : a,
  );
  return best.at;
};

/**
 * The fewest splits that make parts of at most `room` of a length, each inside one of the intervals (in order).
 * @returns undefined where the intervals lie too far apart
 */
const splitLength = (
  length: number,
  intervals: readonly Interval[],
  room: number,
  overhang: number,
): readonly number[] | undefined => {
  if (length + 2 * overhang <= room + EPSILON) return [];
  const { first, between, last } = capacities(room, overhang);
  // From the end: the least place of each split. Choosing the least each time needs the fewest splits.
  const least: number[] = [];
  let from = length - last;
  do {
    const at = lowestFrom(intervals, from);
    if (!(at < (least[0] ?? length) - EPSILON)) return undefined;
    least.unshift(at);
    from = at - between;
  } while ((least[0] ?? 0) > first + EPSILON);
  // From the start: the best place of each, from its least to the reach of the part before it.
  const splits: number[] = [];
  for (const lowest of least) {
    const before = splits.at(-1);
    const reach = before === undefined ? first : before + between;
    const done = before ?? 0;
    const wish = done + (length - done) / (least.length - splits.length + 1);
    splits.push(bestWithin(intervals, [lowest, reach], wish));
  }
  return splits;
};

/**
 * The splits of a piece with which each part fits on a page, as it is or turned by a quarter: the fewest parts, the splits
 * as far inside tails as possible.
 * @returns undefined where no splits that the piece allows make parts small enough
 */
export const splitToFit = (piece: Piece, { width, height }: Size): Splits | undefined => {
  const { overhang, splittable } = piece;
  const points = splittable.x.map((x): Interval => [x, x]);
  const wholeWidth = piece.width + 2 * overhang;
  const wholeHeight = piece.height + 2 * overhang;
  const fits = (across: number, up: number) => wholeWidth <= across + EPSILON && wholeHeight <= up + EPSILON;
  if (fits(width, height) || fits(height, width)) return NO_SPLITS;
  const ways = [
    [width, height],
    [height, width],
  ] as const;
  return ways
    .flatMap(([across, up]): Splits[] => {
      const x = splitLength(piece.width, points, across, overhang);
      const y = splitLength(piece.height, splittable.y, up, overhang);
      return x === undefined || y === undefined ? [] : [{ x, y }];
    })
    .sort((a, b) => parts(a) - parts(b))[0];
};

const parts = ({ x, y }: Splits): number => (x.length + 1) * (y.length + 1);
