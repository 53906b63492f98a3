import type { Box } from '../drawing/drawing.ts';
import type { Complaint } from '../units/complaint.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { inverse, type PrinterError } from './printerCorrection.ts';

/** Width and height in mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Default margin, mm. */
export const DEFAULT_MARGIN = 6;

/** Range of margins, mm: from the least of common printers to the most that leaves small paper room for a piece. */
export const MARGIN_RANGE = { least: 5, most: 20 };

/** Complaints about a margin, at `margin`. */
export const checkMargin = (margin: number): Complaint[] =>
  margin >= MARGIN_RANGE.least && margin <= MARGIN_RANGE.most
    ? []
    : [
        {
          at: ['margin'],
          says: say`the margin is ${mm(margin)}; it must be ${atLeast(MARGIN_RANGE.least)} to ${atMost(MARGIN_RANGE.most)}`,
          hint: say`${mm(DEFAULT_MARGIN)}`,
        },
      ];

/** Most that a printer's correction may enlarge a drawing in each direction, as a factor, and shear it for each mm of height, mm. */
const growth = (error: PrinterError | undefined) => {
  if (error === undefined) return { x: 1, y: 1, lean: 0 };
  const [a, , c, d] = inverse(error);
  return { x: Math.max(1, a), y: Math.max(1, d), lean: Math.abs(c) };
};

/**
 * The box of a page that may hold ink: inside its margins before and after the correction of the printer's error.
 * Symmetrical about the page's centre.
 */
export const printableBox = (
  { width, height }: Size,
  margin: number,
  error: PrinterError | undefined,
): Box => {
  const grow = growth(error);
  const up = (height / 2 - margin) / grow.y;
  const across = (width / 2 - margin - grow.lean * up) / grow.x;
  return { x0: width / 2 - across, y0: height / 2 - up, x1: width / 2 + across, y1: height / 2 + up };
};

/** Height of a page whose printable box is `height` high, mm. */
export const pageHeightFor = (height: number, margin: number, error: PrinterError | undefined): number =>
  height * growth(error).y + 2 * margin;
