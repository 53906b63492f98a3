import { clipArea } from '../drawing/clip.ts';
import type { Box } from '../drawing/drawing.ts';
import type { Cut } from './plank.ts';
import { extentsOf, type Polygon, signedArea } from './polygon.ts';

/** What cuts leave of a board, by its number; or the first cut that cannot be made, and why. */
export type Replay =
  | { readonly ok: true; readonly left: ReadonlyMap<number, Box> }
  | { readonly ok: false; readonly cut: number; readonly why: 'gone' | 'past' };

/** Less than this is nothing, in mm. */
const DUST = 1e-3;

/** Makes cuts one after the other. A cut is refused in what is not there (`gone`), and beside what it should cut (`past`). */
export const replay = (outline: Polygon, cuts: readonly Cut[], kerf: number): Replay => {
  const left = new Map([[0, extentsOf(outline)]]);
  for (const [k, { kind, piece, at }] of cuts.entries()) {
    const box = left.get(piece);
    if (box === undefined) return { ok: false, cut: k, why: 'gone' };
    const [low, high] = kind === 'crosscut' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
    if (at + kerf < box[low] - DUST || at > box[high] + DUST) return { ok: false, cut: k, why: 'past' };
    left.delete(piece);
    const parts = [
      { ...box, [high]: Math.min(box[high], at) },
      { ...box, [low]: Math.max(box[low], at + kerf) },
    ];
    for (const [i, part] of parts.entries()) if (isThere(outline, part)) left.set(2 * k + 1 + i, part);
  }
  return { ok: true, left };
};

const isThere = (outline: Polygon, box: Box): boolean =>
  box.x1 - box.x0 > DUST && box.y1 - box.y0 > DUST && woodIn(outline, box).area > 0;

/** The wood of a board inside a box: its area in mm², and how far it reaches. */
export const woodIn = (outline: Polygon, box: Box): { readonly area: number; readonly reach: Box } => {
  const wood = clipArea(box, { points: outline, closed: true })?.points ?? [];
  return wood.length === 0
    ? { area: 0, reach: { ...box, x1: box.x0, y1: box.y0 } }
    : { area: Math.abs(signedArea(wood)), reach: extentsOf(wood) };
};
