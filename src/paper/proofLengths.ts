import { accept, type Result, refuse } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import type { Paper } from './paperSizes.ts';
import { checkMargin, printableBox, type Size } from './printable.ts';
import type { PrinterError } from './printerCorrection.ts';

/** The lengths on a proof sheet as drawn, mm. */
export interface ProofLengths {
  /** Across the sheet and up it. */
  readonly x: number;
  readonly y: number;
  /** The diagonals: from the bottom left corner, and from the top left. */
  readonly d1: number;
  readonly d2: number;
}

/** Least unit of the sides, mm: 114 by 152 mm. On less, a steel rule cannot measure an error that would show in a drawer. */
const LEAST_UNIT = 38;

/** Room for the widths of the outer lines, mm. */
const LINES = 0.2;

/** Size of the proof sheet: a roll is cut to its width over √2. */
export const proofSize = ({ width, height, roll }: Paper): Size => ({
  width,
  height: roll ? width / Math.SQRT2 : height,
});

/** Distance between two ticks, mm: 10 mm or half an inch. */
export const proofStep = (unit: Unit): number => (unit === 'mm' ? 10 : MM_PER_INCH / 2);

/**
 * The lengths of the largest proof for a paper. Its sides are 3 to 4, so that the diagonals too are round numbers.
 * @returns a complaint at `margin` where it is out of range, or at `paper` where it is too small to measure on
 */
export const proofLengths = (
  paper: Paper,
  margin: number,
  unit: Unit,
  error?: PrinterError,
): Result<ProofLengths> => {
  const wrong = checkMargin(margin);
  if (wrong.length > 0) return refuse(...wrong);
  const { x0, y0, x1, y1 } = printableBox(proofSize(paper), margin, error);
  const [width, height] = [x1 - x0 - LINES, y1 - y0 - LINES];
  const step = proofStep(unit);
  const units = (across: number, up: number) =>
    Math.floor(Math.min(width / across, height / up) / step) * step;
  const [upright, lying] = [units(3, 4), units(4, 3)];
  const most = Math.max(upright, lying);
  if (most < LEAST_UNIT)
    return refuse({
      at: ['paper'],
      says: say`${paper.name} is too small for a proof that tells a printer's error`,
      hint: say`A5 or larger`,
    });
  return accept({
    x: (upright >= lying ? 3 : 4) * most,
    y: (upright >= lying ? 4 : 3) * most,
    d1: 5 * most,
    d2: 5 * most,
  });
};
