import type { Point } from '../drawing/drawing.ts';

/** What a board is bought for: parts of this name come out of it. Slips count as sides. */
export type StockName = 'front' | 'side' | 'back' | 'bottom';

/** What a defect is; a knot is sound where it is firm, loose where it may fall out. */
export type DefectKind =
  | 'sound knot'
  | 'loose knot'
  | 'check'
  | 'shake'
  | 'wane'
  | 'sapwood'
  | 'pith'
  | 'wormhole'
  | 'stain';

/** Wood that a part may have to stay clear of. */
export interface Defect {
  readonly kind: DefectKind;
  /** Its corners in the board's coordinates, in order; it may hang over the board's edge. */
  readonly outline: readonly Point[];
}

/**
 * One board as it lies, show face up: x along it from its left end, y across it from its lower edge, in mm, in the plan's own
 * coordinates.
 */
export interface Plank {
  readonly name: string;
  /** From 1 among the boards of one entry of the plan. */
  readonly copy: number;
  readonly stocks: readonly StockName[];
  /** As bought. */
  readonly thickness: number;
  /** Its corners in order, counterclockwise; it does not cross itself. */
  readonly outline: readonly Point[];
  readonly defects: readonly Defect[];
  /** Ends that have been cut already, off which nothing more is taken. */
  readonly clean: { readonly left: boolean; readonly right: boolean };
  /** Bent along its length: short parts go here first; or across its width: narrow ones. */
  readonly bow?: 'long' | 'cup';
  /** Spared while other boards do. */
  readonly keep: boolean;
  /** The end at which fronts begin. */
  readonly figure?: 'left' | 'right';
  /** Cuts that have been made: any first part of the cuts of an earlier answer, with the blanks that it gave. */
  readonly done?: { readonly cuts: readonly Cut[]; readonly blanks: readonly DoneBlank[] };
}

/**
 * One saw cut. Piece 0 is the board; cut k, from 0, ends its piece and makes piece 2k + 1, to the left or below, and 2k + 2, to
 * the right or above. It takes `at` to `at` + kerf; what it leaves empty does not exist.
 */
export interface Cut {
  readonly kind: 'crosscut' | 'rip';
  readonly piece: number;
  /** Where its kerf begins, in mm along x for a crosscut, along y for a rip. */
  readonly at: number;
}

/** A blank that has been cut already, as an earlier answer told it: the wanted piece that it is, and the piece it came from. */
export interface DoneBlank {
  /** Index of the wanted piece. */
  readonly wanted: number;
  readonly turned: boolean;
  readonly piece: number;
}
