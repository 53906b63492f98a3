import { type Affine, compose, translation } from '../drawing/affine.ts';
import { movePlaced, type PrintPage } from '../drawing/printPage.ts';

/** A printer error, as four lengths on a sheet show it: 1 mm is printed as `x` mm across and `y` mm up the sheet. */
export interface PrinterError {
  readonly x: number;
  readonly y: number;
  /** Sine of the angle of upright lines to the right of upright. */
  readonly skew: number;
}

/** A measured printer, to correct for. */
export interface Correction {
  /** The user's name for it. */
  readonly printer: string;
  readonly error: PrinterError;
}

/**
 * The inverse of a printer's error, about the origin. The error maps (1, 0) to (x, 0) and (0, 1) to (y sin a, y cos a),
 * where sin a is the skew.
 */
export const inverse = ({ x, y, skew }: PrinterError): Affine => {
  const upright = Math.sqrt(1 - skew * skew);
  return [1 / x, 0, -skew / (x * upright), 1 / (y * upright), 0, 0];
};

/** The page corrected to print true on a printer with this error: everything on it mapped about its centre. */
export const correctPage = (page: PrintPage, error: PrinterError): PrintPage => {
  const toMiddle = translation(-page.width / 2, -page.height / 2);
  const back = translation(page.width / 2, page.height / 2);
  const correction = compose(compose(toMiddle, inverse(error)), back);
  return {
    ...page,
    placed: page.placed.map((each) => movePlaced(each, correction)),
  };
};
