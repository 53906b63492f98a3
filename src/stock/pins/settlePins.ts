import type { Plank } from '../plank.ts';
import { replayCuts } from '../sawing/replayCuts.ts';
import type { Saw, Wanted } from '../wanted.ts';
import { pinOf } from '../wood/blankType.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { exactTicks, ticks, toMm } from '../wood/ticks.ts';

/** A place is printed to 0.0001 mm: by no more than this, in mm, it is put right. */
export const PRINTED = 1e-3;

/** A pinned piece and its place, which is put right in turn. */
interface Settling {
  readonly wanted: number;
  readonly plank: number;
  at: Rect;
}

/**
 * Pinned pieces as they were before their places were rounded for print: inside what has been cut, and a saw cut apart where
 * they lie next to each other.
 */
export const settlePins = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  saw: Saw,
): readonly Wanted[] => {
  if (wanted.every(({ pin }) => pin?.place === undefined)) return wanted;
  const pins = wanted.flatMap((piece, i): Settling[] => {
    const pin = pinOf(piece);
    return pin?.at === undefined ? [] : [{ wanted: i, plank: pin.plank, at: pin.at }];
  });
  planks.forEach((plank, index) => {
    const own = pins.filter((pin) => pin.plank === index);
    if (own.length === 0) return;
    for (const piece of replayCuts(plank, plank.done?.cuts ?? [], saw.kerf))
      for (const pin of own) pin.at = insideOf(pin.at, piece.at);
    keepApart(own, ticks(saw.kerf), 'x');
    keepApart(own, ticks(saw.kerf), 'y');
  });
  const settled = new Map(pins.map((pin) => [pin.wanted, pin.at]));
  return wanted.map((piece, i) => {
    const at = settled.get(i);
    const { pin } = piece;
    return at === undefined || pin?.place === undefined
      ? piece
      : { ...piece, pin: { ...pin, place: { ...pin.place, x: toMm(at.x0), y: toMm(at.y0) } } };
  });
};

const SLACK = exactTicks(PRINTED);
const isSlight = (by: number): boolean => by > 0 && by <= SLACK;

const shifted = (at: Rect, x: number, y: number): Rect => ({
  x0: at.x0 + x,
  y0: at.y0 + y,
  x1: at.x1 + x,
  y1: at.y1 + y,
});

/** A rectangle that hardly sticks out of another, moved into it. */
const insideOf = (at: Rect, piece: Rect): Rect => {
  const into = (low: number, high: number, first: number, last: number) =>
    Math.max(0, first - low) || -Math.max(0, high - last);
  const x = into(at.x0, at.x1, piece.x0, piece.x1);
  const y = into(at.y0, at.y1, piece.y0, piece.y1);
  return Math.max(Math.abs(x), Math.abs(y)) > SLACK ? at : shifted(at, x, y);
};

/** Moves what lies hardly less than a saw cut beyond another. */
const keepApart = (pins: readonly Settling[], kerf: number, axis: 'x' | 'y'): void => {
  const [low, high, below, above] =
    axis === 'x' ? (['x0', 'x1', 'y0', 'y1'] as const) : (['y0', 'y1', 'x0', 'x1'] as const);
  const rising = pins.toSorted((a, b) => a.at[low] - b.at[low]);
  rising.forEach((pin, i) => {
    for (const { at } of rising.slice(0, i)) {
      const isAcross = at[below] < pin.at[above] + kerf - SLACK && pin.at[below] < at[above] + kerf - SLACK;
      const by = at[high] + kerf - pin.at[low];
      if (isAcross && isSlight(by)) pin.at = axis === 'x' ? shifted(pin.at, by, 0) : shifted(pin.at, 0, by);
    }
  });
};
