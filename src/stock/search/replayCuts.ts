import type { Cut, Plank } from '../plank.ts';
import type { Rect } from './clearStarts.ts';
import { extentOf } from './frame.ts';
import type { Piece } from './sawing.ts';
import { ticks } from './ticks.ts';

/** A piece in hand, and the runs of cuts on its way from the board: the kind of each, no two alike in turn. */
export interface CutPiece extends Piece {
  readonly runs: readonly Cut['kind'][];
}

/** The pieces that cuts leave of a board, by their numbers; a cut of a piece that is not there leaves nothing new. */
export const replayCuts = (plank: Plank, cuts: readonly Cut[], kerfMm: number): Map<number, CutPiece> => {
  const kerf = ticks(kerfMm);
  const pieces = new Map<number, CutPiece>([[0, { number: 0, at: extentOf(plank), runs: [] }]]);
  cuts.forEach(({ kind, piece, at: atMm }, k) => {
    const whole = pieces.get(piece);
    if (whole === undefined) return;
    pieces.delete(piece);
    const at = Math.round(ticks(atMm));
    const [low, high] = kind === 'crosscut' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
    const runs = whole.runs.at(-1) === kind ? whole.runs : [...whole.runs, kind];
    const before: Rect = { ...whole.at, [high]: Math.min(at, whole.at[high]) };
    const after: Rect = { ...whole.at, [low]: Math.max(at + kerf, whole.at[low]) };
    if (before[high] > before[low]) pieces.set(2 * k + 1, { number: 2 * k + 1, at: before, runs });
    if (after[high] > after[low]) pieces.set(2 * k + 2, { number: 2 * k + 2, at: after, runs });
  });
  return pieces;
};
