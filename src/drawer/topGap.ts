import { GAP_BAND, gapToLeave } from '../wood/gapBand.ts';
import { widthCoefficient } from '../wood/movement.ts';
import type { Movement } from './drawerSpec.ts';

/**
 * The gap to leave above a drawer on the day of making, in mm, so that the least one is left when its front and its
 * sides are dampest: the larger of what the two ask for.
 * @param opening the opening's height
 */
export const topGap = (
  opening: number,
  { climate, front, side }: Pick<Movement, 'climate' | 'front' | 'side'>,
): number =>
  Math.max(
    ...[front, side].map(({ wood, cut }) =>
      gapToLeave(opening, widthCoefficient(wood, cut), climate, GAP_BAND.least),
    ),
  );
