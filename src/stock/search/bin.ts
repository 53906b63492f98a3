import type { Plank } from '../plank.ts';
import { type CutPiece, replayCuts } from '../sawing/replayCuts.ts';
import type { Saw } from '../wanted.ts';
import { type BlankType, pinsOf, serves } from '../wood/blankType.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { type Axis, PieceView } from '../wood/pieceView.ts';
import type { Stages } from './patterns.ts';

/** A piece of wood to be filled: a whole board, or what earlier cuts have left of one. */
export interface Bin {
  /** Index of its board. */
  readonly plank: number;
  readonly piece: CutPiece;
  /** Whether its board is cut into anyhow: then its wood costs no further board. */
  readonly free: boolean;
  /** The same for pieces of wood that hold the same. */
  readonly likeness: string;
  /** The ways to begin its cuts. */
  readonly ways: readonly { readonly view: PieceView; readonly stages: Stages }[];
}

/** The ways to go on from a piece: at most three changes between crosscuts and rips, the last run to trim only. */
const waysOn = ({ runs }: CutPiece): readonly { readonly axis: Axis; readonly stages: Stages }[] => {
  const axis: Axis = runs.at(-1) === 'rip' ? 'y' : 'x';
  const stages = (oneBlankPerStrip: boolean, oneStrip: boolean, trim = false): Stages => ({
    oneBlankPerStrip,
    oneStrip,
    trim,
  });
  switch (runs.length) {
    case 0:
      return (['x', 'y'] as const).map((axis) => ({ axis, stages: stages(false, false) }));
    case 1:
      return [{ axis, stages: stages(false, false) }];
    case 2:
      return [{ axis, stages: stages(true, false) }];
    case 3:
      return [{ axis, stages: stages(true, true) }];
    default:
      return [{ axis, stages: stages(true, true, true) }];
  }
};

/** Whether anything has been cut from a board. */
export const isBegun = ({ done }: Plank): boolean =>
  (done?.cuts.length ?? 0) + (done?.blanks.length ?? 0) > 0;

/** Whether a board is cut into whatever else comes out of it: it has been begun, or something is pinned to it. */
export const isOpened = (plank: Plank, index: number, types: readonly BlankType[]): boolean =>
  isBegun(plank) || types.some((type) => pinsOf(type).some((pin) => pin.plank === index));

/** Whether a type may come out of a piece of a board: nothing of it is pinned elsewhere. */
const servesHere = (plank: Plank, index: number, piece: Rect, type: BlankType): boolean =>
  serves(plank, type) &&
  pinsOf(type).every((pin) => pin.plank === index && (pin.at === undefined || isInside(pin.at, piece)));

const isInside = (inner: Rect, outer: Rect): boolean =>
  inner.x0 >= outer.x0 && inner.y0 >= outer.y0 && inner.x1 <= outer.x1 && inner.y1 <= outer.y1;

/** The pieces of a board that may still be filled. */
export const binsOf = (plank: Plank, index: number, types: readonly BlankType[], saw: Saw): Bin[] => {
  const { cuts = [], blanks = [] } = plank.done ?? {};
  const taken = new Set(blanks.map(({ piece }) => piece));
  const { outline, defects, clean } = plank;
  return replayCuts(plank, cuts, saw.kerf)
    .filter(({ number, trimmed }, _, all) => {
      // Of what a fourth run has cut apart only one is a blank: the largest that is left.
      const beside = all.filter((other) => trimmed.includes(other.number));
      const size = ({ at }: CutPiece) => (at.x1 - at.x0) * (at.y1 - at.y0);
      const own = all.find((piece) => piece.number === number);
      const largest = own !== undefined && beside.every((other) => size(other) <= size(own));
      return !taken.has(number) && !trimmed.some((piece) => taken.has(piece)) && largest;
    })
    .map((piece) => {
      const served = types.map((type) => servesHere(plank, index, piece.at, type));
      return {
        plank: index,
        piece,
        free: isOpened(plank, index, types),
        likeness: JSON.stringify([outline, defects, clean, served, piece.at, piece.runs]),
        ways: waysOn(piece).map(({ axis, stages }) => ({
          view: new PieceView(plank, axis, piece.at, types, served, saw),
          stages,
        })),
      };
    });
};
