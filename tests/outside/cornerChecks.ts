// What is checked of corners as solids, through manifold-3d.
import type { Manifold, Vec3 } from 'manifold-3d';
import { expect } from 'vitest';
import type { Joint } from '../../src/joint/joint.ts';
import { BEYOND, type CornerSolids, cornerSolids, dispose, startSolids } from './jointSolids.ts';

const solids = await startSolids();

/** Enough to meet every kind of spacing, lap and default, and quick. */
export const RUNS = { numRuns: 40 };

/** How deep under a surface it is looked at, in mm. */
export const SKIN = 0.001;

export const assembled = (joint: Joint, check: (corner: CornerSolids) => void): void => {
  const corner = cornerSolids(solids, joint);
  try {
    check(corner);
  } finally {
    dispose(corner);
  }
};

/** What the sums are rounded by, against the boards' whole volume. */
export const near = (volume: number, expected: number, { width, pinBoard, tailBoard }: Joint): void => {
  const whole = width * (pinBoard.thickness + BEYOND) * (tailBoard.thickness + BEYOND);
  expect(Math.abs(volume - expected)).toBeLessThan(1e-9 * whole);
};

/** How much of a board lies in a box. */
export const within = (board: Manifold, from: Vec3, to: Vec3): number => {
  const box = solids.Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);
  const shared = board.intersect(box);
  const volume = shared.volume();
  box.delete();
  shared.delete();
  return volume;
};
