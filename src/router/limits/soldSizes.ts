import type { SoldSizes } from '../../units/phrase.ts';
import { MM_PER_INCH } from '../../units/unit.ts';

const inches = (...sixteenths: readonly number[]): number[] =>
  sixteenths.map((each) => (each * MM_PER_INCH) / 16);

/** Outside diameters of guide bushes, in mm; in inches by sixteenths (common practice, from memory). */
export const BUSHES: SoldSizes = {
  mm: [8, 10, 11, 12, 14, 16, 17, 18, 20, 24, 27, 30, 40],
  in: inches(5, 6, 7, 8, 10, 12, 16),
};

/** Diameters of straight cutters, in mm (common practice, from memory). */
export const STRAIGHT_CUTTERS: SoldSizes = {
  mm: [3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 20],
  in: inches(2, 3, 4, 5, 6, 8, 10, 12),
};

/** Diameters of dovetail cutters, in mm (common practice, from memory). */
export const DOVETAIL_CUTTERS: SoldSizes = {
  mm: [6, 8, 9.5, 12.7, 14, 16, 20],
  in: inches(4, 5, 6, 8, 9, 10, 11, 12),
};
