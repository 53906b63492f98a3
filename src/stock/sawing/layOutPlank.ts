import type { Blank, Offcut, PlankLayout } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { Solution, Task } from '../search/solve.ts';
import type { RunWish, Wanted } from '../wanted.ts';
import { largestClear } from '../wood/offcuts.ts';
import { toMm } from '../wood/ticks.ts';
import { fromFigure } from './fromFigure.ts';
import { nameBlanks } from './nameBlanks.ts';
import { reasonOf } from './reasons.ts';
import { type CutPiece, replayCuts } from './replayCuts.ts';
import { type Group, type Sawn, saw } from './sawing.ts';
import { settle } from './settle.ts';

interface Work {
  readonly piece: CutPiece;
  readonly group: Group | undefined;
}

const offcutsOf = (plank: Plank, task: Task, { left }: Sawn): Offcut[] =>
  left
    .flatMap(({ at }) => largestClear(plank, task.saw, at) ?? [])
    .sort((a, b) => b.length * b.width - a.length * a.width);

/** The way to cut a piece that leaves the largest clear offcut, of those the one with the fewest cuts. */
const bestGroup = (
  plank: Plank,
  task: Task,
  piece: CutPiece,
  groups: readonly Group[],
): Group | undefined => {
  const rated = groups.map((group) => {
    const sawn = saw(plank.outline, task.saw.kerf, 0, [{ piece, group }]);
    const [largest] = offcutsOf(plank, task, sawn);
    return {
      group,
      left: largest === undefined ? 0 : largest.length * largest.width,
      cuts: sawn.cuts.length,
    };
  });
  return rated.sort((a, b) => b.left - a.left || a.cuts - b.cuts)[0]?.group;
};

/** What is cut from one board: what was cut before, then what was chosen. */
export const layOutPlank = (
  index: number,
  task: Task,
  { types, bins, taken }: Solution,
  supply: readonly number[][],
): PlankLayout => {
  const { wanted, planks } = task;
  const plank = planks[index] as Plank;
  const { cuts: made = [], blanks: doneBlanks = [] } = plank.done ?? {};
  const pieces = replayCuts(plank, made, task.saw.kerf);
  const isBlank = new Set(doneBlanks.map(({ piece }) => piece));
  const work = pieces
    .filter(({ number }) => !isBlank.has(number))
    .map((piece): Work => {
      const own = taken.find(({ pool: { bin } }) => bin.plank === index && bin.piece.number === piece.number);
      if (own === undefined) return { piece, group: undefined };
      const [begun] = fromFigure(plank, own.pool, types, own.counts, task.saw);
      const groups = begun === undefined ? settle(own.pool, own.choice, types, own.counts) : [begun];
      return { piece, group: bestGroup(plank, task, piece, groups) };
    });
  const sawn = saw(plank.outline, task.saw.kerf, made.length, work);
  const boxOf = ({ x0, y0, x1, y1 }: CutPiece['at']) => ({
    x: toMm(x0),
    y: toMm(y0),
    length: toMm(x1 - x0),
    width: toMm(y1 - y0),
  });
  const before = doneBlanks.flatMap(({ wanted, turned, piece }): Blank[] => {
    const at = pieces.find(({ number }) => number === piece)?.at;
    return at === undefined ? [] : [{ wanted, turned, ...boxOf(at), piece, why: { kind: 'cut already' } }];
  });
  const names = nameBlanks(sawn.blanks, types, supply, wanted);
  const together = [
    ...doneBlanks.flatMap(({ wanted, piece }) => {
      const at = pieces.find(({ number }) => number === piece)?.at;
      return at === undefined ? [] : [{ piece: wanted, at }];
    }),
    ...sawn.blanks.flatMap(({ placed: { at } }, i) => {
      const piece = names[i];
      return piece === undefined ? [] : [{ piece, at }];
    }),
  ];
  const runOf = (type: number): RunWish | undefined => {
    const run = types[type]?.run;
    return run === undefined
      ? undefined
      : { kind: run.axis === 'x' ? 'row' : 'stack', pieces: types[type]?.pieces ?? [] };
  };
  const now = sawn.blanks.flatMap(({ placed: { type, turned, at }, piece }, i): Blank[] => {
    const name = names[i];
    if (name === undefined) return [];
    if (wanted[name]?.pin !== undefined)
      return [{ wanted: name, turned, ...boxOf(at), piece, why: { kind: 'pinned' } }];
    const why = reasonOf({ piece: name, at }, index, {
      planks,
      wanted,
      saw: task.saw,
      run: runOf(type),
      together,
      holds: (plank) =>
        bins.some((bin) => bin.plank === plank && bin.ways.some(({ view }) => view.holds(type))),
      elsewhere: outOfOthers(plank, task, taken, types),
    });
    return [{ wanted: name, turned, ...boxOf(at), piece, why }];
  });
  return {
    plank: index,
    blanks: [...before, ...now],
    cuts: [...made, ...sawn.cuts],
    offcuts: offcutsOf(plank, task, sawn),
  };
};

/** What comes out of boards that are not bent as one is. */
const outOfOthers = (
  { bow }: Plank,
  { planks, wanted }: Task,
  taken: Solution['taken'],
  types: Solution['types'],
): Wanted[] =>
  taken
    .filter(({ pool: { bin } }) => planks[bin.plank]?.bow !== bow)
    .flatMap(({ counts }) => types.flatMap(({ pieces }, type) => ((counts[type] ?? 0) > 0 ? pieces : [])))
    .flatMap((piece) => wanted[piece] ?? []);
