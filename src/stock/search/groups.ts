import type { Rect } from './clearStarts.ts';
import type { Chain, Pattern } from './patterns.ts';
import type { Axis } from './pieceView.ts';
import type { Group, Placed } from './sawing.ts';

const forwards = <T>(chain: Chain<T> | undefined): T[] => {
  const all: T[] = [];
  for (let at = chain; at !== undefined; at = at.before) all.push(at.last);
  return all.reverse();
};
/** Stacks are chained from the lowest strip up. */
const backwards = <T>(chain: Chain<T> | undefined): T[] => forwards(chain).reverse();

/** A pattern as groups of blanks on the board, cut after cut. */
export const groupsOf = ({ view, sections }: Pattern): Group => {
  const along: Axis = view.axis;
  const across: Axis = along === 'x' ? 'y' : 'x';
  const placed = (shape: number, x: number, y: number): Placed => {
    const { type, length, width, quarter, poses } = view.shapes[shape] as (typeof view.shapes)[number];
    const at: Rect =
      along === 'x'
        ? { x0: x, y0: y, x1: x + length, y1: y + width }
        : { x0: y, y0: x, x1: y + width, y1: x + length };
    const stands = view
      .poseStarts(shape, y)
      .map((starts) => starts.some((from, i) => i % 2 === 0 && from <= x && (starts[i + 1] ?? 0) >= x));
    return { type, turned: !quarter && poses.length > 1 && stands[0] !== true, at };
  };
  return {
    axis: along,
    parts: forwards(sections).map(({ strips }) => ({
      axis: across,
      parts: backwards(strips).map(({ blanks }) => ({
        axis: along,
        parts: forwards(blanks).map(({ shape, x, y }) => ({ axis: across, parts: [placed(shape, x, y)] })),
      })),
    })),
  };
};
