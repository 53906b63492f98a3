/**
 * The search counts in ticks of 0.0001 mm, the last figure that is told of a length: whole numbers compare exactly, and what is
 * told is what was meant.
 */
const TICKS_PER_MM = 10_000;

/** Differences of floats, in ticks, that are no difference. */
export const DUST = 1e-3;

/** A place, in ticks, not rounded. */
export const exactTicks = (mm: number): number => mm * TICKS_PER_MM;

/** The least whole number of ticks that is not shorter. */
export const ticks = (mm: number): number => Math.ceil(exactTicks(mm) - DUST);

/** A place that was told in mm. */
export const nearestTick = (mm: number): number => Math.round(exactTicks(mm));

export const toMm = (ticks: number): number => ticks / TICKS_PER_MM;
