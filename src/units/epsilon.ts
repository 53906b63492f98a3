/** What floats leave behind, in mm or as a plain number: less than this is no difference, and no check trips over it. */
export const EPSILON = 1e-9;
