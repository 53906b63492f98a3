import type { Overhang } from '../router/passes/overhang.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** Where the sides go on past the back: always below it, and above it where it drops. */
export const sidesPastBack = ({ backDrop }: Pick<DrawerSpec, 'backDrop'>): Overhang => ({
  lower: true,
  upper: backDrop > 0,
});
