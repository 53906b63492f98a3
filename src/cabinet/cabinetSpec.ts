import type { HeightRule } from './heightRule.ts';

/** One drawer's place in a row. Lengths in mm. */
export interface DrawerPlace {
  /** The drawer's name. */
  readonly name: string;
  /** Shared alike with the others in the row, unless given. */
  readonly width?: number;
}

/** Rows inside one place of a row: its neighbours stand as high as all of them. */
export interface RowsPlace {
  /** From the top; each from left to right. */
  readonly rows: readonly (readonly DrawerPlace[])[];
  readonly heights: HeightRule;
  readonly width?: number;
}

export type CabinetPlace = DrawerPlace | RowsPlace;

/** A cabinet as it is planned: its clear size inside, and how it is divided. Lengths in mm. */
export interface CabinetSpec {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** Thickness of a rail between two rows. */
  readonly rail: number;
  /** Thickness of a divider between two drawers of a row. */
  readonly divider: number;
  /** From the top; each from left to right. */
  readonly rows: readonly (readonly CabinetPlace[])[];
  readonly heights: HeightRule;
}
