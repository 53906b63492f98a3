import type { Climate } from './climate.ts';
import { sizeAt } from './movement.ts';

/** The gap at one time of the year. */
export interface GapPoint {
  /** The part of the year gone by since the wood was driest, 0 to 1; it is dampest at 0.5. */
  readonly time: number;
  /** Moisture content in percent. */
  readonly moisture: number;
  /** mm; negative where the part is larger than its opening. */
  readonly gap: number;
}

/**
 * The gap through a year, from driest through dampest to driest again, moisture content rising and falling as a cosine.
 * @param opening mm, taken as constant
 * @param made mm across the grain, on the day of making
 * @param coefficient change for 1 % of moisture content, as a fraction of the size
 * @param steps how many equal steps the year is cut into, at least 1; there is one point more than steps
 */
export const gapYear = (
  opening: number,
  made: number,
  coefficient: number,
  climate: Climate,
  steps: number,
): GapPoint[] =>
  Array.from({ length: steps + 1 }, (_, i): GapPoint => {
    const time = i / steps;
    const damp = (1 - Math.cos(2 * Math.PI * time)) / 2;
    const moisture = climate.driest + damp * (climate.dampest - climate.driest);
    return { time, moisture, gap: opening - sizeAt(made, coefficient, climate.making, moisture) };
  });
