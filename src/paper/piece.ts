import type { Drawing } from '../drawing/drawing.ts';

/** Where a piece is to be cut apart to fit its paper: lines across it, in its own mm. */
export interface Splits {
  /** Upright lines, left to right. */
  readonly x: readonly number[];
  /** Level lines, bottom to top. */
  readonly y: readonly number[];
}

/** A piece in one part. */
export const NO_SPLITS: Splits = { x: [], y: [] };

/** What a piece keeps clear of words on both sides of a split, for the join's letter and register crosses, in mm. */
export const CLEAR_OF_SPLITS = 6;

/** A template to be cut out and laid on wood: drawn at full size, whole or in parts. */
export interface Piece {
  /** Unique in its set, and safe as a file name on every system: `buttons-front-a`. */
  readonly name: string;
  /** What it is, in words: `Buttons, front, left end, corner A`. */
  readonly title: string;
  /** How many boards it serves. */
  readonly count: number;
  /** The cutting outline runs from 0, 0 to this; marks may stand out beyond it by `overhang` on each side. */
  readonly width: number;
  readonly height: number;
  readonly overhang: number;
  /** How far to the right it reaches below a tag on its top that stands out; its whole width unless given. */
  readonly waist?: number;
  /** Where a split may run: x anywhere listed; y anywhere within the intervals, which cross no sloped line and lie inside tails. */
  readonly splittable: { readonly x: readonly number[]; readonly y: readonly (readonly [number, number])[] };
  /** Draws it, every label `CLEAR_OF_SPLITS` off the splits and repeated where a part would be left without. */
  draw(splits: Splits): Drawing;
}

/** How far to the right a piece reaches below any tag. */
export const waistOf = ({ waist, width }: Piece): number => waist ?? width;

/** What each part of a piece leaves for words, from the bottom up: its height, clear of the joins at its ends. */
export const betweenSplits = (
  splits: readonly number[],
  height: number,
): (readonly [from: number, to: number])[] => {
  const starts = [0, ...splits.map((y) => y + CLEAR_OF_SPLITS)];
  const ends = [...splits.map((y) => y - CLEAR_OF_SPLITS), height];
  return starts.map((from, i) => [from, ends[i] ?? height]);
};
