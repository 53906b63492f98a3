import type { Complaint, Place } from '../complaint.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { formatSlope, SHALLOWEST_RUN, STEEPEST_RUN } from '../units/slope.ts';
import type { ResolvedSpec } from './defaults.ts';
import { DUST } from './dust.ts';
import * as limits from './limits.ts';

/** A complaint where a value is no number or lies outside its range. */
export const within = (at: Place, what: string, value: number, least: number, most: number): Complaint[] =>
  value >= least - DUST && value <= most + DUST
    ? []
    : [{ at, says: say`${what} is ${lengthOrNonsense(value)}; it must be ${mm(least)} to ${mm(most)}` }];

export const lengthOrNonsense = (value: number): Phrase =>
  Number.isFinite(value) ? say`${mm(value)}` : say`not a number`;

/** Everything that is wrong with the sizes of a wish, before any tail is placed. */
export const checkSizes = (spec: ResolvedSpec): Complaint[] => {
  const { width, tailBoard, pinBoard, lap, slope, pin, halfPin, proud, chisel } = spec;
  const { WIDTH_RANGE, THICKNESS_RANGE, CHISEL_RANGE, LEAST_PIN, LEAST_LAP, LEAST_SOCKET } = limits;
  const stock = [
    ...within(['width'], "the boards' width", width, WIDTH_RANGE.least, WIDTH_RANGE.most),
    ...within(
      ['tailBoard'],
      "the tail board's thickness",
      tailBoard,
      THICKNESS_RANGE.least,
      THICKNESS_RANGE.most,
    ),
    ...within(
      ['pinBoard'],
      "the pin board's thickness",
      pinBoard,
      THICKNESS_RANGE.least,
      THICKNESS_RANGE.most,
    ),
    ...within(['chisel'], 'the narrowest chisel', chisel, CHISEL_RANGE.least, CHISEL_RANGE.most),
  ];
  if (!(slope.run >= STEEPEST_RUN - DUST && slope.run <= SHALLOWEST_RUN + DUST))
    stock.push({
      at: ['slope'],
      says: say`the slope is ${formatSlope(slope)}; it must be 1:2.5 to 1:20`,
      hint: say`1:7`,
    });
  // What follows is measured against the stock, so it can only be judged where the stock is sound.
  if (stock.length > 0) return stock;
  const joint = [
    ...within(['pin'], "a pin's narrow width", pin, LEAST_PIN, width),
    ...within(['halfPin'], "the lower half pin's narrow width", halfPin.lower, LEAST_PIN, width),
    ...within(['halfPin'], "the upper half pin's narrow width", halfPin.upper, LEAST_PIN, width),
    ...within(['proud'], 'the amount to stand proud', proud, 0, tailBoard / 4),
  ];
  if (spec.kind === 'lapped') {
    if (pinBoard < LEAST_LAP + LEAST_SOCKET - DUST)
      joint.push({
        at: ['pinBoard'],
        says: say`the pin board is ${mm(pinBoard)} thick; a lapped joint needs at least ${mm(LEAST_LAP + LEAST_SOCKET)}`,
        hint: say`a through joint`,
      });
    else joint.push(...within(['lap'], `the lap`, lap, LEAST_LAP, pinBoard - LEAST_SOCKET));
  }
  return joint;
};
