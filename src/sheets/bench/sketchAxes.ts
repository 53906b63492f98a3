import type { Hand } from '../../drawer/cornerLetters.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';

/** From a position along one axis of a drawer, mm, to its position on a sketch, mm. */
export type Axis = (measure: number) => number;

/** The axes of a sketch, from the left side's outer face to the right, from the front's outer face to the back, and up from the reference edge. */
export interface SketchAxes {
  readonly across: Axis;
  readonly back: Axis;
  readonly up: Axis;
  /** Whether all three have one scale. */
  readonly toScale: boolean;
}

/** Em of a corner's letter on a sketch, mm. */
export const letterSize = (type: TypeSizes): number => 1.3 * type.figure;

/** The least thickness of a board on a sketch to scale, and on another, mm. */
const LEAST_BOARD = { toScale: 1.2, other: 1.3 };

/** The least sizes on a sketch, for its lettering, ems of a corner's letter: clear inside from left to right and from front to back, and of the sides' width. */
const LEAST = { width: 2.6, depth: 2.9, height: 0.9 };

/** The least ratio of two outer sizes on a sketch, where their own is not less. */
const LEAST_RATIO = 1.1;

/**
 * Axes to one scale where that leaves room for the lettering and shows the thinnest board. Elsewhere what is too small is
 * shown larger, but the larger of two outer sizes, or of two boards, is the larger on the sketch too.
 */
export const sketchAxes = (drawer: Drawer, scale: number, type: TypeSizes): SketchAxes => {
  const axes = axesOf(drawer, scale, LEAST_BOARD.toScale, type);
  return axes.toScale ? axes : axesOf(drawer, scale, LEAST_BOARD.other, type);
};

const axesOf = (
  { spec: { stock }, sizes, boards }: Drawer,
  scale: number,
  leastBoard: number,
  type: TypeSizes,
): SketchAxes => {
  const { width, depth, height, wall } = sizes;
  const slip = boards.slip?.thickness;
  const [front, back] = [stock.front.thickness, stock.back.thickness];
  const thinnest = Math.min(wall.left, wall.right, front, back, slip ?? wall.left);
  const board = (thickness: number) =>
    Math.max(scale * thickness, leastBoard * Math.sqrt(thickness / thinnest));
  const end = (...thicknesses: readonly number[]): End => ({
    thickness: thicknesses.reduce((sum, each) => sum + each, 0),
    shown: thicknesses.reduce((sum, each) => sum + board(each), 0),
  });
  const side = (hand: Hand) => (slip === undefined ? end(wall[hand]) : end(wall[hand], slip));
  const [left, right] = [side('left'), side('right')];
  const [first, last] = [end(front), end(back)];
  const shown = inOrder(scale, [
    { length: width, least: LEAST.width * letterSize(type) + left.shown + right.shown },
    { length: depth, least: LEAST.depth * letterSize(type) + first.shown + last.shown },
    { length: height, least: LEAST.height * letterSize(type) },
  ]);
  return {
    across: ends(width, shown(width), left, right),
    back: ends(depth, shown(depth), first, last),
    up: (z) => (z * shown(height)) / height,
    toScale:
      scale * thinnest >= leastBoard &&
      [width, depth, height].every((length) => shown(length) === scale * length),
  };
};

/** Lengths to scale, or as much longer as their least asks for; a longer one is longer on the sketch too. */
const inOrder = (
  scale: number,
  lengths: readonly { readonly length: number; readonly least: number }[],
): ((length: number) => number) => {
  const shown = new Map<number, number>();
  let before: { readonly length: number; readonly shown: number } | undefined;
  for (const { length, least } of lengths.toSorted((a, b) => a.length - b.length)) {
    const kept = before === undefined ? 0 : before.shown * Math.min(length / before.length, LEAST_RATIO);
    // Rounding errors must not take a length that is to scale for one that is not.
    const wanted = Math.max(least, kept);
    before = { length, shown: wanted > scale * length + EPSILON ? wanted : scale * length };
    shown.set(length, before.shown);
  }
  return (length) => shown.get(length) ?? scale * length;
};

/** Thickness of the boards at one end of an axis, and as shown, mm. */
interface End {
  readonly thickness: number;
  readonly shown: number;
}

/** A linear map between two ends with scales of their own; beyond them it has that of the whole. */
const ends =
  (length: number, shown: number, first: End, last: End): Axis =>
  (measure) => {
    if (measure < 0 || measure > length) return (measure * shown) / length;
    if (measure < first.thickness) return (measure / first.thickness) * first.shown;
    if (measure > length - last.thickness) return shown - ((length - measure) / last.thickness) * last.shown;
    const share = (measure - first.thickness) / (length - first.thickness - last.thickness);
    return first.shown + share * (shown - first.shown - last.shown);
  };

/** What a view is called on the sheet. */
export const viewName = (from: string, { toScale }: SketchAxes): string =>
  toScale ? from : `${from}, not to scale`;
