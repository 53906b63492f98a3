import type { Drawer } from '../../drawer/drawer.ts';

/** A drawer's front in its cabinet, seen from the front: mm from the lower left of the space that all openings fill. */
export interface CabinetFront {
  /** Which of the set's drawers it is one of. */
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Cabinet {
  readonly width: number;
  readonly height: number;
  readonly fronts: readonly CabinetFront[];
}

/** Assumed in mm, as a plan does not give them: the rail between two openings, and the least width of an upright. */
const RAIL = 14;
const LEAST_UPRIGHT = 6;

/** The most equal drawers that are drawn. */
const MOST_EQUAL = 40;

interface Row {
  readonly height: number;
  readonly indices: readonly number[];
  readonly width: number;
}

/**
 * An assumed arrangement of the drawers, as a plan has none: in its order from the top down, equal heights beside each
 * other as long as they are together no wider than the widest drawer.
 */
export const cabinetOf = (drawers: readonly Drawer[]): Cabinet => {
  const width = Math.max(0, ...drawers.map(({ sizes }) => sizes.width));
  const rows = rowsOf(drawers, width);
  const height = rows.reduce((sum, row) => sum + row.height, 0) + Math.max(0, rows.length - 1) * RAIL;
  let top = height;
  const fronts = rows.flatMap((row) => {
    const y = top - row.height;
    top = y - RAIL;
    const gap = row.indices.length > 1 ? (width - row.width) / (row.indices.length - 1) : 0;
    // One drawer narrower than the cabinet is drawn in its middle.
    let x = row.indices.length > 1 ? 0 : (width - row.width) / 2;
    return row.indices.map((index): CabinetFront => {
      const drawer = drawers[index];
      const own = drawer?.sizes.width ?? 0;
      const front = { index, x, y, width: own, height: row.height };
      x += own + gap;
      return front;
    });
  });
  return { width, height, fronts };
};

const rowsOf = (drawers: readonly Drawer[], width: number): Row[] => {
  const rows: Row[] = [];
  drawers.forEach(({ sizes, spec }, index) => {
    for (let i = 0; i < Math.min(spec.count, MOST_EQUAL); i++) {
      const last = rows.at(-1);
      const joined = last && last.width + sizes.width + last.indices.length * LEAST_UPRIGHT <= width;
      if (last !== undefined && joined && Math.abs(last.height - sizes.height) < 1e-6)
        rows[rows.length - 1] = {
          height: last.height,
          indices: [...last.indices, index],
          width: last.width + sizes.width,
        };
      else rows.push({ height: sizes.height, indices: [index], width: sizes.width });
    }
  });
  return rows;
};
