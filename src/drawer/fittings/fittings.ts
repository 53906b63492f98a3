import type { Box, Point } from '../../drawing/drawing.ts';
import { EPSILON } from '../../units/epsilon.ts';

/** A hole to drill. In mm. */
export interface Hole {
  readonly at: Point;
  readonly diameter: number;
}

/** A pull where it is fixed. */
export interface Pull {
  /** Its middle. */
  readonly at: Point;
  /** From left to right. */
  readonly holes: readonly Hole[];
  /** What it covers, seen from the front. */
  readonly outline: Box;
}

/** Whether a pull is drawn round: one that is as wide as high. */
export const isRound = ({ outline: { x0, x1, y0, y1 } }: Pick<Pull, 'outline'>): boolean =>
  Math.abs(x1 - x0 - (y1 - y0)) < EPSILON;

/** A lock where it is let in. */
export interface Lock {
  readonly keyhole: Hole;
  /** What is let into the inside face, seen from the front. */
  readonly body: Box;
  readonly depth: number;
  /** From the upper edge that it is let into down to the keyhole's middle. */
  readonly pin: number;
}

/** The stops of one drawer where they are fixed. */
export interface Stops {
  /** The middle of each, from the left side of the opening; of a drawer without one, from its own left side. */
  readonly at: readonly number[];
  /** From the rail's front edge back to their front. */
  readonly behind: number;
  /** Along the rail, above it, and from front to back. */
  readonly width: number;
  readonly thickness: number;
  readonly depth: number;
  /** What is left between them and the underside of the bottom. */
  readonly under: number;
}

/** What is fixed to a drawer's front, in mm from the front's lower left corner, lip included, seen from the front; and its stops. */
export interface Fittings {
  readonly pulls: readonly Pull[];
  readonly lock?: Lock;
  readonly stops?: Stops;
}
