import type { Box } from '../../drawing/drawing.ts';
import { boardFault, placeFault } from '../../stock/pins/placeFault.ts';
import type { DoneBlank, Plank } from '../../stock/plank.ts';
import { replay, woodIn } from '../../stock/replay.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { BoardSpec, BoardsSpec, CutBlank } from './boardSpec.ts';
import type { PartBlank } from './partBlanks.ts';
import { placeFaultWords } from './pinWords.ts';

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
  const { x, y, length, width, turned, piece } = blank;
  const box: Box = { x0: x, y0: y, x1: x + length, y1: y + width };
  // A panel may lie across the board; its ends are alike.
  const across = wanted.eitherWay && length < wanted.length - DUST;
  const [along, over] = across ? [wanted.width, wanted.length] : [wanted.length, wanted.width];
  if (boardFault(plank, wanted) === undefined && (length < along - DUST || width < over - DUST))
    return say`is ${mm(length)} x ${mm(width)}, and must be at least ${mm(wanted.length)} x ${mm(wanted.width)}`;
  const fault = placeFault(plank, wanted, { box, turned, across }, saw, DUST);
  if (fault !== undefined) return placeFaultWords(fault, plank, wanted);
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
