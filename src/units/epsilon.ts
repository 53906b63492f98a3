/** What floats leave behind, in mm or as a plain number: less than this is no difference, and no check trips over it. */
export const EPSILON = 1e-9;

/** Up to the next of so many parts of a mm, so that what is shown or typed is enough; float dust is not past a part. */
export const roundUp = (value: number, partsOfMm: number): number =>
  Math.ceil(value * partsOfMm - EPSILON) / partsOfMm;
