import type { Drawing, Mark } from '../../drawing/drawing.ts';
import type { Size } from '../../paper/printable.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type Block, stack } from './block.ts';

/** Blocks one below the other that stay on one page where a page can hold them all. */
export type Group = readonly Block[];

/** The content of some pages, in order. */
export interface Contents {
  /** Head of the first page, and of every later page. */
  readonly head: readonly [first: Block, later: Block];
  /** Groups as wide as the page. */
  readonly wide: readonly Group[];
  /** Groups in columns below. */
  readonly narrow: readonly Group[];
  readonly columns: number;
  /** Gap between groups, and between columns, mm. */
  readonly gap: number;
}

/** Typeset pages, drawn only on demand: their count alone needs no drawing. */
export interface Flow {
  readonly count: number;
  draw(): Drawing[];
}

/** Groups of blocks on as many pages as they need; no block is divided. A block higher than a page exceeds its page. */
export const flow = ({ head, wide, narrow, columns, gap }: Contents, { width, height }: Size): Flow => {
  const pages: (() => readonly Mark[])[][] = [];
  let y = 0;
  let fresh = false;
  const turn = () => {
    const top = head[pages.length === 0 ? 0 : 1];
    pages.push([() => top.marks(0, height)]);
    y = height - top.height - gap;
    fresh = true;
  };
  const most = height - head[1].height - gap;
  const together = (group: Group): Group => {
    const whole = stack(group);
    return whole.height <= most ? [whole] : group;
  };
  turn();
  const place = (marks: (top: number) => readonly Mark[], taken: number) => {
    const top = y;
    pages.at(-1)?.push(() => marks(top));
    y -= taken + gap;
    fresh = false;
  };
  for (const block of wide.flatMap(together)) {
    if (block.height > y && !(fresh && pages.length > 1)) turn();
    place((top) => block.marks(0, top), block.height);
  }
  let waiting = narrow.flatMap(together);
  while (waiting.length > 0) {
    const filled = fill(waiting, columns, y, gap);
    const held = filled.reduce((sum, column) => sum + column.length, 0);
    // A block that fits no page has a page of its own.
    const set = held === 0 && fresh && pages.length > 1 ? [[waiting[0] ?? stack([])]] : filled;
    const taken = set.map((column) => stack(column, gap));
    place(
      (top) => taken.flatMap((column, i) => column.marks((i * (width + gap)) / columns, top)),
      Math.max(0, ...taken.map((column) => column.height)),
    );
    waiting = waiting.slice(set.reduce((sum, column) => sum + column.length, 0));
    if (waiting.length > 0) turn();
  }
  const box = { x0: 0, y0: 0, x1: width, y1: height };
  return {
    count: pages.length,
    draw: () => pages.map((placed) => ({ box, marks: placed.flatMap((marks) => marks()) })),
  };
};

/** Steps of the height tried for columns, mm. */
const STEP = 2;

/**
 * Blocks in order in the shortest columns that hold them all, up to `most` mm; or else in any order, where columns of
 * `most` mm hold them all; or else as many, in order, as such columns hold.
 */
const fill = (blocks: readonly Block[], columns: number, most: number, gap: number): Block[][] => {
  for (let height = stack(blocks, gap).height / columns; height < most; height += STEP) {
    const filled = fillTo(blocks, columns, height, gap);
    if (filled.reduce((sum, column) => sum + column.length, 0) === blocks.length) return filled;
  }
  return packed(blocks, columns, most, gap) ?? fillTo(blocks, columns, most, gap);
};

/** Most blocks to try in every arrangement: the number of arrangements grows exponentially. */
const MOST_TO_PACK = 9;

/** All blocks, each in any column, but in order within a column and the first block in the first column. */
const packed = (
  blocks: readonly Block[],
  columns: number,
  most: number,
  gap: number,
): Block[][] | undefined => {
  if (blocks.length > MOST_TO_PACK) return undefined;
  const columnOf = new Map<Block, number>();
  const place = ([block, ...others]: readonly Block[], left: readonly number[]): boolean => {
    if (block === undefined) return true;
    return left.some((room, column) => {
      // Columns with equal room left are equivalent.
      if (block.height > room + EPSILON || left.indexOf(room) < column) return false;
      columnOf.set(block, column);
      return place(others, left.with(column, room - block.height - gap));
    });
  };
  const tallestFirst = blocks.toSorted((a, b) => b.height - a.height);
  if (!place(tallestFirst, new Array<number>(columns).fill(most))) return undefined;
  const order = [...new Set(blocks.map((block) => columnOf.get(block)))];
  return order.map((column) => blocks.filter((block) => columnOf.get(block) === column));
};

const fillTo = (blocks: readonly Block[], columns: number, height: number, gap: number): Block[][] => {
  let next = 0;
  return Array.from({ length: columns }, () => {
    const column: Block[] = [];
    for (let left = height; next < blocks.length; next++) {
      const block = blocks[next];
      if (block === undefined || block.height > left + EPSILON) break;
      column.push(block);
      left -= block.height + gap;
    }
    return column;
  });
};
