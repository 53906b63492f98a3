/** Tolerance for the rounding errors of floating-point numbers, in mm or as a plain number: a smaller difference is none. */
export const EPSILON = 1e-9;

/** Rounds up to the next of `partsOfMm` parts of a mm, so that a least length still holds when it is typed as shown. */
export const roundUp = (value: number, partsOfMm: number): number =>
  Math.ceil(value * partsOfMm - EPSILON) / partsOfMm;

/** Rounds down to the last of `partsOfMm` parts of a mm, so that a greatest length still holds when it is typed as shown. */
export const roundDown = (value: number, partsOfMm: number): number =>
  Math.floor(value * partsOfMm + EPSILON) / partsOfMm;
