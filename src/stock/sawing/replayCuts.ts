import type { Cut, Plank } from '../plank.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { extentOf } from '../wood/pieceView.ts';
import { nearestTick, ticks } from '../wood/ticks.ts';
import type { Piece } from './sawing.ts';

/** A piece in hand, and the runs of cuts on its way from the board: the kind of each, no two alike in turn. */
export interface CutPiece extends Piece {
  readonly runs: readonly Cut['kind'][];
  /** Pieces that the fourth run on its way has cut off beside it: of all these only one may be a blank. */
  readonly trimmed: readonly number[];
}

/** The pieces that cuts leave of a board; a cut of a piece that is not there leaves nothing new. */
export const replayCuts = (plank: Plank, cuts: readonly Cut[], kerfMm: number): CutPiece[] => {
  const kerf = ticks(kerfMm);
  const whole: CutPiece = { number: 0, at: extentOf(plank), runs: [], trimmed: [] };
  const pieces = new Map<number, CutPiece>([[0, whole]]);
  cuts.forEach(({ kind, piece, at: atMm }, k) => {
    const cut = pieces.get(piece);
    if (cut === undefined) return;
    pieces.delete(piece);
    const at = nearestTick(atMm);
    const [low, high] = kind === 'crosscut' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
    const runs = cut.runs.at(-1) === kind ? cut.runs : [...cut.runs, kind];
    const before: Rect = { ...cut.at, [high]: Math.min(at, cut.at[high]) };
    const after: Rect = { ...cut.at, [low]: Math.max(at + kerf, cut.at[low]) };
    const beside = (number: number) => (runs.length < 4 ? [] : [...cut.trimmed, number]);
    const add = (number: number, rect: Rect, other: number) => {
      if (rect.x1 > rect.x0 && rect.y1 > rect.y0)
        pieces.set(number, { number, at: rect, runs, trimmed: beside(other) });
    };
    add(2 * k + 1, before, 2 * k + 2);
    add(2 * k + 2, after, 2 * k + 1);
  });
  return [...pieces.values()];
};
