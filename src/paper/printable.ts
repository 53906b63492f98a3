import type { Box } from '../drawing/drawing.ts';
import type { Complaint } from '../units/complaint.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { inverse, type PrinterError } from './printerCorrection.ts';

/** Width and height in mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** What is left white at the edges of paper unless said otherwise, in mm. */
export const DEFAULT_MARGIN = 6;

/** What common printers leave white at the least, and what leaves small paper room for a piece. */
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

/** By how much the correction of a printer may enlarge what is drawn, each way, and lean it over for each mm of height. */
const growth = (error: PrinterError | undefined) => {
  if (error === undefined) return { x: 1, y: 1, lean: 0 };
  const [a, , c, d] = inverse(error);
  return { x: Math.max(1, a), y: Math.max(1, d), lean: Math.abs(c) };
};

/**
 * Where a page may hold ink: inside its margins before and after the printer's error is put right. Symmetrical about the
 * page's middle.
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

/** The height of a page whose printable box is `height` high. */
export const pageHeightFor = (height: number, margin: number, error: PrinterError | undefined): number =>
  height * growth(error).y + 2 * margin;
