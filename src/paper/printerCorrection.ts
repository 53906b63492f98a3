import { type Affine, compose, translation } from '../drawing/affine.ts';
import { movePlaced, type PrintPage } from '../drawing/printPage.ts';

/** How a printer errs, as far as four lengths on a sheet can tell: it makes of 1 mm `x` across and `y` up the sheet. */
export interface PrinterError {
  readonly x: number;
  readonly y: number;
  /** The sine of the angle that upright lines lean to the right. */
  readonly skew: number;
}

/** A printer that has been measured, to be put right. */
export interface Correction {
  /** The name that its user gave it. */
  readonly printer: string;
  readonly error: PrinterError;
}

/**
 * What undoes a printer's error, about the origin. The error takes (1, 0) to (x, 0) and (0, 1) to (y sin, y cos) of the
 * lean; this is its inverse.
 */
export const inverse = ({ x, y, skew }: PrinterError): Affine => {
  const upright = Math.sqrt(1 - skew * skew);
  return [1 / x, 0, -skew / (x * upright), 1 / (y * upright), 0, 0];
};

/** The page drawn so that it comes out of the erring printer true: everything on it moved about its middle. */
export const correctPage = (page: PrintPage, error: PrinterError): PrintPage => {
  const toMiddle = translation(-page.width / 2, -page.height / 2);
  const back = translation(page.width / 2, page.height / 2);
  const correction = compose(compose(toMiddle, inverse(error)), back);
  return {
    ...page,
    placed: page.placed.map((each) => movePlaced(each, correction)),
  };
};
