/**
 * The search counts in ticks of a millionth of a mm, so that whole numbers compare exactly: mm to six figures and 1/64 in are
 * whole numbers of ticks.
 */
const TICKS_PER_MM = 1e6;

/** Differences of floats, in ticks, that are no difference. */
export const DUST = 1e-3;

/** A place, in ticks, not rounded. */
export const exactTicks = (mm: number): number => mm * TICKS_PER_MM;

/** The least whole number of ticks that is not shorter. */
export const ticks = (mm: number): number => Math.ceil(exactTicks(mm) - DUST);

/** A place that was told in mm. */
export const nearestTick = (mm: number): number => Math.round(exactTicks(mm));

export const toMm = (ticks: number): number => ticks / TICKS_PER_MM;
