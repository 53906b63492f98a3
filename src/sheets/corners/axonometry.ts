import type { Point } from '../../drawing/drawing.ts';
import { cross, dot, type Place, unit } from './space.ts';

/** How a corner is looked at, the boards' width upright: in a right projection, the three directions unlike foreshortened. */
export interface View {
  /** From the corner to the eye, far away; of length 1. */
  readonly eye: Place;
  /** To the right and upward in the picture; of length 1. */
  readonly right: Place;
  readonly up: Place;
}

const from = (eye: Place): View => {
  const right = unit(cross([1, 0, 0], eye));
  return { eye: unit(eye), right, up: unit(cross(eye, right)) };
};

/** From outside: both boards' ends are turned to the eye, the pin board's outside face more than the tail board's, so that no mitre is seen on its edge. */
export const OUTSIDE = from([0.5, 0.82, 0.57]);

/** Either board's inside face and its end, each to the eye: the tail board's end at the right, the pin board's at the left. */
export const INSIDE = { tail: from([0.5, 0.57, -0.82]), pin: from([0.5, -0.82, 0.57]) } as const;

/** Where a place is drawn, in mm. */
export const project = ({ right, up }: View, place: Place): Point => [dot(right, place), dot(up, place)];
