import type { Point } from '../../drawing/drawing.ts';
import type { Surface } from '../../joint/kinds/kind.ts';
import type { Band } from './band.ts';
import { type Area, type Lettering, tagLength } from './lettering.ts';
import { isFace, type PlacedBand, placeBands } from './placedBand.ts';

/** A piece's bands in their places, its outline, mm, and its tag: extra paper for text where the grips are too short. */
export interface PieceShape {
  readonly placed: readonly PlacedBand[];
  readonly width: number;
  readonly height: number;
  readonly outline: readonly Point[];
  readonly tag?: { readonly area: Area; readonly lettering: Lettering };
}

/** Least breadth of a tag that lengthens a grip, mm: three lines of letters. */
const GRIP_TAG = 12;

/** The text of a piece. */
export interface PieceLettering {
  /** Whether all of it fits on the grips. */
  readonly fitsGrips: (placed: readonly PlacedBand[]) => boolean;
  /** All of it, for a tag beside this band. */
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
  if (face === undefined || fitsGrips(placed))
    return { placed, width, height, outline: rectangle(width, height) };
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
    outline: onLeft ? outline : outline.map(([x, y]): Point => [whole - x, y]),
    tag: {
      area: { box: { x0: onLeft ? 0 : width, x1: onLeft ? length : whole, y0: 0, y1: top }, turn: 0 },
      lettering,
    },
  };
};

const rectangle = (width: number, height: number): Point[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

/** An L-shaped outline: `lower` wide up to the step, and `upper` wide from there to the top, mm. */
const ell = (lower: number, upper: number, step: number, top: number): Point[] => [
  [0, 0],
  [lower, 0],
  [lower, step],
  [upper, step],
  [upper, top],
  [0, top],
];
