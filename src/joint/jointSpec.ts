import type { Notation } from '../units/notation.ts';
import type { Slope } from '../units/slope.ts';
import type { KindWish } from './kinds/kinds.ts';

/** Equal tails, as many as given; without a number it is chosen. */
export interface EvenSpacing {
  readonly kind: 'even';
  readonly tails?: number;
}

/** Tails whose widths form a geometric series, as many as given; without a number it is chosen. */
export interface GradedSpacing {
  readonly kind: 'graded';
  readonly tails?: number;
  /** Each tail's width as a part of its neighbour's, 0.5 to 2. */
  readonly ratio: number;
  /** Counted from the reference edge up, or from the middle out to both edges. */
  readonly from: 'edge' | 'middle';
}

/** Equal tails in groups, with a wider pin between every two groups. */
export interface GroupedSpacing {
  readonly kind: 'grouped';
  /** How many there are in all: the sum of the groups. */
  readonly tails: number;
  /** How many are in each group, from the reference edge up. */
  readonly groups: readonly number[];
  /** Narrow width of the pins between groups, in mm; three pins unless given. */
  readonly groupPin?: number;
}

/** Tails that are equal in the middle and closer together towards both edges, as many as given; without a number it is chosen. */
export interface CloserSpacing {
  readonly kind: 'closer-edges';
  readonly tails?: number;
  /** Width of each narrower tail as a part of its inner neighbour's, 0.5 to 0.95. */
  readonly ratio: number;
  /** How many tails at either edge are narrower, 1 to 10. */
  readonly each: number;
}

/** Tails of given widths, in mm. */
export interface ListedSpacing {
  readonly kind: 'listed';
  /** Tip widths from the reference edge up. */
  readonly tails: readonly number[];
  /** Narrow widths of the whole pins between them, one fewer than the tails; absent, all are `pin` wide. */
  readonly pins?: readonly number[];
  /** How these widths are written, where it is not as the corner's other lengths are. */
  readonly notation?: Notation;
  /** Numbers of the widths that the page leaves as they are: 0 is the lower half pin, 1 the first tail, 2 the pin above it. */
  readonly locked?: readonly number[];
}

/** A spacing that follows from a number of tails. */
export type SharedSpacing = EvenSpacing | GradedSpacing | CloserSpacing | GroupedSpacing;

/** How the tails share what the pins leave of the width. */
export type Spacing = SharedSpacing | ListedSpacing;

/** Narrow widths of the outermost pins. */
export interface HalfPins {
  readonly lower: number;
  readonly upper: number;
}

/** Tails within tails: a small pin in the middle of each tail of a through joint. */
export interface HoundsTooth {
  /** Narrow width of the small pins, in mm; half a pin, and at least the narrowest chisel, unless given. */
  readonly smallPin?: number;
}

/** What may be wished of any corner, whatever its boards. Lengths in mm from the reference edge. */
export interface CornerWish {
  readonly spacing: Spacing;
  /** No small pins unless given. */
  readonly houndsTooth?: HoundsTooth;
  /**
   * How its lengths are written; `mm` unless given. In inches what is left out is in round inches, and a list of widths may
   * miss the board's by half a mark for every width, as a list that was told to the nearest mark does.
   */
  readonly notation?: Notation;
  /** 1:8 unless given. */
  readonly slope?: Slope;
  /** Narrow width of a pin; half the tail board's thickness, at least 3 (in inches to 1/32, at least 1/8), unless given. */
  readonly pin?: number;
  /** As wide as a pin unless given. */
  readonly halfPin?: HalfPins;
  /** How far the tail board is to be proud of the pins' ends, to be planed flush; 0 unless given. */
  readonly proud?: number;
  /** Which edges are mitred right through, where the kind leaves that open, so that no joint shows there; none unless given. */
  readonly shoulder?: 'lower' | 'upper' | 'both';
  /** How wide what is mitred is, in from the edge; what covers a groove there, the lap or a quarter of the tail board unless given. */
  readonly shoulderWidth?: number;
  /** The usual width of a lower shoulder where something along that edge sets it, as a groove that it covers. */
  readonly lowerShoulder?: number;
  /** How boards of unequal thickness meet where they are mitred: `corner`, from the inside corner to the outside corner. */
  readonly mitre?: 'corner';
  /** Width of the narrowest chisel in the rack; 3, or 1/8 in, unless given. */
  readonly chisel?: number;
}

/** What is wished of any corner of two boards. Lengths in mm from the reference edge. */
export interface CommonSpec extends CornerWish {
  /** Width of both boards at the joint. */
  readonly width: number;
  /** Thickness of the board that carries the tails. */
  readonly tailBoard: number;
  /** Thickness of the board that carries the pins. */
  readonly pinBoard: number;
}

/**
 * What is wished of one corner, its kind and that kind's own lengths with it: of a lapped one the `lap`, a quarter of the
 * pin board, to the half millimetre, at least 3 (in inches to 1/32, at least 1/8), unless given. Lengths in mm from the reference edge.
 */
export type JointSpec = CommonSpec & KindWish;
