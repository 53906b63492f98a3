import type { Box } from '../../drawing/drawing.ts';
import type { DoneBlank, Plank } from '../../stock/plank.ts';
import { holdsBox, rectangle, shareArea } from '../../stock/polygon.ts';
import { replay, woodIn } from '../../stock/replay.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { Zone } from '../../stock/wanted.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { BoardSpec, BoardsSpec, CutBlank } from './boardSpec.ts';
import type { PartBlank } from './partBlanks.ts';

/** Figures are printed to 0.0001 mm: what differs by no more is the same, in mm. */
const DUST = 0.01;

type Done = NonNullable<Plank['done']>;

/**
 * What has been cut of boards, by their names. Blanks that the cuts do not free yet are left to be sought anew.
 * @returns complaints at each cut that cannot have been made, and at each blank that does not fit where it is said to be
 */
export const doneOf = (
  { boards }: BoardsSpec,
  blanks: readonly PartBlank[],
  saw: Sawing,
): Result<ReadonlyMap<string, Done>> => {
  const taken = new Set<number>();
  const wrong: Complaint[] = [];
  const done = new Map<string, Done>();
  boards.forEach((board, i) => {
    if (board.cut === undefined) return;
    const at: Place = ['boards', i, 'cut'];
    const made = replay(board.plank.outline, board.cut.cuts, saw.kerf);
    if (!made.ok) {
      wrong.push({
        at: [...at, 'cuts', made.cut],
        says:
          made.why === 'gone'
            ? say`there is no ${board.cut.cuts[made.cut]?.piece ?? 0} left of ${quote(board.plank.name)} to be cut here`
            : say`this cut lies beside what it should cut of ${quote(board.plank.name)}`,
        remedy: say`copy the cuts as they were printed, from the first on`,
      });
      return;
    }
    const ofBoard: DoneBlank[] = [];
    board.cut.blanks.forEach((blank, j) => {
      const place = [...at, 'blanks', j];
      const wanted = findWanted(blanks, blank, taken);
      if (typeof wanted !== 'number') {
        wrong.push({ at: place, says: wanted });
        return;
      }
      const needed = blanks[wanted];
      const fault = needed && misfit(board, blank, needed, made.left, saw);
      if (fault !== undefined) wrong.push({ at: place, says: say`${named(blank)} ${fault}` });
      taken.add(wanted);
      if (isFreed(board, blank)) ofBoard.push({ wanted, turned: blank.turned, piece: blank.piece });
    });
    const pieces = ofBoard.map(({ piece }) => piece);
    pieces.forEach((piece, j) => {
      if (pieces.indexOf(piece) < j)
        wrong.push({
          at: [...at, 'blanks', j, 'piece'],
          says: say`two parts cannot be the same wood, number ${piece}`,
        });
    });
    done.set(board.plank.name, { cuts: board.cut.cuts, blanks: ofBoard });
  });
  return wrong.length > 0 ? refuse(...wrong) : accept(done);
};

/** Whether the cuts so far have made what a blank is. */
const isFreed = ({ cut }: BoardSpec, { piece }: CutBlank): boolean => piece <= 2 * (cut?.cuts.length ?? 0);

const named = ({ drawer, part, index, strip }: CutBlank): Phrase =>
  say`the ${part} of ${quote(drawer)}${index === undefined ? '' : `, number ${index}`}${strip === undefined ? '' : `, strip ${strip}`},`;

/** The wanted blank that a cut one is, or why there is none. */
const findWanted = (
  blanks: readonly PartBlank[],
  blank: CutBlank,
  taken: ReadonlySet<number>,
): number | Phrase => {
  const { drawer, part, index, strip, spare } = blank;
  const ofPart = blanks.flatMap((each, i) => (each.drawer === drawer && each.part === part ? [i] : []));
  const found = ofPart.filter((i) => {
    const each = blanks[i];
    return each?.index === index && each?.strip === strip && each?.spare === (spare === true);
  });
  if (ofPart.length === 0) return say`${quote(drawer)} has no ${part} that comes out of boards`;
  if (found.length === 0)
    return say`${quote(drawer)} has no ${part} of number ${index ?? 'none'}${strip === undefined ? '' : `, strip ${strip}`}; check index, strip and spare`;
  return found.find((i) => !taken.has(i)) ?? say`${named(blank)} has been cut already, in another place`;
};

