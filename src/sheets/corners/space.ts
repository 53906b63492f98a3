/**
 * A place in a corner, or a direction, in mm: x across the boards from the reference edge, y along the tail board from its
 * baseline to its end, z along the pin board from the tail board's inside face to the pin board's end.
 */
export type Place = readonly [x: number, y: number, z: number];

export const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** From the first place to the second. */
export const between = (a: Place, b: Place): Place => [b[0] - a[0], b[1] - a[1], b[2] - a[2]];

export const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Of length 1 in the same direction. */
export const unit = (a: Place): Place => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** The place at a share of the way from one to another. */
export const partWay = (a: Place, b: Place, share: number): Place => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
  a[2] + (b[2] - a[2]) * share,
];

/** How far apart two places may be and still be one, in mm. */
export const SAME_PLACE = 1e-6;

export const isSame = (a: Place, b: Place): boolean => Math.hypot(...between(a, b)) < SAME_PLACE;
