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

/**
 * Units of the sides, mm, large to small: bars of 3 and 4, diagonals of 5. The largest end on a rule of 300 mm or 12 in;
 * with the least, an error shows that would show in a drawer. The lengths in mm and in inches for one paper are over 4 %
 * apart, more than any printer errs, so that neither is taken for the other.
 */
const UNITS: Readonly<Record<Unit, readonly number[]>> = {
  mm: [50, 40],
  in: [2.25 * MM_PER_INCH, 1.75 * MM_PER_INCH, 1.5 * MM_PER_INCH],
};

/** Room for the widths of the outer lines, mm. */
const LINES = 0.2;

/** Size of the proof sheet: a roll is cut to its width over √2. */
export const proofSize = ({ width, height, roll }: Paper): Size => ({
  width,
  height: roll ? width / Math.SQRT2 : height,
});

/**
 * The lengths of a proof: the largest that the paper has room for and an ordinary rule measures. Its sides are 3 to 4, so
 * that the diagonals too are round numbers.
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
  const fitting = (across: number, up: number): number =>
    UNITS[unit].find((each) => across * each <= width && up * each <= height) ?? 0;
  const [upright, lying] = [fitting(3, 4), fitting(4, 3)];
  const most = Math.max(upright, lying);
  if (most === 0)
    return refuse({
      at: ['paper'],
      says: say`${paper.name} is too small for a proof sheet`,
      hint: say`A4`,
    });
  return accept({
    x: (upright >= lying ? 3 : 4) * most,
    y: (upright >= lying ? 4 : 3) * most,
    d1: 5 * most,
    d2: 5 * most,
  });
};
