import type { Range } from '../units/range.ts';
import type { Seasonal } from '../wood/climate.ts';
import {
  GAP_BAND,
  type GapVerdict,
  gapsThroughYear,
  gapToLeave,
  judgeGaps,
  sizesThroughYear,
} from '../wood/gapBand.ts';
import { type SawnWood, thicknessCoefficient, widthCoefficient } from '../wood/movement.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec, Movement } from './drawerSpec.ts';

/** A gap in mm, when made and at both ends of the year, and whether the drawer sticks or the gap shows. */
export interface GapSeason {
  readonly gap: Seasonal<number>;
  /** Gaps that neither stick nor show; a hidden gap has no upper limit. */
  readonly band: Range;
  readonly verdict: GapVerdict;
}

/** Gaps round a drawer through the year. */
export interface Gaps {
  /** Above the front, or above the part of it that enters the opening. */
  readonly front: GapSeason;
  /** Above the sides. */
  readonly side: GapSeason;
  /** Beside each side, whose thickness grows outward beyond the front's ends, which do not move. */
  readonly beside: GapSeason;
  /** The gap to leave above on the day of making, so that the drawer never sticks. */
  readonly leave: number;
}

/** Behind a front a gap of any width is hidden. */
const HIDDEN: Range = { least: GAP_BAND.least, most: Number.POSITIVE_INFINITY };
/** Common practice: beside the sides less is enough to run free. */
export const BESIDE_BAND: Range = { least: 0.1, most: Number.POSITIVE_INFINITY };

/** The gaps round a drawer in its opening; absent where it has none, or where no climate is given. */
export const gapsOf = ({ space, movement, lip }: DrawerSpec, sizes: Sizes): Gaps | undefined => {
  if (space.kind === 'size' || movement === undefined) return undefined;
  const { climate, front, side } = movement;
  const { height } = space.opening;
  const left = (room: number, made: number, coefficient: number, band: Range): GapSeason => {
    const gap = gapsThroughYear(room, sizesThroughYear(made, coefficient, climate));
    return { gap, band, verdict: judgeGaps(gap, band) };
  };
  const above = ({ wood, cut }: SawnWood, made: number, band: Range) =>
    left(height, made, widthCoefficient(wood, cut), band);
  const wall = Math.max(sizes.wall.left, sizes.wall.right);
  return {
    front: above(front, sizes.height, lip !== undefined && lip.top > 0 ? HIDDEN : GAP_BAND),
    side: above(side, Math.max(sizes.sideHeight.left, sizes.sideHeight.right), HIDDEN),
    beside: left(space.fit.side + wall, wall, thicknessCoefficient(side.wood, side.cut), BESIDE_BAND),
    leave: topGap(height, movement),
  };
};

/**
 * The gap to leave above a drawer on the day of making, in mm, so that the least gap remains when its front and its
 * sides are dampest: the larger of those that the two need.
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
