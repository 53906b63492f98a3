import type { Point } from '../../drawing/drawing.ts';
import type { Surface } from '../../joint/kinds/kind.ts';
import type { Band } from './band.ts';
import { type Area, type Lettering, tagLength } from './lettering.ts';
import { isFace, type PlacedBand, placeBands } from './placedBand.ts';

/** A piece's bands in their places, its outline, and its tag: what it grows where its grips are too short to write on. */
export interface PieceShape {
  readonly placed: readonly PlacedBand[];
  readonly width: number;
  readonly height: number;
  readonly outline: readonly Point[];
  /** Its width below a tag on top. */
  readonly waist: number;
  readonly tag?: { readonly area: Area; readonly lettering: Lettering; readonly on: Surface };
}

/** The least breadth of a tag that lengthens a grip, in mm: three lines of letters. */
const GRIP_TAG = 12;

/** The least breadth of the tag of an end's strip. */
const END_TAG = 24;

/** What is to stand on a piece. */
export interface PieceLettering {
  /** Whether all of it finds room on the grips. */
  readonly fitsGrips: (placed: readonly PlacedBand[]) => boolean;
  /** All of it, for a tag on a band. */
  readonly onTag: (on: Surface) => Lettering;
}

export const pieceShape = (
  bands: readonly Band[],
  insideOn: 'left' | 'right',
  height: number,
  { fitsGrips, onTag }: PieceLettering,
): PieceShape => {
  const placed = placeBands(bands, insideOn, 0);
  const width = placed.at(-1)?.x1 ?? 0;
  const face = placed.find(isFace);
  if (face === undefined) return withTagOnTop(placed, width, height, onTag('end'));
  if (fitsGrips(placed)) return { placed, width, height, waist: width, outline: rectangle(width, height) };
  const lettering = onTag(face.band.name);
  const top = Math.max(height, GRIP_TAG);
  const length = tagLength(top, lettering);
  const whole = width + length;
  // The tag lengthens the outermost grip: the left one, where the board has a face there.
  const onLeft = face.x0 === 0;
  const outline = top === height ? rectangle(whole, height) : ell(whole, length, height, top);
  return {
    placed: placeBands(bands, insideOn, onLeft ? length : 0),
    width: whole,
    height: top,
    waist: whole,
    outline: onLeft ? outline : outline.map(([x, y]): Point => [whole - x, y]),
    tag: {
      area: { box: { x0: onLeft ? 0 : width, x1: onLeft ? length : whole, y0: 0, y1: top }, turn: 0 },
      lettering,
      on: face.band.name,
    },
  };
};

/** An end's strip has no grip: its tag stands out beyond the board's upper edge. */
const withTagOnTop = (
  placed: readonly PlacedBand[],
  width: number,
  height: number,
  lettering: Lettering,
): PieceShape => {
  const breadth = Math.max(width, END_TAG);
  const top = height + tagLength(breadth, lettering);
  return {
    placed,
    width: breadth,
    height: top,
    waist: width,
    outline: width === breadth ? rectangle(width, top) : ell(width, breadth, height, top),
    tag: { area: { box: { x0: 0, x1: breadth, y0: height, y1: top }, turn: 90 }, lettering, on: 'end' },
  };
};

const rectangle = (width: number, height: number): Point[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** A rectangle up to the step, `lower` wide, and one from there to the top, `upper` wide, as one outline. */
const ell = (lower: number, upper: number, step: number, top: number): Point[] => [
  [0, 0],
  [lower, 0],
  [lower, step],
  [upper, step],
  [upper, top],
  [0, top],
];
