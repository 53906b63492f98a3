import { frontShape, groovedEnds } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** Least wood between the sides' front ends and a groove that stops short of them, in mm. */
export const LEAST_STOP = 1;

/**
 * The furthest from the sides' front ends that a stopped groove may begin, in mm: where the bottom's front edge lies, in
 * the front's groove; of a box from both ends alike, by the thinner of its front and back. A rebate stops in these, where the
 * bottom begins in the sides.
 */
export const latestStop = (drawer: DrawerSpec): number => {
  const { groove, stock } = drawer;
  if (groove.rebate) return stock.side.thickness - groove.depth;
  const behindLaps = groovedEnds(drawer).map(
    ({ spec }) => spec.stock.front.thickness - frontShape(spec).setBack,
  );
  return Math.min(...behindLaps) - groove.depth;
};