/** Why a blank cannot be where it is said to be; undefined where it can. */
const misfit = (
  board: BoardSpec,
  blank: CutBlank,
  wanted: PartBlank,
  left: ReadonlyMap<number, Box>,
  saw: Sawing,
): Phrase | undefined => {
  const { plank } = board;
  const { x, y, length, width, piece } = blank;
  const box: Box = { x0: x, y0: y, x1: x + length, y1: y + width };
  const size = say`${mm(length)} x ${mm(width)}`;
  if (!plank.stocks.includes(wanted.stock))
    return say`does not come out of a board for ${plank.stocks.join(', ')}`;
  if (plank.thickness < wanted.thickness - EPSILON)
    return say`needs a board of ${mm(wanted.thickness)}, and ${quote(plank.name)} is ${mm(plank.thickness)} thick`;
  const holds = (along: number, across: number) => length >= along - DUST && width >= across - DUST;
  if (!holds(wanted.length, wanted.width) && !(wanted.eitherWay && holds(wanted.width, wanted.length)))
    return say`is ${size}, and must be at least ${mm(wanted.length)} x ${mm(wanted.width)}`;
  const ends = {
    left: plank.clean.left ? 0 : saw.ends,
    right: plank.clean.right ? 0 : saw.ends,
  };
  if (!holdsBox(plank.outline, { ...box, x0: box.x0 - ends.left, x1: box.x1 + ends.right }, DUST))
    return say`does not lie inside ${quote(plank.name)} with its ends cut off`;
  if (defectIn(plank, blank, wanted)) return say`lies on a defect that it may not have`;
  if (!isFreed(board, blank))
    return [...left.values()].some((rest) => isInside(box, rest))
      ? undefined
      : say`is not in what the cuts leave`;
  const own = left.get(piece);
  if (own === undefined) return say`is number ${piece}, which the cuts do not leave`;
  const { area, reach } = woodIn(plank.outline, own);
  return isInside(reach, box) &&
    isInside(box, reach) &&
    Math.abs(area - length * width) < DUST * (length + width)
    ? undefined
    : say`is not what the cuts leave as number ${piece}: that is ${mm(reach.x1 - reach.x0)} x ${mm(reach.y1 - reach.y0)} at ${mm(reach.x0)}, ${mm(reach.y0)}`;
};

const isInside = (inner: Box, outer: Box): boolean =>
  inner.x0 >= outer.x0 - DUST &&
  inner.y0 >= outer.y0 - DUST &&
  inner.x1 <= outer.x1 + DUST &&
  inner.y1 <= outer.y1 + DUST;

/** Whether a blank where it lies has a defect that it may not have there. */
const defectIn = (
  { defects }: BoardSpec['plank'],
  { x, y, length, width, turned }: CutBlank,
  wanted: PartBlank,
): boolean => {
  const { zones, allows } = wanted;
  const whole: Box = { x0: x, y0: y, x1: x + length, y1: y + width };
  // A panel may lie across the board; its ends are alike.
  const isAcross = wanted.eitherWay && length < wanted.length - DUST;
  const shut = zones.map(({ from, to }): Box => {
    const [[x0, y0], [x1, y1]] = isAcross ? [flipped(from), flipped(to)] : [from, to];
    return turned
      ? { x0: whole.x1 - x1, y0: whole.y1 - y1, x1: whole.x1 - x0, y1: whole.y1 - y0 }
      : { x0: x + x0, y0: y + y0, x1: x + x1, y1: y + y1 };
  });
  return defects.some(({ kind, outline }) =>
    (allows.includes(kind) ? shut : [whole]).some((box) => shareArea(rectangle(shrunk(box)), outline)),
  );
};

const flipped = ([x, y]: Zone['from']): Zone['from'] => [y, x];

/** What is printed may be wider by what it was rounded by. */
const shrunk = ({ x0, y0, x1, y1 }: Box): Box => ({
  x0: x0 + DUST,
  y0: y0 + DUST,
  x1: x1 - DUST,
  y1: y1 - DUST,
});
