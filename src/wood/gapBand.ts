import { EPSILON } from '../units/epsilon.ts';
import type { Range } from '../units/range.ts';
import type { Climate, Seasonal } from './climate.ts';
import { sizeAt } from './movement.ts';

/** The gaps above a drawer, in mm, between which it neither rubs nor looks slack (common practice under a rail). */
export const GAP_BAND: Range = { least: 0.5, most: 3 };

/** Verdict on a drawer's gap through the year. */
export type GapVerdict = 'fits' | 'sticks' | 'shows' | 'sticks and shows';

/**
 * A size across the grain, in mm, when made and at both ends of the year. The wood is taken to come to rest with each
 * season's air, so that it really moves no more than this.
 * @param made mm, on the day of making
 * @param coefficient change for 1 % of moisture content, as a fraction of the size; 0 for what does not move
 */
export const sizesThroughYear = (made: number, coefficient: number, climate: Climate): Seasonal<number> => ({
  making: made,
  driest: sizeAt(made, coefficient, climate.making, climate.driest),
  dampest: sizeAt(made, coefficient, climate.making, climate.dampest),
});

/** The gap above a part of these sizes, in mm; negative where the part is larger than its opening. The opening is taken as constant. */
export const gapsThroughYear = (opening: number, sizes: Seasonal<number>): Seasonal<number> => ({
  making: opening - sizes.making,
  driest: opening - sizes.driest,
  dampest: opening - sizes.dampest,
});

/** Whether a drawer sticks when dampest (a gap under the band) or shows when driest (a gap over it). */
export const judgeGaps = (gaps: Seasonal<number>, band: Range): GapVerdict => {
  const sticks = gaps.dampest < band.least - EPSILON;
  const shows = gaps.driest > band.most + EPSILON;
  if (sticks) return shows ? 'sticks and shows' : 'sticks';
  return shows ? 'shows' : 'fits';
};

/**
 * The largest size to make today that never grows beyond `most`, today included.
 * @param most mm, across the grain
 */
export const largestToMake = (most: number, coefficient: number, climate: Climate): number =>
  most / (1 + coefficient * Math.max(0, climate.dampest - climate.making));

/**
 * The gap to leave today, in mm, above a part that fills the rest of the opening, so that `least` is left when it is
 * dampest; never under `least`.
 */
export const gapToLeave = (opening: number, coefficient: number, climate: Climate, least: number): number =>
  opening - largestToMake(opening - least, coefficient, climate);
