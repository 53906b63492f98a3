import type { Point } from './drawing.ts';

/** A plane map (x, y) → (a x + c y + e, b x + d y + f), in the order that PDF and SVG use. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

export const translation = (x: number, y: number): Affine => [1, 0, 0, 1, x, y];

// By index, not by destructuring: this runs for every point of every drawing.
export const apply = (map: Affine, point: Point): Point => [
  map[0] * point[0] + map[2] * point[1] + map[4],
  map[1] * point[0] + map[3] * point[1] + map[5],
];

/** The map of `first` followed by `second`. */
export const compose = (first: Affine, second: Affine): Affine => {
  const [a, b, c, d, e, f] = second;
  const [p, q, r, s, t, u] = first;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
};
