import { accept, type Complaint, type Result, refuse, under } from '../complaint.ts';
import { say } from '../units/phrase.ts';
import { formatPercent, parseMoisture } from './moisture.ts';
import { adviseMoisture, checkMaking } from './movement.ts';

/** Something known on the day of making and at both ends of the year that follows. */
export interface Through<T> {
  readonly making: T;
  readonly driest: T;
  readonly dampest: T;
}

/** Moisture content in percent: on the day of making, and when the piece is driest and dampest where it is kept. */
export type Climate = Through<number>;

/**
 * Reads a climate, each part as parseMoisture does.
 * @returns moisture contents with making at 6 % to 14 % and driest not over dampest, or every complaint, each at the part
 * that it is about
 */
export const parseClimate = (text: Through<string>): Result<Climate> => {
  const read = parseMoisture(text.making);
  const making = read.ok ? checkMaking(read.value) : read;
  const driest = parseMoisture(text.driest);
  const dampest = parseMoisture(text.dampest);
  const turned = driest.ok && dampest.ok && driest.value > dampest.value;
  if (making.ok && driest.ok && dampest.ok && !turned)
    return accept({ making: making.value, driest: driest.value, dampest: dampest.value });
  return refuse(
    ...complaintsAt('making', making),
    ...complaintsAt('driest', driest),
    ...complaintsAt('dampest', dampest),
    ...(turned ? [turnedRound(text, driest.value, dampest.value)] : []),
  );
};

/** Advice for each end of the year at which the published figures no longer hold. */
export const adviseClimate = (climate: Climate): Complaint[] => [
  ...adviseMoisture(climate.driest, ['driest']),
  ...adviseMoisture(climate.dampest, ['dampest']),
];

const complaintsAt = (key: keyof Climate, result: Result<number>): Complaint[] =>
  result.ok ? [] : under([key], result.complaints);

const turnedRound = (text: Through<string>, driest: number, dampest: number): Complaint => ({
  at: ['driest'],
  says: say`driest (${formatPercent(driest)} moisture content) must not be damper than dampest (${formatPercent(dampest)})`,
  hint: say`driest: ${text.dampest}, dampest: ${text.driest}`,
});
