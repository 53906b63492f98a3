import type { Offcut } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { Saw } from '../wanted.ts';
import { bandProfile } from './bandProfile.ts';
import type { Rect } from './clearStarts.ts';
import { groundOf } from './pieceView.ts';
import { ticks, toMm } from './ticks.ts';

/**
 * The largest rectangle in a piece that is clear of every defect and, made longer by what is cut off the ends, inside the
 * outline; or nothing, where none is worth keeping.
 */
export const largestClear = (plank: Plank, saw: Saw, piece: Rect): Offcut | undefined => {
  const { outline, defects, margin } = groundOf(plank, saw, 'x');
  const heights = new Set([piece.y0, piece.y1]);
  for (const polygon of [outline, ...defects.map(({ outline }) => outline)])
    for (let i = 1; i < polygon.length; i += 2) {
      const y = polygon[i] ?? 0;
      const before = polygon[(i + polygon.length - 2) % polygon.length] ?? 0;
      // A sloping edge is met at a few heights.
      for (let part = 0; part < 4; part++) heights.add(Math.round(y + ((before - y) * part) / 4));
    }
  const levels = [...heights].filter((y) => y >= piece.y0 && y <= piece.y1).sort((a, b) => a - b);
  const least = { length: ticks(saw.keep.length), width: ticks(saw.keep.width) };
  let best: Rect | undefined;
  const area = ({ x0, y0, x1, y1 }: Rect) => (x1 - x0) * (y1 - y0);
  for (const y0 of levels)
    for (const y1 of levels) {
      if (y1 - y0 < Math.max(1, least.width)) continue;
      if (best !== undefined && (piece.x1 - piece.x0) * (y1 - y0) <= area(best)) continue;
      const wood = bandProfile(outline, y0, y1).inside;
      const marred = defects.flatMap(({ outline: defect }) => {
        const { border, inside } = bandProfile(defect, y0, y1);
        return [border, inside].flatMap((spans) =>
          spans.flatMap((from, i) => (i % 2 === 0 ? [[from, spans[i + 1] ?? from] as const] : [])),
        );
      });
      marred.sort((a, b) => a[0] - b[0]);
      for (let i = 0; i < wood.length; i += 2) {
        let at = Math.max(piece.x0, Math.ceil((wood[i] ?? 0) + margin.x0));
        const end = Math.min(piece.x1, Math.floor((wood[i + 1] ?? 0) - margin.x1));
        for (const [from, to] of [...marred, [end, end] as const]) {
          const stretch = { x0: at, y0, x1: Math.min(end, Math.floor(from)), y1 };
          if (
            stretch.x1 - at >= Math.max(1, least.length) &&
            (best === undefined || area(stretch) > area(best))
          )
            best = stretch;
          at = Math.max(at, Math.ceil(to));
        }
      }
    }
  if (best === undefined) return undefined;
  const { x0, y0, x1, y1 } = best;
  return { x: toMm(x0), y: toMm(y0), length: toMm(x1 - x0), width: toMm(y1 - y0) };
};
