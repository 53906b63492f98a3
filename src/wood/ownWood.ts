import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import type { Wood } from './species.ts';

/** A pair of figures across the rings and along them. */
export interface Pair {
  readonly radial: number;
  readonly tangential: number;
}

/** What a user knows of a wood that is not in the table. */
export type OwnFigures =
  /** Percent, from green to oven-dry, as wood data sheets give it; 0.5 to 20. */
  | { readonly shrinkage: Pair }
  /** Fraction of the size for 1 % of moisture content; what shrinkages of 0.5 % to 20 % come to. */
  | { readonly coefficient: Pair };

/**
 * The change of size for 1 % of moisture content, as a fraction of the size at 10 %, of wood that shrinks evenly by
 * `shrinkage` percent from 30 % moisture content to none: C = S / (30 (100 − 20 S/30)).
 * Wood Handbook (FPL-GTR-190), chapter 13, the basis of Table 13-5.
 */
export const coefficientOfShrinkage = (shrinkage: number): number =>
  shrinkage / (30 * (100 - (20 * shrinkage) / 30));

/** What a figure may be. The woods of the published table shrink by 3 % to 13 %. */
interface Limits {
  readonly name: 'shrinkage' | 'coefficient';
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  /** A pair as it may be typed: that of black cherry. */
  readonly example: string;
}

const SHRINKAGE: Limits = {
  name: 'shrinkage',
  least: 0.5,
  most: 20,
  unit: 'percent, from green to oven-dry',
  example: '{radial: 3.7, tangential: 7.1}',
};

const COEFFICIENT: Limits = {
  name: 'coefficient',
  least: Number(coefficientOfShrinkage(SHRINKAGE.least).toFixed(5)),
  most: Number(coefficientOfShrinkage(SHRINKAGE.most).toFixed(5)),
  unit: 'for 1 % of moisture content',
  example: '{radial: 0.00126, tangential: 0.00248}',
};

/**
 * A wood by the user's own figures.
 * @returns the wood, or a complaint for each figure that no wood has (at `shrinkage` or `coefficient`, then `radial` or
 * `tangential`), or one for a pair that is the wrong way round
 */
export const ownWood = (name: string, figures: OwnFigures): Result<Wood> => {
  if ('coefficient' in figures) {
    const complaints = doubts(COEFFICIENT, figures.coefficient);
    return complaints.length > 0
      ? refuse(...complaints)
      : accept({ name, ...figures.coefficient, source: 'own' });
  }
  const { radial, tangential } = figures.shrinkage;
  const complaints = doubts(SHRINKAGE, figures.shrinkage);
  return complaints.length > 0
    ? refuse(...complaints)
    : accept({
        name,
        radial: coefficientOfShrinkage(radial),
        tangential: coefficientOfShrinkage(tangential),
        source: 'own',
      });
};

const doubts = (limits: Limits, pair: Pair): Complaint[] => {
  const { name, least, most, unit, example } = limits;
  const outside = (['radial', 'tangential'] as const)
    .filter((way) => !(pair[way] >= least && pair[way] <= most))
    .map(
      (way): Complaint => ({
        at: [name, way],
        says: say`no wood has a ${way} ${name} of ${pair[way]}; it must be ${least} to ${most} (${unit})`,
        hint: say`${example}`,
      }),
    );
  if (outside.length > 0 || pair.radial <= pair.tangential) return outside;
  return [
    {
      at: [name],
      says: say`the radial ${name} of ${pair.radial} is over the tangential one of ${pair.tangential}; wood moves least across its rings`,
      hint: say`{radial: ${pair.tangential}, tangential: ${pair.radial}}`,
    },
  ];
};
