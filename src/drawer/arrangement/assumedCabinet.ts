import { EPSILON } from '../../units/epsilon.ts';
import type { Drawer } from '../drawer.ts';
import type { Cabinet, CabinetFront } from './cabinetFront.ts';

/** Assumed in mm, as a plan does not give them: the rail between two openings, the least width of an upright, and the least space between two fronts. */
const RAIL = 14;
const LEAST_UPRIGHT = 6;
const REVEAL = 3;

/** The most fronts that are arranged, of one kind of drawer and of all together: of a large set, fewer of each kind. */
const MOST = { equal: 60, all: 400 };

/** A cabinet e times as high as it is wide, or as wide as it is high, counts as one of which this share is empty. */
const SLENDER = 0.1;

/** A front that has no place yet. */
type Loose = Omit<CabinetFront, 'x' | 'y'>;

/** A row of fronts of one height, and its least width. */
interface Row {
  readonly width: number;
  readonly fronts: readonly Loose[];
}

/**
 * An assumed arrangement of the drawers, as a plan has none: in its order from the top down, equal heights beside each
 * other. Of all widths of the cabinet that some row fills, it has the one that leaves the least empty, and is not slender.
 */
export const assumedCabinet = (drawers: readonly Drawer[]): Cabinet => {
  const most = Math.max(1, Math.min(MOST.equal, Math.floor(MOST.all / drawers.length)));
  const wanted = drawers.flatMap(({ spec: { count }, sizes: { rebate }, boards: { front } }, index) =>
    Array.from(
      { length: Math.min(count, most) },
      (): Loose => ({ index, width: front.length, height: front.width, lip: rebate }),
    ),
  );
  const loose = wanted.slice(0, MOST.all);
  const all = drawers.reduce((sum, { spec: { count } }) => sum + count, 0);
  const best = arrangements(loose).reduce<Arrangement | undefined>(
    (least, each) => (least === undefined || faultOf(each) < faultOf(least) - EPSILON ? each : least),
    undefined,
  );
  if (best === undefined) return { width: 0, height: 0, rows: [], leftOut: 0, planned: false };
  const { width, height, rows } = best;
  let top = height;
  return {
    width,
    height,
    rows: rows.map((row, i) => {
      const y = top - heightOf(row);
      top = y - railBelow(row, rows[i + 1]);
      return placed(row, width, y);
    }),
    leftOut: all - loose.length,
    planned: false,
  };
};

interface Arrangement {
  readonly width: number;
  readonly height: number;
  readonly rows: readonly Row[];
}

/** One arrangement for each width that a row can have. */
const arrangements = (loose: readonly Loose[]): Arrangement[] => {
  const widest = Math.max(0, ...loose.map(({ width }) => width));
  const widths = rowsWithin(loose, Number.POSITIVE_INFINITY).flatMap(({ fronts }) =>
    fronts.map((_, i) => widthOf(fronts.slice(0, i + 1))),
  );
  return [...new Set([widest, ...widths])]
    .filter((width) => width >= widest && width > 0)
    .map((width) => {
      const rows = rowsWithin(loose, width);
      const height = rows.reduce((sum, row, i) => sum + heightOf(row) + railBelow(row, rows[i + 1]), 0);
      return { width, height, rows };
    });
};

const faultOf = ({ width, height, rows }: Arrangement): number => {
  const [full, filled] = rows.reduce(
    ([room, used], row) => [room + width * heightOf(row), used + row.width * heightOf(row)],
    [0, 0],
  );
  return 1 - filled / full + SLENDER * Math.abs(Math.log(height / width));
};

/** In the order of the plan, each front beside the one before it where both are as high and the row stays within the width. */
const rowsWithin = (loose: readonly Loose[], width: number): Row[] => {
  const rows: Row[] = [];
  for (const front of loose) {
    const last = rows.at(-1);
    const before = last?.fronts.at(-1);
    const joined =
      last !== undefined && before !== undefined && isLevel(before, front)
        ? beside(last, before, front)
        : undefined;
    if (joined !== undefined && joined.width <= width + EPSILON) rows[rows.length - 1] = joined;
    else rows.push({ width: front.width, fronts: [front] });
  }
  return rows;
};

const beside = (row: Row, before: Loose, front: Loose): Row => ({
  width: row.width + uprightBetween(before, front) + front.width,
  fronts: [...row.fronts, front],
});

const isLevel = (one: Loose, other: Loose): boolean =>
  Math.abs(one.height - other.height) < EPSILON && Math.abs(one.lip.bottom - other.lip.bottom) < EPSILON;

const heightOf = ({ fronts: [first] }: Row): number => first?.height ?? 0;

const widthOf = (fronts: readonly Loose[]): number =>
  fronts.reduce((sum, front, i) => sum + front.width + uprightBetween(front, fronts[i + 1]), 0);

/** From a front to the one at its right; 0 where there is none. */
const uprightBetween = (left: Loose, right: Loose | undefined): number =>
  right === undefined ? 0 : Math.max(LEAST_UPRIGHT - left.lip.sides - right.lip.sides, REVEAL);

/** From a row of fronts down to the next; 0 below the last. */
const railBelow = (upper: Row, lower: Row | undefined): number => {
  if (lower === undefined) return 0;
  const over = (lips: readonly number[]) => Math.max(...lips);
  const lips = over(upper.fronts.map(({ lip }) => lip.bottom)) + over(lower.fronts.map(({ lip }) => lip.top));
  return Math.max(RAIL - lips, REVEAL);
};

/** A row across the width; in its middle, where it leaves room for another front. */
const placed = (row: Row, width: number, y: number): CabinetFront[] => {
  const left = width - row.width;
  const spread = row.fronts.length > 1 && left < Math.min(...row.fronts.map((front) => front.width));
  let x = spread ? 0 : left / 2;
  return row.fronts.map((front, i) => {
    const at = x;
    x +=
      front.width + uprightBetween(front, row.fronts[i + 1]) + (spread ? left / (row.fronts.length - 1) : 0);
    return { ...front, x: at, y };
  });
};
