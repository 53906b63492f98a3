import type { Chain, Pattern, Spot } from '../search/patterns.ts';
import type { Rect } from '../wood/clearStarts.ts';
import type { Axis, Shape } from '../wood/pieceView.ts';
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
  const rect = (x: number, y: number, length: number, width: number): Rect =>
    along === 'x'
      ? { x0: x, y0: y, x1: x + length, y1: y + width }
      : { x0: y, y0: x, x1: y + width, y1: x + length };
  const placed = ({ shape, x, y }: Spot): Placed[] => {
    const { type, length, width, quarter, poses, pinned, orders } = view.shapes[shape] as Shape;
    if (pinned !== undefined)
      return [{ type, turned: pinned.turned, at: rect(x, y, length, width), piece: undefined }];
    if (orders !== undefined) {
      const { turned = false, parts = [] } = view.layRun(shape, x, y) ?? {};
      return parts.map(({ type: member, x, pose }) => ({
        type,
        turned,
        at: rect(x, y, pose.length, pose.width),
        piece: member.pieces[0],
      }));
    }
    const stands = view
      .poseStarts(shape, y)
      .map((starts) => starts.some((from, i) => i % 2 === 0 && from <= x && (starts[i + 1] ?? 0) >= x));
    const turned = !quarter && poses.length > 1 && stands[0] !== true;
    return [{ type, turned, at: rect(x, y, length, width), piece: undefined }];
  };
  return {
    axis: along,
    parts: forwards(sections).map(({ strips }) => ({
      axis: across,
      parts: backwards(strips).map(({ blanks }) => ({
        axis: along,
        parts: forwards(blanks).flatMap((spot) =>
          placed(spot).map((blank) => ({ axis: across, parts: [blank] })),
        ),
      })),
    })),
  };
};
