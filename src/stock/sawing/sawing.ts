import { clipArea } from '../../drawing/clip.ts';
import type { Point } from '../../drawing/drawing.ts';
import type { Cut } from '../plank.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { exactTicks, ticks, toMm } from '../wood/ticks.ts';

/** A blank in its place on the board, in ticks. */
export interface Placed {
  readonly type: number;
  readonly turned: boolean;
  readonly at: Rect;
  /** Of a run: which wanted piece it is. */
  readonly piece: number | undefined;
}

/** What one run of parallel cuts frees, in their order: further groups, cut the other way, and blanks. */
export interface Group {
  readonly axis: 'x' | 'y';
  readonly parts: readonly (Group | Placed)[];
}

/** A piece that cuts have left: its number, and a rectangle that it fills, or to which it is cut. */
export interface Piece {
  readonly number: number;
  readonly at: Rect;
}

/** The smallest rectangle round all blanks of a group. */
const around = (part: Group | Placed): Rect => {
  if ('at' in part) return part.at;
  const each = part.parts.map(around);
  return {
    x0: Math.min(...each.map(({ x0 }) => x0)),
    y0: Math.min(...each.map(({ y0 }) => y0)),
    x1: Math.max(...each.map(({ x1 }) => x1)),
    y1: Math.max(...each.map(({ y1 }) => y1)),
  };
};

/** Less wood than this, in square ticks, is none: a thousandth of a square mm. */
const NO_WOOD = exactTicks(1) ** 2 / 1000;

/** The wood of a board, as far as a rectangle cuts it out. */
const woodIn = (outline: readonly Point[], { x0, y0, x1, y1 }: Rect): number => {
  if (x1 <= x0 || y1 <= y0) return 0;
  const points = clipArea({ x0, y0, x1, y1 }, { points: outline })?.points ?? [];
  const twice = points.reduce((area, [x, y], i) => {
    const [px, py] = points.at(i - 1) ?? [x, y];
    return area + (px - x0) * (y - y0) - (x - x0) * (py - y0);
  }, 0);
  return Math.abs(twice) / 2;
};

/** A blank and the number of its piece. */
export interface Freed {
  readonly placed: Placed;
  readonly piece: number;
}

export interface Sawn {
  readonly cuts: readonly Cut[];
  readonly blanks: readonly Freed[];
  /** Pieces that are no blanks. */
  readonly left: readonly Piece[];
}

/**
 * The cuts that free the blanks of some groups, each from its piece.
 * @param made how many cuts have been made before
 */
export const saw = (
  outlineMm: readonly Point[],
  kerfMm: number,
  made: number,
  work: readonly { readonly piece: Piece; readonly group: Group | undefined }[],
): Sawn => {
  const outline = outlineMm.map(([x, y]): Point => [exactTicks(x), exactTicks(y)]);
  const kerf = ticks(kerfMm);
  const cuts: Cut[] = [];
  const blanks: Freed[] = [];
  const left: Piece[] = [];
  const keep = (number: number, at: Rect) => {
    if (woodIn(outline, at) > NO_WOOD) left.push({ number, at });
  };
  const cut = (axis: 'x' | 'y', piece: number, at: number): [before: number, after: number] => {
    const k = made + cuts.length;
    cuts.push({ kind: axis === 'x' ? 'crosscut' : 'rip', piece, at: toMm(at) });
    return [2 * k + 1, 2 * k + 2];
  };
  const cutOut = (part: Group | Placed, piece: number, at: Rect): void => {
    if ('at' in part) {
      blanks.push({ placed: part, piece });
      return;
    }
    const [low, high] = part.axis === 'x' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
    const freed: (() => void)[] = [];
    let rest: Rect | undefined = at;
    let number = piece;
    for (const each of part.parts) {
      if (rest === undefined) break;
      const box = around(each);
      const below: Rect = { ...rest, [high]: box[low] };
      if (woodIn(outline, below) > NO_WOOD) {
        const [waste, remains] = cut(part.axis, number, box[low] - kerf);
        keep(waste, { ...rest, [high]: box[low] - kerf });
        number = remains;
        rest = { ...rest, [low]: box[low] };
      }
      const above: Rect = { ...rest, [low]: box[high] };
      if (woodIn(outline, above) > NO_WOOD) {
        const [free, remains] = cut(part.axis, number, box[high]);
        const own = { ...rest, [high]: box[high] };
        freed.push(() => cutOut(each, free, own));
        number = remains;
        rest = { ...rest, [low]: box[high] + kerf };
      } else {
        const [own, last] = [rest, number];
        freed.push(() => cutOut(each, last, own));
        rest = undefined;
      }
    }
    if (rest !== undefined) keep(number, rest);
    for (const each of freed) each();
  };
  for (const { piece, group } of work) {
    if (group === undefined) keep(piece.number, piece.at);
    else cutOut(group, piece.number, piece.at);
  }
  return { cuts, blanks, left };
};
