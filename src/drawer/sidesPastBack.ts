import type { GoesOn } from '../guided/goesOn.ts';
import type { DrawerSpec } from './spec.ts';

/** Where the sides go on past the back: always below it, and above it where it drops. */
export const sidesPastBack = ({ backDrop }: Pick<DrawerSpec, 'backDrop'>): GoesOn => ({
  lower: true,
  upper: backDrop > 0,
});
