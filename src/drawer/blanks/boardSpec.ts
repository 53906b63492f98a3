import type { Point } from '../../drawing/drawing.ts';
import type { Cut, DefectKind, Plank, StockName } from '../../stock/plank.ts';
import type { PartName } from '../partsList.ts';

/** One entry of a plan's boards: some equal boards, of which the first may be cut already. */
export interface BoardSpec {
  readonly plank: Omit<Plank, 'copy' | 'done'>;
  readonly count: number;
  /** What has been cut of the first, as an earlier answer told it. */
  readonly cut?: CutSpec;
}

/** Cuts that have been made, and the blanks that they gave. */
export interface CutSpec {
  readonly cuts: readonly Cut[];
  readonly blanks: readonly CutBlank[];
}

/** A blank that has been cut: which part it is, and where it lay on its board, in mm. */
export interface CutBlank {
  readonly drawer: string;
  readonly part: PartName;
  /** Absent for a spare. */
  readonly index?: number;
  readonly strip?: number;
  readonly spare?: boolean;
  readonly turned: boolean;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
  readonly piece: number;
}

/** Fronts whose figure should run on, by the names of their drawers: a row from left to right, a stack from the bottom up. */
export interface RunSpec {
  readonly kind: 'row' | 'stack';
  readonly drawers: readonly string[];
}

/** A part that must come out of a board, both by the names that are printed, and its place there. */
export interface PinSpec {
  readonly part: string;
  readonly board: string;
  /** The lower left corner of its blank, in mm. */
  readonly at?: Point;
  /** Half a turn in the plane. */
  readonly turned?: boolean;
  /** Of a panel: with its length across the board. */
  readonly across?: boolean;
}

/** The boards of a plan, and what is wished of the parts that come out of them. */
export interface BoardsSpec {
  readonly boards: readonly BoardSpec[];
  /** Defects that the parts of each stock may hold outside joints and grooves. */
  readonly allow: Readonly<Record<StockName, readonly DefectKind[]>>;
  readonly runs: readonly RunSpec[];
  /** Second tries of each size. */
  readonly spare: Readonly<Record<StockName, number>>;
  readonly pinned: readonly PinSpec[];
}
