import { pinFaultWords } from '../../../drawer/blanks/pinWords.ts';
import type { StockWork } from '../../../drawer/blanks/stockWork.ts';
import type { Box, Point } from '../../../drawing/drawing.ts';
import { lyingAt, pinFaults } from '../../../stock/pins/pinFaults.ts';
import { boardFault } from '../../../stock/pins/placeFault.ts';
import { extentsOf } from '../../../stock/polygon.ts';
import type { PinnedPlace, Saw } from '../../../stock/wanted.ts';
import type { Phrase } from '../../../units/phrase.ts';

/** A part in the hand: which it is, and the place on a board over which it is held. */
export interface HeldPart {
  /** Its place among the blanks. */
  readonly wanted: number;
  readonly plank: number;
  readonly place: PinnedPlace;
}

/** The places and boards among which a part is moved. */
export type Work = Pick<StockWork, 'planks' | 'blanks'>;

/** Where a held part lies, in mm of its board. */
export const boxOf = ({ blanks }: Work, { wanted, place }: HeldPart): Box => {
  const part = blanks[wanted];
  return part === undefined ? { x0: 0, y0: 0, x1: 0, y1: 0 } : lyingAt(part, place).box;
};

/** Why a part cannot be pinned where it is held; undefined where it can, everything else that is pinned held true. */
export const refusalOf = (work: Work, { wanted, plank, place }: HeldPart, saw: Saw): Phrase | undefined => {
  const { planks, blanks } = work;
  const others = blanks.flatMap(({ pin }, i) => (pin === undefined || i === wanted ? [] : [i]));
  const held = blanks.map((blank, i) => (i === wanted ? { ...blank, pin: { plank, place } } : blank));
  const fault = pinFaults(planks, held, saw, [...others, wanted]).get(wanted);
  const [part, board] = [blanks[wanted], planks[plank]];
  return fault && part && board && pinFaultWords(fault, board, part, blanks);
};

const nearest = (value: number, step: number): number => Math.round(value / step) * step;
const within = (value: number, least: number, most: number): number =>
  Math.min(Math.max(value, least), Math.max(least, most));

/** How a hand moves: in steps, and drawn to a board's ends and edges from so near, in mm. */
export interface Steps {
  readonly step: number;
  readonly near: number;
}

/**
 * A part held over another place: on the next step of the board's own measure, and what hardly sticks out of the board drawn
 * inside, clear of what is cut off its ends.
 * @param corner where the hand holds its lower left corner, in mm of the board
 */
export const heldOver = (
  work: Work,
  held: HeldPart,
  plank: number,
  [x, y]: Point,
  saw: Pick<Saw, 'ends'>,
  { step, near }: Steps,
): HeldPart => {
  const board = work.planks[plank];
  if (board === undefined) return held;
  const on = extentsOf(board.outline);
  const box = boxOf(work, held);
  const [long, wide] = [box.x1 - box.x0, box.y1 - box.y0];
  const { left, right } = board.clean;
  const along = [on.x0 + (left ? 0 : saw.ends), on.x1 - (right ? 0 : saw.ends) - long] as const;
  const across = [on.y0, on.y1 - wide] as const;
  const drawn = (value: number, from: number, [least, most]: readonly [number, number]): number => {
    const stepped = from + nearest(value - from, step);
    const inside = within(stepped, least, most);
    return Math.abs(inside - stepped) <= near ? inside : stepped;
  };
  const place = { ...held.place, x: drawn(x, on.x0, along), y: drawn(y, on.y0, across) };
  return { ...held, plank, place };
};

/** A part moved by so many steps to the right and up. */
export const stepped = (held: HeldPart, [right, up]: Point, step: number): HeldPart => {
  const moved = (value: number, by: number) => (by === 0 ? value : nearest(value, step) + by * step);
  const { place } = held;
  return { ...held, place: { ...place, x: moved(place.x, right), y: moved(place.y, up) } };
};

/** The boards that a part may come out of. */
export const boardsFor = ({ planks, blanks }: Work, wanted: number): number[] => {
  const part = blanks[wanted];
  return planks.flatMap((plank, i) =>
    part !== undefined && boardFault(plank, part) === undefined ? [i] : [],
  );
};

/**
 * A part held over the next board that it may come out of, or the one before; at the same distance from its left end and lower
 * edge.
 */
export const overNextBoard = (work: Work, held: HeldPart, by: 1 | -1): HeldPart => {
  const { planks } = work;
  const serving = boardsFor(work, held.wanted);
  const next = serving.at((serving.indexOf(held.plank) + by) % serving.length);
  const [from, to] = [planks[held.plank], planks[next ?? -1]];
  if (next === undefined || from === undefined || to === undefined) return held;
  const [before, after] = [extentsOf(from.outline), extentsOf(to.outline)];
  const { place } = held;
  return {
    ...held,
    plank: next,
    place: { ...place, x: place.x - before.x0 + after.x0, y: place.y - before.y0 + after.y0 },
  };
};

/** Where a part lies by its pin, else by a layout; undefined where it is in neither. */
export const takenUp = (
  { blanks }: Work,
  boards: readonly { readonly plank: number; readonly blanks: readonly LaidBlank[] }[],
  wanted: number,
): HeldPart | undefined => {
  const part = blanks[wanted];
  if (part?.pin?.place !== undefined) return { wanted, plank: part.pin.plank, place: part.pin.place };
  for (const { plank, blanks: laid } of boards) {
    const own = laid.find((blank) => blank.wanted === wanted);
    if (part === undefined || own === undefined || own.why.kind === 'cut already') continue;
    const { x, y, turned } = own;
    const across = part.eitherWay && Math.abs(own.length - part.length) > 1e-3;
    return { wanted, plank, place: { x, y, turned, across } };
  }
  return undefined;
};

/** What is known of a blank in a layout. */
interface LaidBlank {
  readonly wanted: number;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly why: { readonly kind: string };
}

/** Whether two sets of boards and parts differ in nothing but pins, so that a layout of one shows the parts of the other. */
export const differInPinsOnly = (one: Work, other: Work): boolean => {
  const unpinned = ({ planks, blanks }: Work) =>
    JSON.stringify([planks, blanks.map(({ pin: _, ...blank }) => blank)]);
  return one === other || unpinned(one) === unpinned(other);
};
