import type { Point } from '../drawing/drawing.ts';
import type { Joint, SmallPin, Tail } from './joint.ts';

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

/** The outlines of all tails, less the sockets of their small pins where they have some; closed, as `tailOutline`. */
export const tailOutlines = (joint: Joint): Point[][] =>
  joint.tails.map((tail, i) => {
    const [base0, tip0, tip1, base1] = tailOutline(tail, joint);
    const small = joint.smallPins?.[i];
    return [base0, tip0, ...(small === undefined ? [] : smallOutline(small, joint)), tip1, base1];
  });

/** The outline of a small pin, and so of its socket in the tail, in the order narrow, wide, wide, narrow; as `tailOutline`. */
export const smallOutline = (
  { narrow, wide, depth: deep }: SmallPin,
  { depth }: Pick<Joint, 'depth'>,
): readonly [Point, Point, Point, Point] => [
  [narrow[0], depth],
  [wide[0], depth - deep],
  [wide[1], depth - deep],
  [narrow[1], depth],
];
