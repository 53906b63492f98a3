import { between, cross, dot, type Place, unit } from './space.ts';

/** A flat face of a block: its corners in order, and its plane, `outward` · place = `level`. */
export interface Face {
  readonly corners: readonly Place[];
  /** Of length 1, away from the block. */
  readonly outward: Place;
  readonly level: number;
}

/** A solid with flat faces and no hollow. */
export type ConvexBlock = readonly Face[];

/**
 * The block between two flat ends with as many corners each, in the same order round; each side from an edge of the one to
 * that of the other must be flat.
 */
export const blockBetween = (from: readonly Place[], to: readonly Place[]): ConvexBlock => {
  const middle = mean([...from, ...to]);
  const sides = from.map((a, i): Place[] => {
    const next = (i + 1) % from.length;
    return [a, from[next] ?? a, to[next] ?? a, to[i] ?? a];
  });
  return [from, to, ...sides].map((corners) => faceOf(corners, middle));
};

const faceOf = (corners: readonly Place[], inside: Place): Face => {
  const [a, b, c] = corners;
  if (a === undefined || b === undefined || c === undefined)
    throw new Error('a face has three corners or more');
  const normal = unit(cross(between(a, b), between(a, c)));
  const outward: Place = dot(normal, between(inside, a)) > 0 ? normal : [-normal[0], -normal[1], -normal[2]];
  return { corners, outward, level: dot(outward, a) };
};

const mean = (places: readonly Place[]): Place => {
  const sum = (axis: 0 | 1 | 2): number => places.reduce((all, place) => all + place[axis], 0);
  return [sum(0) / places.length, sum(1) / places.length, sum(2) / places.length];
};

/** The same block, moved along the pin board. */
export const moved = (block: ConvexBlock, along: number): ConvexBlock =>
  block.map(({ corners, outward, level }) => ({
    corners: corners.map(([x, y, z]): Place => [x, y, z + along]),
    outward,
    level: level + outward[2] * along,
  }));
