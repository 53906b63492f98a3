import type { Blank, Breakout, PlankLayout } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { binsOf } from './bin.ts';
import { blankTypes } from './blankType.ts';
import { fill, poolsOf } from './fill.ts';
import { groupsOf } from './groups.ts';
import { largestClear } from './offcuts.ts';
import { type CutPiece, replayCuts } from './replayCuts.ts';
import { type Group, saw as sawGroups } from './sawing.ts';
import { toMm } from './ticks.ts';

export interface BreakOutOptions {
  /** Multiplies the steps that the search may take; 1 where nothing is said. */
  readonly effort?: number;
  /** Told now and then what share of the steps is done, from 0 to 1, with the best layout so far. */
  readonly onProgress?: (share: number, best: Breakout) => void;
}

/**
 * Which wanted piece comes out of which board, and the cuts that free it. Boards and wanted pieces are told by their places in
 * the lists. The same input gives the same answer.
 */
export const breakOut = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  runs: readonly RunWish[],
  saw: Saw,
  { effort = 1 }: BreakOutOptions = {},
): Breakout => {
  const cutAlready = new Set(planks.flatMap(({ done }) => (done?.blanks ?? []).map(({ wanted }) => wanted)));
  const open = wanted.flatMap((_, i) => (cutAlready.has(i) ? [] : [i]));
  const types = blankTypes(planks, wanted, open);
  const bins = planks.flatMap((plank, index) => binsOf(plank, index, types, saw));
  const demand = types.map(({ pieces }) => pieces.length);
  const pools = poolsOf(bins, types, demand, 1_200_000 * effort);
  const { filling, bound } = fill(pools, pools, types, demand, {
    patterns: 1_200_000 * effort,
    choosing: 100_000 * effort,
    rounds: 1_000_000 * effort,
  });
  const chosen = new Map([...filling.chosen].map(([{ bin }, { pattern }]) => [bin, pattern]));
  const supply = types.map(({ pieces }) => [...pieces]);
  const boards = planks.flatMap((plank, index): PlankLayout[] => {
    const own = bins.filter(({ plank }) => plank === index);
    const work = own.map((bin) => {
      const pattern = chosen.get(bin);
      return { piece: bin.piece, group: pattern === undefined ? undefined : groupsOf(pattern) };
    });
    if (plank.done === undefined && work.every(({ group }) => group === undefined)) return [];
    return [layoutOf(plank, index, work, supply, saw)];
  });
  return {
    boards,
    runs: runs.map(() => ({})),
    missing: supply.flat().filter((index) => !wanted[index]?.spare),
    ...(bound === undefined ? {} : { bound: bound + planks.filter(({ done }) => done !== undefined).length }),
  };
};

const layoutOf = (
  plank: Plank,
  index: number,
  work: readonly { readonly piece: CutPiece; readonly group: Group | undefined }[],
  supply: readonly number[][],
  saw: Saw,
): PlankLayout => {
  const made = plank.done?.cuts ?? [];
  const pieces = new Map(replayCuts(plank, made, saw.kerf).map((piece) => [piece.number, piece]));
  const sawn = sawGroups(plank.outline, saw.kerf, made.length, work);
  const blank = ({ x0, y0, x1, y1 }: CutPiece['at']) => ({
    x: toMm(x0),
    y: toMm(y0),
    length: toMm(x1 - x0),
    width: toMm(y1 - y0),
  });
  const before = (plank.done?.blanks ?? []).flatMap(({ wanted, turned, piece }): Blank[] => {
    const at = pieces.get(piece)?.at;
    return at === undefined ? [] : [{ wanted, turned, ...blank(at), piece }];
  });
  const now = sawn.blanks.flatMap(({ type, turned, at, piece }): Blank[] => {
    const wanted = supply[type]?.shift();
    return wanted === undefined ? [] : [{ wanted, turned, ...blank(at), piece }];
  });
  return {
    plank: index,
    blanks: [...before, ...now],
    cuts: [...made, ...sawn.cuts],
    offcuts: sawn.left
      .flatMap(({ at }) => largestClear(plank, saw, at) ?? [])
      .sort((a, b) => b.length * b.width - a.length * a.width),
  };
};
