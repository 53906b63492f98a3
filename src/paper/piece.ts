import type { Drawing } from '../drawing/drawing.ts';

/** Lines across a piece along which it is divided to fit its paper, mm on the piece. */
export interface Splits {
  /** Upright lines, left to right. */
  readonly x: readonly number[];
  /** Level lines, bottom to top. */
  readonly y: readonly number[];
}

/** A piece in one part. */
export const NO_SPLITS: Splits = { x: [], y: [] };

/** Width free of words on both sides of a split, for the join's letter and register crosses, mm. */
export const CLEAR_OF_SPLITS = 6;

/** A length between two marks of a piece, which a rule checks when its parts are taped. */
export interface TapedLength {
  /** In mm. */
  readonly length: number;
  /** The marks, from the fullest wording to the shortest: `reference edge to upper edge`. */
  readonly between: readonly [string, ...string[]];
}

/** A template, rod or guide at full size, to cut out: drawn whole or in parts. */
export interface Piece {
  /** Unique in its set, and safe as a file name on every system: `buttons-front-a`. */
  readonly name: string;
  /** Its title: `Buttons, front, left end, corner A`. */
  readonly title: string;
  /** Quantity of boards that it serves. */
  readonly count: number;
  /** How many of it serve all these boards; one for each by default. */
  readonly copies?: number;
  /** Size of the cutting outline from 0, 0, mm; marks may extend beyond it by `overhang` on each side. */
  readonly width: number;
  readonly height: number;
  readonly overhang: number;
  /** Places for splits, mm: every x listed; every y within the intervals, which cross no sloped line and are inside tails. */
  readonly splittable: { readonly x: readonly number[]; readonly y: readonly (readonly [number, number])[] };
  /** The length to check across its upright splits, and that across its level ones. */
  readonly taped: { readonly x?: TapedLength; readonly y: TapedLength };
  /** Draws it, every label `CLEAR_OF_SPLITS` from the splits and repeated on a part that would have none. */
  draw(splits: Splits): Drawing;
}

/** How often a piece is printed for all boards that it serves. */
export const copiesOf = ({ copies, count }: Piece): number => copies ?? count;

/** Heights free for words on each part of a piece, from the lowest up, clear of the joins at its ends. */
export const betweenSplits = (
  splits: readonly number[],
  height: number,
): (readonly [from: number, to: number])[] => {
  const starts = [0, ...splits.map((y) => y + CLEAR_OF_SPLITS)];
  const ends = [...splits.map((y) => y - CLEAR_OF_SPLITS), height];
  return starts.map((from, i) => [from, ends[i] ?? height]);
};
