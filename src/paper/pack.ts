import { MaxRectsPacker, PACKING_LOGIC } from 'maxrects-packer/dist/maxrects-packer.mjs';
import { EPSILON } from '../units/epsilon.ts';
import type { Size } from './printable.ts';

/** Place of a rectangle: its lower left corner, mm, after any quarter turn. */
export interface PackedPlace {
  /** Counted from 0. */
  readonly page: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** Rectangles packed at a time: the packer's time increases faster than their number. */
const BATCH = 250;

/** A rectangle in the packer, which sets its place and whether it turned it. */
interface Item extends Size {
  readonly index: number;
  /** Turned before packing, since it does not fit otherwise. */
  readonly onItsSide: boolean;
  x: number;
  y: number;
  rot: boolean;
}

const fits = ({ width, height }: Size, area: Size): boolean =>
  width <= area.width + EPSILON && height <= area.height + EPSILON;

/** Ways to pack a batch, from the most readable order to the one that saves most paper. */
const WAYS = [
  { sorted: false, turning: false },
  { sorted: false, turning: true },
  { sorted: true, turning: false },
  { sorted: true, turning: true },
] as const;

/** Packs rectangles in one way; each page is a list of them. */
const packOneWay = (
  sizes: readonly Size[],
  indices: readonly number[],
  area: Size,
  gap: number,
  { sorted, turning }: (typeof WAYS)[number],
): Item[][] => {
  const packer = new MaxRectsPacker<Item>(area.width + EPSILON, area.height + EPSILON, gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: turning,
    logic: PACKING_LOGIC.FILL_WIDTH,
  });
  const items = indices.map((index): Item => {
    const { width = 0, height = 0 } = sizes[index] ?? {};
    const onItsSide = !fits({ width, height }, area);
    return {
      index,
      onItsSide,
      x: 0,
      y: 0,
      rot: false,
      width: onItsSide ? height : width,
      height: onItsSide ? width : height,
    };
  });
  if (sorted) packer.addArray(items);
  else for (const item of items) packer.add(item);
  return packer.bins.map(({ rects }) => rects);
};

const lengthOf = (page: readonly Item[]): number =>
  Math.max(...page.map(({ y, width, height, rot }) => y + (rot ? width : height)));

const first = (page: readonly Item[]): number => Math.min(...page.map(({ index }) => index));

const covered = (page: readonly Item[]): number =>
  page.reduce((sum, { width, height }) => sum + width * height, 0);

/**
 * Packs rectangles onto pages: turned by a quarter where that saves pages, and in the given order where that costs none.
 * The same rectangles always give the same places; the time is proportional to their number.
 * @param sizes each fits into the area one way or the other
 * @param area of one page; for a roll, as long as a sheet may be cut
 * @param gap between two rectangles, mm
 * @param roll whether pages are cut to length, so that their total length counts and not their number
 * @returns a place for each, in the order given; pages count from 0 and their rectangles from the top
 */
export const pack = (sizes: readonly Size[], area: Size, gap: number, roll: boolean): PackedPlace[] => {
  const places: PackedPlace[] = [];
  let page = 0;
  let waiting = sizes.map((_, index) => index);
  while (waiting.length > 0) {
    const batch = waiting.slice(0, BATCH);
    waiting = waiting.slice(BATCH);
    const cost = (pages: Item[][]) =>
      roll ? pages.reduce((sum, items) => sum + lengthOf(items), 0) : pages.length;
    let pages = packOneWay(sizes, batch, area, gap, WAYS[0]);
    for (const way of WAYS.slice(1)) {
      const other = packOneWay(sizes, batch, area, gap, way);
      if (cost(other) < cost(pages) - EPSILON) pages = other;
    }
    pages.sort((a, b) => first(a) - first(b));
    // The emptiest page is packed again with the next batch, if there is one.
    if (waiting.length > 0 && pages.length > 1) {
      const emptiest = pages.reduce((a, b) => (covered(b) < covered(a) ? b : a));
      pages = pages.filter((items) => items !== emptiest);
      waiting = [...emptiest.map(({ index }) => index).sort((a, b) => a - b), ...waiting];
    }
    for (const items of pages) {
      for (const { index, onItsSide, x, y, width, height, rot } of items) {
        const up = rot ? width : height;
        places[index] = {
          page,
          x,
          y: Math.max(0, area.height - y - up),
          turned: onItsSide !== rot,
        };
      }
      page += 1;
    }
  }
  return places;
};
