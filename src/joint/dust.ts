/** Float dust that no check may trip over, in mm. */
export const DUST = 1e-9;
