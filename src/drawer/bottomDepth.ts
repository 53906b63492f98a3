import { type BottomSeason, bottomSeason } from '../wood/bottomSeason.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** What a solid bottom must leave free behind it when dampest, and how thick its screws are: common practice. */
const LEAST_BEHIND = 1;
const SCREW = 4;

/** From the bottom of the front's groove to the back's outer face. */
const flushDepth = ({ stock, groove }: DrawerSpec, { depth }: Sizes): number =>
  depth - stock.front.thickness + groove.depth;

/** The bottom through the year; absent where no climate is given. */
export const bottomThroughYear = (spec: DrawerSpec, sizes: Sizes): BottomSeason | undefined => {
  const { movement, space } = spec;
  if (movement === undefined) return undefined;
  const flush = flushDepth(spec, sizes);
  const behind = space.kind === 'opening' ? Math.max(0, space.fit.behind - LEAST_BEHIND) : 0;
  return bottomSeason(movement.bottom, { flush, room: flush + behind }, movement.climate, SCREW);
};

/** The depth to cut a bottom to: flush with the back, or as much shorter as its wood needs to swell in its opening. */
export const bottomDepth = (spec: DrawerSpec, sizes: Sizes): number =>
  bottomThroughYear(spec, sizes)?.depth.making ?? flushDepth(spec, sizes);

/** From the bottom of the front's groove to the screws that hold the bottom up, in the middle of the back. */
export const screwPlace = (spec: DrawerSpec, sizes: Sizes): number =>
  flushDepth(spec, sizes) - spec.stock.back.thickness / 2;
