import { accept, type Complaint, type Place, type Result, refuse } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { formatPercent, isWithin } from './moisture.ts';
import type { Wood } from './species.ts';

/** How a board is cut from the log: flatsawn has the rings along its width, quartersawn across it. */
export type Cut = 'flatsawn' | 'quartersawn';

/** A wood, and how its boards were cut. */
export interface SawnWood {
  readonly wood: Wood;
  readonly cut: Cut;
}

/** The moisture contents between which the published coefficients hold, in percent (Wood Handbook, chapter 13). */
const LEAST_MOISTURE = 6;
const MOST_MOISTURE = 14;

/**
 * Reads a cut, with or without a hyphen or a space; plainsawn is another word for flatsawn.
 * @returns the cut, or a complaint with an empty place
 */
export const parseCut = (text: string): Result<Cut> => {
  switch (text.toLowerCase().replace(/[\s-]/gu, '')) {
    case 'flatsawn':
    case 'plainsawn':
      return accept('flatsawn');
    case 'quartersawn':
      return accept('quartersawn');
    default:
      return refuse({
        at: [],
        says: say`${quote(text)} is not a cut; a board must be flatsawn or quartersawn`,
        hint: say`flatsawn`,
      });
  }
};

/** The change of a board's width for 1 % of moisture content, as a fraction of the width. */
export const widthCoefficient = (wood: Wood, cut: Cut): number =>
  cut === 'flatsawn' ? wood.tangential : wood.radial;

/** The change of a board's thickness for 1 % of moisture content, as a fraction of the thickness. */
export const thicknessCoefficient = (wood: Wood, cut: Cut): number =>
  cut === 'flatsawn' ? wood.radial : wood.tangential;

/**
 * How much wider, in the unit of `size`, wood becomes; negative where it shrinks: dD = D C (M_final − M_initial).
 * Wood Handbook (FPL-GTR-190), equation 13-2, for 6 % to 14 %.
 * @param size across the grain, at the moisture content `from`
 * @param coefficient change for 1 % of moisture content, as a fraction of the size
 * @param from moisture content in percent
 * @param to moisture content in percent
 * @example
 * ```ts
 * console.log(movement(200, 0.002, 8, 12).toFixed(1)); // 1.6
 * ```
 */
export const movement = (size: number, coefficient: number, from: number, to: number): number =>
  size * coefficient * (to - from);

/**
 * The size at the moisture content `to` of wood that measures `size` at `from`.
 * @example
 * ```ts
 * console.log(sizeAt(200, 0.002, 8, 12).toFixed(1)); // 201.6
 * ```
 */
export const sizeAt = (size: number, coefficient: number, from: number, to: number): number =>
  size + movement(size, coefficient, from, to);

/** Whether the equation holds. */
const isWithinRange = (moisture: number): boolean => isWithin(moisture, LEAST_MOISTURE, MOST_MOISTURE);

/** Refuses a moisture content, in percent, at which nothing should be made: the published equation does not start there. */
export const checkMaking = (moisture: number): Result<number> =>
  isWithinRange(moisture)
    ? accept(moisture)
    : refuse({
        at: [],
        says: say`wood of ${formatPercent(moisture)} moisture content is ${moisture < LEAST_MOISTURE ? 'too dry' : 'too wet'} to work to a size; when made it must be ${LEAST_MOISTURE} % to ${MOST_MOISTURE} %, where the published figures hold`,
        hint: say`21C/45%`,
      });

/** Advice on a moisture content, in percent, that wood may come to but beyond which the equation is only a guide. */
export const adviseMoisture = (moisture: number, at: Place): Complaint[] =>
  isWithinRange(moisture)
    ? []
    : [
        {
          at,
          says: say`at ${formatPercent(moisture)} moisture content the size is a rough guide; the published figures hold from ${LEAST_MOISTURE} % to ${MOST_MOISTURE} %`,
        },
      ];
