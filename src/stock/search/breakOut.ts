import type { Blank, Breakout, PlankLayout } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { type BlankType, blankTypes, serves } from './blankType.ts';
import { Frame } from './frame.ts';
import { groupsOf } from './groups.ts';
import { largestClear } from './offcuts.ts';
import { packingOf } from './packing.ts';
import { type Pattern, patternsOf, type Stages } from './patterns.ts';
import { type CutPiece, replayCuts } from './replayCuts.ts';
import { type Group, saw as sawGroups } from './sawing.ts';
import { toMm } from './ticks.ts';

export interface BreakOutOptions {
  /** Multiplies the steps that the search may take; 1 where nothing is said. */
  readonly effort?: number;
  /** Told now and then what share of the steps is done, from 0 to 1, with the best layout so far. */
  readonly onProgress?: (share: number, best: Breakout) => void;
}

/** A piece of wood to be filled, and how. */
interface Bin {
  readonly plank: number;
  readonly piece: CutPiece;
  readonly frames: readonly { readonly frame: Frame; readonly stages: Stages }[];
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
  const left = types.map(({ pieces }) => [...pieces]);
  const area = ({ at: { x0, y0, x1, y1 } }: CutPiece) => (x1 - x0) * (y1 - y0);
  const done = (bin: Bin) => (planks[bin.plank]?.done === undefined ? 1 : 0);
  bins.sort((a, b) => done(a) - done(b) || area(b.piece) - area(a.piece));
  const chosen = new Map<Bin, Pattern>();
  for (const bin of bins) {
    const packing = packingOf(left.map(({ length }) => length));
    const prices = types.map(({ length, width }) => length * width);
    const search = { prices, packing, breadth: 1, most: 20_000 * effort };
    const best = bin.frames
      .flatMap(({ frame, stages }) => patternsOf(frame, { ...search, stages }))
      .reduce<Pattern | undefined>(
        (best, each) => (best && best.value >= each.value ? best : each),
        undefined,
      );
    if (best === undefined) continue;
    chosen.set(bin, best);
    left.forEach((pieces, type) => {
      pieces.splice(0, packing.countOf(best.counts, type));
    });
  }
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
    missing: left.flat().filter((index) => !wanted[index]?.spare),
    ...(left.flat().length === 0 ? { bound: 1 } : {}),
  };
};

const ALL: Stages = { oneStrip: false, oneBlankPerStrip: false };

const binsOf = (plank: Plank, index: number, types: readonly BlankType[], saw: Saw): Bin[] => {
  const served = types.map((type) => serves(plank, type));
  const blanks = new Set(plank.done?.blanks.map(({ piece }) => piece));
  return [...replayCuts(plank, plank.done?.cuts ?? [], saw.kerf).values()]
    .filter(({ number }) => !blanks.has(number))
    .map((piece) => {
      const view = (axis: 'x' | 'y', stages: Stages) => ({
        frame: new Frame(plank, axis, piece.at, types, served, saw),
        stages,
      });
      const { runs } = piece;
      const axis = runs.at(-1) === 'crosscut' ? 'x' : 'y';
      const frames =
        runs.length === 0
          ? [view('x', ALL), view('y', ALL)]
          : runs.length === 1
            ? [view(axis, ALL)]
            : runs.length === 2
              ? [view(axis, { oneStrip: false, oneBlankPerStrip: true })]
              : runs.length === 3
                ? [view(axis, { oneStrip: true, oneBlankPerStrip: true })]
                : [];
      return { plank: index, piece, frames };
    });
};

const layoutOf = (
  plank: Plank,
  index: number,
  work: readonly { readonly piece: CutPiece; readonly group: Group | undefined }[],
  supply: readonly number[][],
  saw: Saw,
): PlankLayout => {
  const made = plank.done?.cuts ?? [];
  const pieces = replayCuts(plank, made, saw.kerf);
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
