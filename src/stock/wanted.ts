import type { DefectKind, StockName } from './plank.ts';

/** A rectangle of a blank as it lies not turned: x from its left end, y from the edge at the bottom, in mm. */
export interface Zone {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/** One blank that a set needs: a part, or a strip of one, as it is sawn from a board. In mm. */
export interface Wanted {
  readonly stock: StockName;
  /** Along the grain. */
  readonly length: number;
  readonly width: number;
  /** Least thickness of the board that it comes from. */
  readonly thickness: number;
  /** Defects that it may hold outside its zones. */
  readonly allows: readonly DefectKind[];
  /** Where it may hold no defect at all: joints and grooves. */
  readonly zones: readonly Zone[];
  /** A panel may also lie with its length across the board. */
  readonly eitherWay: boolean;
  /** A second try: laid out only after everything else, never missing. */
  readonly spare: boolean;
  /** Pieces with the same word lie next to each other in one board where that costs nothing: the sides of a drawer. */
  readonly beside?: string;
  /** Where it must lie. */
  readonly pin?: Pin;
}

/** A board that a blank must come out of, and its place there, where one is told. */
export interface Pin {
  /** Index of the board. */
  readonly plank: number;
  readonly place?: PinnedPlace;
}

/** How a pinned blank lies: its lower left corner on the board, in mm. */
export interface PinnedPlace {
  readonly x: number;
  readonly y: number;
  /** Half a turn in the plane. */
  readonly turned: boolean;
  /** Of a panel: with its length across the board. */
  readonly across: boolean;
}

/** Pieces whose figure should run on, all in one board and turned alike: a row end to end, a stack side by side. */
export interface RunWish {
  readonly kind: 'row' | 'stack';
  /** Indices of wanted pieces: a row from left to right, a stack from the bottom up. */
  readonly pieces: readonly number[];
}

/** What is lost in sawing and planing, in mm. */
export interface Saw {
  /** Lost in a cut. */
  readonly kerf: number;
  /** Cut off each end of a board that is not clean. */
  readonly ends: number;
  /** The least offcut worth keeping. */
  readonly keep: { readonly length: number; readonly width: number };
}
