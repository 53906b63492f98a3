import type { Complaint, Result } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { formatPercent, parseMoisture } from './moisture.ts';
import { adviseMoisture, checkMaking } from './movement.ts';

/** A value on the day of making and at both ends of the year that follows. */
export interface Seasonal<T> {
  readonly making: T;
  readonly driest: T;
  readonly dampest: T;
}

/** Moisture content in percent: on the day of making, and when the piece is driest and dampest where it is kept. */
export type Climate = Seasonal<number>;

/**
 * Reads the conditions on the day of making, as parseMoisture does.
 * @returns moisture content in percent, 6 to 14, or complaints with an empty place
 */
export const parseMaking = (text: string): Result<number> => {
  const read = parseMoisture(text);
  return read.ok ? checkMaking(read.value) : read;
};

/** A complaint at `driest` where it is damper than `dampest`. */
export const checkYear = ({ driest, dampest }: Climate): Complaint[] =>
  driest <= dampest
    ? []
    : [
        {
          at: ['driest'],
          says: say`driest (${formatPercent(driest)} moisture content) is damper than dampest (${formatPercent(dampest)}); driest must be the drier of the two`,
          remedy: say`exchange the two`,
        },
      ];

/** Advice for each end of the year at which the published figures no longer hold. */
export const adviseClimate = (climate: Climate): Complaint[] => [
  ...adviseMoisture(climate.driest, ['driest']),
  ...adviseMoisture(climate.dampest, ['dampest']),
];
