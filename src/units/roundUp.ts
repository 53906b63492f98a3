import { EPSILON } from './epsilon.ts';

/** Up to the next of so many parts of a mm, so that what is shown or typed is enough; float dust is not past a part. */
export const roundUp = (value: number, partsOfMm: number): number =>
  Math.ceil(value * partsOfMm - EPSILON) / partsOfMm;
