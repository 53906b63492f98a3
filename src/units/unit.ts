/** The unit a user reads and writes in; every computation is in mm. */
export type Unit = 'mm' | 'in';

/** The international inch, exact since 1959. */
export const MM_PER_INCH = 25.4;
