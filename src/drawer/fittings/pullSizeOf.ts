import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import type { PullSpec } from './fittingSpec.ts';
import { nearestMarkIn } from './freeSpans.ts';
import { CLEAR_OF_HOLES, type PullGround } from './frontZones.ts';

/** What is wrong with the size of a pull, and the nearest that is right: itself where nothing is, undefined where none is. */
export interface PullSize {
  readonly complaints: readonly Complaint[];
  readonly fits: PullSpec['size'] | undefined;
}

/** A pull covers its holes, and is no larger than the front's face, or than its half where there are two. */
export const pullSizeOf = (
  { across: { number }, holes: { spacing, diameter }, size }: PullSpec,
  { zones: { length, width, between }, notation, lined }: PullGround,
): PullSize => {
  const isPair = number === 2 && lined === undefined;
  const fromEnd = Math.max(between[0], length - between[1]) + diameter / 2 + CLEAR_OF_HOLES + spacing / 2;
  const complaints: Complaint[] = [];
  const within = (
    key: 'width' | 'height',
    least: number,
    most: number,
    isTooLarge: Phrase,
  ): number | undefined => {
    const given = size[key];
    if (given >= least - EPSILON && given <= most + EPSILON) return given;
    const nearest = nearestMarkIn(given, least > most ? [] : [[least, most]], notation);
    complaints.push({
      at: ['pulls', 'size', key],
      says:
        given < least
          ? say`a pull ${mm(given)} ${ACROSS[key]} would not cover its holes, which take ${mm(least)}`
          : isTooLarge,
      ...(nearest !== undefined
        ? { hint: say`${nearest.word}` }
        : {
            remedy: isPair
              ? say`give it one pull (number: 1)`
              : say`make its holes smaller or closer (pulls: holes)`,
          }),
    });
    return nearest?.typed;
  };
  const fits = {
    width: within(
      'width',
      spacing + diameter,
      isPair ? Math.min(length / 2, length - 2 * fromEnd) : length,
      isPair
        ? say`two pulls ${mm(size.width)} wide would meet, or extend beyond the front, which is ${mm(length)} long`
        : say`a pull ${mm(size.width)} wide would extend beyond the front, which is ${mm(length)} long`,
    ),
    height: within(
      'height',
      diameter,
      width,
      say`a pull ${mm(size.height)} high would extend beyond the front, which is ${mm(width)} high`,
    ),
  };
  const { width: wide, height: high } = fits;
  return {
    complaints,
    fits: wide === undefined || high === undefined ? undefined : { width: wide, height: high },
  };
};

const ACROSS = { width: 'wide', height: 'high' } as const;
