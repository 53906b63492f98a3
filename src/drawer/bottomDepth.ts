import { type BottomSeason, bottomSeason } from '../wood/bottomSeason.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** Least space behind a solid bottom when dampest, and diameter of its screws, in mm (common practice). */
const LEAST_BEHIND = 1;
const SCREW = 4;

/** Distance from the floor of the front's groove to the back's outside face, in mm; in a box, what the slack leaves between both grooves. */
const flushDepth = ({ stock, groove, bottom, box }: DrawerSpec, { depth, inside }: Sizes): number =>
  box === undefined
    ? depth - stock.front.thickness + groove.depth
    : inside.depth + 2 * (groove.depth - bottom.slack);

/** A drawer's bottom through the year; absent where no climate is given, and in a box, whose grooves hold it on all sides. */
export const bottomThroughYear = (spec: DrawerSpec, sizes: Sizes): BottomSeason | undefined => {
  const { movement, space, box } = spec;
  if (movement === undefined || box !== undefined) return undefined;
  const flush = flushDepth(spec, sizes);
  const behind = space.kind === 'opening' ? Math.max(0, space.fit.behind - LEAST_BEHIND) : 0;
  return bottomSeason(movement.bottom, { flush, room: flush + behind }, movement.climate, SCREW);
};

/** Depth to cut a bottom to, in mm: flush with the back, or shorter where its wood needs room to swell in its opening. */
export const bottomDepth = (spec: DrawerSpec, sizes: Sizes): number =>
  bottomThroughYear(spec, sizes)?.depth.making ?? flushDepth(spec, sizes);

/** Distance from the floor of the front's groove to the bottom's screws, in the middle of the back's thickness, in mm. */
export const screwPlace = (spec: DrawerSpec, sizes: Sizes): number =>
  flushDepth(spec, sizes) - spec.stock.back.thickness / 2;
