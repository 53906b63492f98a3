import type { Drawer } from '../../drawer/drawer.ts';

/** From an inside corner to the one across, level, in mm: what shows whether a drawer is square. */
export const insideDiagonal = ({ sizes: { inside } }: Drawer): number =>
  Math.hypot(inside.width, inside.depth);
