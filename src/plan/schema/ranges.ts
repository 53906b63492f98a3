import * as limits from '../../joint/limits.ts';

/** What a plan may say, in mm: generous, but such that every sum stays finite. What lies outside is a slip of the pen. */
export const SIZE = limits.WIDTH_RANGE;
export const THICKNESS = limits.THICKNESS_RANGE;
export const CHISEL = limits.CHISEL_RANGE;
export const PIN = { least: limits.LEAST_PIN, most: limits.WIDTH_RANGE.most };
export const LAP = { least: limits.LEAST_LAP, most: limits.THICKNESS_RANGE.most };
/** A listed tail at its tip; how wide it must be for its base, its layout says. */
export const TAIL = { least: limits.LEAST_BASE, most: limits.WIDTH_RANGE.most };
export const GAP = { least: 0, most: 1000 };
export const GROOVE = { least: 0.5, most: 100 };
/** From each tail to its neighbour. */
export const RATIO = limits.RATIO_RANGE;
/** Equal drawers. */
export const COUNT = { least: 1, most: 1000 };
/** Which of these a board has room for, its layout says. */
export const TAILS = { least: 1, most: 10_000 };
