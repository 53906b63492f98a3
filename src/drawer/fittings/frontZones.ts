import type { Box } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import type { Notation } from '../../units/notation.ts';
import type { Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import type { Lock } from './fittings.ts';

/** Wood between a hole and what it must not meet, and room for the head of its screw inside, in mm (common practice). */
export const CLEAR_OF_HOLES = 3;

/** What a front has behind its face, in mm from its lower left corner, lip included, seen from the front. */
export interface FrontZones {
  /** Of the whole board. */
  readonly length: number;
  readonly width: number;
  /** What lies behind the lip: the whole front where it has none. */
  readonly box: Box;
  /** Between the sides' inside faces; outside are the corner joints. */
  readonly between: Interval;
  /** Heights of the groove for the bottom. */
  readonly groove: Interval;
}

/** What pulls are placed on. */
export interface PullGround {
  readonly zones: FrontZones;
  /** How what is suggested is typed. */
  readonly notation: Notation;
  /** What is let in there too. */
  readonly lock?: Lock;
  /** The middles of those that line up with others, in mm from the front's left end. */
  readonly lined?: readonly number[];
}

/** Where on a front its joints, its groove and its lip are. */
export const frontZones = (
  { groove: { offset, width } }: Pick<DrawerSpec, 'groove'>,
  { width: across, height, wall, rebate: { sides, top, bottom } }: Sizes,
): FrontZones => ({
  length: across + 2 * sides,
  width: height + top + bottom,
  box: { x0: sides, y0: bottom, x1: sides + across, y1: bottom + height },
  between: [sides + wall.left, sides + across - wall.right],
  groove: [bottom + offset, bottom + offset + width],
});
