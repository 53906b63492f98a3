import type { DrawerSpec } from '../drawerSpec.ts';

/** Least wood between the sides' front ends and a groove that stops short of them, in mm. */
export const LEAST_STOP = 1;

/**
 * The furthest from the sides' front ends that a stopped groove may begin, in mm: where the bottom's front edge lies, in
 * the front's groove.
 * @param lap the wood in front of the sides' ends, in mm
 */
export const latestStop = ({ stock, groove }: Pick<DrawerSpec, 'stock' | 'groove'>, lap: number): number =>
  stock.front.thickness - lap - groove.depth;
