import type { Plank } from '../plank.ts';
import { widestOf } from '../polygon.ts';
import { type CutPiece, replayCuts } from '../sawing/replayCuts.ts';
import type { Pin, PinnedPlace, Saw, Wanted } from '../wanted.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { exactTicks, ticks } from '../wood/ticks.ts';
import { boardFault, type Lying, type PlaceFault, placeFault } from './placeFault.ts';
import { stuckTogether } from './sawnFree.ts';
import { PRINTED, settlePins } from './settlePins.ts';

/** Why a pin cannot be honoured. */
export type PinFault =
  | PlaceFault
  /** The board is too short or too narrow for it. */
  | { readonly is: 'no room' }
  /** It is not in one piece of what has been cut so far. */
  | { readonly is: 'cut' }
  /** It lies on another pinned piece, or less than a saw cut from it. */
  | { readonly is: 'pin'; readonly other: number }
  /** Together with these it cannot be cut free. */
  | { readonly is: 'stuck'; readonly others: readonly number[] };

/** A pinned piece in its place. */
interface Placed {
  readonly wanted: number;
  readonly at: Rect;
}

/** Where a piece lies by its pin, in mm. */
export const lyingAt = (
  { length, width }: Pick<Wanted, 'length' | 'width'>,
  { x, y, turned, across }: PinnedPlace,
): Lying => ({
  box: { x0: x, y0: y, x1: x + (across ? width : length), y1: y + (across ? length : width) },
  turned,
  across,
});

/**
 * What is wrong with pins, by the pieces that are pinned: each as though those before it were right.
 * @param order the pieces in the order in which they were pinned
 */
export const pinFaults = (
  planks: readonly Plank[],
  given: readonly Wanted[],
  saw: Saw,
  order: readonly number[] = given.map((_, i) => i),
): ReadonlyMap<number, PinFault> => {
  const wanted = settlePins(planks, given, saw);
  const faults = new Map<number, PinFault>();
  planks.forEach((plank, index) => {
    const pinned = order.flatMap((i) => {
      const piece = wanted[i];
      return piece?.pin?.plank === index ? [{ piece, i }] : [];
    });
    if (pinned.length === 0) return;
    const taken = new Set(plank.done?.blanks.map(({ piece }) => piece));
    const pieces = replayCuts(plank, plank.done?.cuts ?? [], saw.kerf).filter(
      ({ number }) => !taken.has(number),
    );
    const right: Placed[] = [];
    for (const { piece, i } of pinned) {
      const { place } = piece.pin as Pin;
      const fault =
        place === undefined
          ? roomFault(plank, piece, saw)
          : (placeFault(plank, piece, lyingAt(piece, place), saw, PRINTED) ??
            amongOthers(pieces, right, rectOf(piece, place), saw));
      if (fault !== undefined) faults.set(i, fault);
      else if (place !== undefined) right.push({ wanted: i, at: rectOf(piece, place) });
    }
  });
  return faults;
};

const rectOf = (piece: Wanted, place: PinnedPlace): Rect => {
  const { x0, y0, x1, y1 } = lyingAt(piece, place).box;
  return { x0: exactTicks(x0), y0: exactTicks(y0), x1: exactTicks(x1), y1: exactTicks(y1) };
};

const SLACK = exactTicks(PRINTED);

/** Whether a place is in one piece, apart from what is pinned there, and can be freed together with that. */
const amongOthers = (
  pieces: readonly CutPiece[],
  others: readonly Placed[],
  at: Rect,
  saw: Saw,
): PinFault | undefined => {
  const kerf = ticks(saw.kerf) - SLACK;
  const touching = others.find(
    ({ at: other }) =>
      at.x0 < other.x1 + kerf &&
      other.x0 < at.x1 + kerf &&
      at.y0 < other.y1 + kerf &&
      other.y0 < at.y1 + kerf,
  );
  if (touching !== undefined) return { is: 'pin', other: touching.wanted };
  const own = pieces.find((piece) => isInside(at, piece.at));
  if (own === undefined || own.trimmed.length > 0) return { is: 'cut' };
  const beside = others.filter((other) => isInside(other.at, own.at));
  const stuck = stuckTogether([...beside.map((other) => other.at), at], kerf, own.runs);
  return stuck.length === 0
    ? undefined
    : { is: 'stuck', others: beside.flatMap((other) => (stuck.includes(other.at) ? [other.wanted] : [])) };
};

const isInside = (inner: Rect, outer: Rect): boolean =>
  inner.x0 >= outer.x0 - SLACK &&
  inner.y0 >= outer.y0 - SLACK &&
  inner.x1 <= outer.x1 + SLACK &&
  inner.y1 <= outer.y1 + SLACK;

/** Whether a board has no room for a piece, its defects apart. */
const roomFault = (plank: Plank, piece: Wanted, { ends }: Saw): PinFault | undefined => {
  const { outline, clean } = plank;
  const off = (clean.left ? 0 : ends) + (clean.right ? 0 : ends);
  const holds = (length: number, width: number) => widestOf(outline, length + off) >= width - PRINTED;
  const { length, width, eitherWay } = piece;
  return (
    boardFault(plank, piece) ??
    (holds(length, width) || (eitherWay && holds(width, length)) ? undefined : { is: 'no room' })
  );
};
