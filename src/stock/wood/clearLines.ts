import { bandProfile } from './bandProfile.ts';
import type { BlankType } from './blankType.ts';
import type { Ground, Rect } from './clearStarts.ts';

/** Lines along a piece: a clear stretch of so much length, and how much of the piece's width has one, in ticks. */
export interface ClearLines {
  readonly length: number;
  readonly width: number;
}

/**
 * The clear stretches of all lines along x that cross a piece of a board whose edges all run along x or y. A defect that some
 * type allows counts as clear.
 */
export const clearLines = (
  { outline, defects, margin }: Ground,
  piece: Rect,
  types: readonly BlankType[],
): ClearLines[] => {
  const marring = defects.filter(({ kind }) => !types.some(({ allows }) => allows.has(kind)));
  const levels = new Set([piece.y0, piece.y1]);
  const addLevel = (y: number) => {
    if (y > piece.y0 && y < piece.y1) levels.add(y);
  };
  for (let i = 1; i < outline.length; i += 2) {
    addLevel((outline[i] ?? 0) + margin.y0);
    addLevel((outline[i] ?? 0) - margin.y1);
  }
  for (const { outline: defect } of marring)
    for (let i = 1; i < defect.length; i += 2) addLevel(defect[i] ?? 0);
  const widths = new Map<number, number>();
  const heights = [...levels].sort((a, b) => a - b);
  heights.forEach((low, i) => {
    const high = heights[i + 1];
    if (high === undefined) return;
    const wood = bandProfile(outline, low - margin.y0, high + margin.y1).inside;
    const marred = marring
      .flatMap(({ outline: defect }) => {
        const { inside } = bandProfile(defect, low, high);
        return inside.flatMap((from, k) => (k % 2 === 0 ? [[from, inside[k + 1] ?? from] as const] : []));
      })
      .sort((a, b) => a[0] - b[0]);
    for (let k = 0; k < wood.length; k += 2) {
      let at = Math.max(piece.x0, (wood[k] ?? 0) + margin.x0);
      const end = Math.min(piece.x1, (wood[k + 1] ?? 0) - margin.x1);
      for (const [from, to] of [...marred, [end, end] as const]) {
        const length = Math.min(end, from) - at;
        if (length > 0) widths.set(length, (widths.get(length) ?? 0) + high - low);
        at = Math.max(at, to);
      }
    }
  });
  return [...widths].map(([length, width]) => ({ length, width }));
};
