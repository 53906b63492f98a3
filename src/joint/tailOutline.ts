import type { Point } from '../drawing/drawing.ts';
import type { Joint, Tail } from './joint.ts';

/**
 * The outline of a tail, and so of its socket: the same four corners serve both boards.
 * First coordinate mm from the reference edge, second mm from the base (0) to the tip (the joint's depth), in the
 * order base, tip, tip, base; the first two and the last two corners bound the sloped sides.
 */
export const tailOutline = (
  tail: Tail,
  joint: Pick<Joint, 'depth'>,
): readonly [Point, Point, Point, Point] => [
  [tail.base[0], 0],
  [tail.tip[0], joint.depth],
  [tail.tip[1], joint.depth],
  [tail.base[1], 0],
];
