import type { Point } from '../../drawing/drawing.ts';
import type { Rebate } from '../drawerSizes.ts';

/** The outline of a drawer's front with its lip, seen from the front: mm from the lower left of all fronts together. */
export interface CabinetFront {
  /** Which of the set's drawers it is one of. */
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** How far it extends beyond the box behind it; all 0 where it has no lip. */
  readonly lip: Rebate;
}

/** Fronts as they stand in their cabinet: rows from the top down, each from left to right. */
export interface Cabinet {
  readonly width: number;
  readonly height: number;
  readonly rows: readonly (readonly CabinetFront[])[];
  /** How many drawers are left out: of a large set, or those that have no place in a planned cabinet. */
  readonly leftOut: number;
  /** Where the lower left of all fronts is from that of the planned cabinet's clear inside, in mm; absent where it is assumed. */
  readonly from?: Point;
  /** Whether the plan places them; if not, this arrangement is assumed. */
  readonly planned: boolean;
}
