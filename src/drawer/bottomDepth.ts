import { type BottomSeason, bottomSeason } from '../wood/bottomSeason.ts';
import { depthLimit } from './arrangement/depthLimit.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** Least space behind a solid bottom when dampest, and diameter of its screws, in mm (common practice). */
const LEAST_BEHIND = 1;
const SCREW = 4;

/** Distance from the floor of the front's groove to the back's outside face, in mm. */
const flushDepth = ({ stock, groove }: DrawerSpec, { depth }: Sizes): number =>
  depth - stock.front.thickness + groove.depth;

/** The bottom through the year; absent where no climate is given. */
export const bottomThroughYear = (spec: DrawerSpec, sizes: Sizes): BottomSeason | undefined => {
  const { movement, space } = spec;
  if (movement === undefined) return undefined;
  const flush = flushDepth(spec, sizes);
  const behind =
    space.kind === 'opening'
      ? Math.max(0, depthLimit(space).left - Math.max(LEAST_BEHIND, space.vent ?? 0))
      : 0;
  return bottomSeason(movement.bottom, { flush, room: flush + behind }, movement.climate, SCREW);
};

/** Depth to cut a bottom to, in mm: flush with the back, or shorter where its wood needs room to swell in its opening. */
export const bottomDepth = (spec: DrawerSpec, sizes: Sizes): number =>
  bottomThroughYear(spec, sizes)?.depth.making ?? flushDepth(spec, sizes);

/** Distance from the floor of the front's groove to the bottom's screws, in the middle of the back's thickness, in mm. */
export const screwPlace = (spec: DrawerSpec, sizes: Sizes): number =>
  flushDepth(spec, sizes) - spec.stock.back.thickness / 2;
