import { type BottomSeason, bottomSeason } from '../wood/bottomSeason.ts';
import { depthLimit } from './arrangement/depthLimit.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** Least space behind a solid bottom when dampest, and diameter of its screws, in mm (common practice). */
const LEAST_BEHIND = 1;
const SCREW = 4;

/** Distance from the floor of the front's groove to the back's outside face, in mm; in a box, what the slack leaves between both grooves. */
export const flushDepth = ({ stock, groove, bottom, box }: DrawerSpec, { depth, inside }: Sizes): number =>
  box === undefined
    ? depth - stock.front.thickness + groove.depth
    : inside.depth + 2 * (groove.depth - bottom.slack);

/** How far behind the back a bottom may reach, in mm. */
const roomBehind = ({ space }: DrawerSpec): number =>
  space.kind === 'opening'
    ? Math.max(0, depthLimit(space).left - Math.max(LEAST_BEHIND, space.vent ?? 0))
    : 0;

/** A drawer's bottom through the year; absent where no climate is given, and in a box, whose grooves hold it on all sides. */
export const bottomThroughYear = (spec: DrawerSpec, sizes: Sizes): BottomSeason | undefined => {
  const { movement, box } = spec;
  if (movement === undefined || box !== undefined) return undefined;
  const flush = flushDepth(spec, sizes);
  return bottomSeason(movement.bottom, { flush, room: deepestBottom(spec, sizes) }, movement.climate, SCREW);
};

/** The deepest that a bottom may be: its opening leaves it that, in mm. */
export const deepestBottom = (spec: DrawerSpec, sizes: Sizes): number =>
  flushDepth(spec, sizes) + roomBehind(spec);

/** Depth to cut a bottom to, in mm, or as it came out: flush with the back, or shorter where its wood needs room to swell in its opening. */
export const bottomDepth = (spec: DrawerSpec, sizes: Sizes): number =>
  spec.bottom.depth ?? bottomThroughYear(spec, sizes)?.depth.making ?? flushDepth(spec, sizes);

/** Distance from the floor of the front's groove to the bottom's screws, in the middle of the back's thickness, in mm. */
export const screwPlace = (spec: DrawerSpec, sizes: Sizes): number =>
  flushDepth(spec, sizes) - spec.stock.back.thickness / 2;
