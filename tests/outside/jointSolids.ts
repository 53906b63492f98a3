import type { Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';
import startManifold from 'manifold-3d';
import { gauges } from '../../src/joint/gauges.ts';
import type { Interval, Joint } from '../../src/joint/joint.ts';
import { kindOf } from '../../src/joint/kinds/kinds.ts';

/**
 * A corner as two solid boards, assembled. x runs across the boards' width from the reference edge; y along the tail
 * board's length, 0 at its baseline and the pin board's inside face, growing toward its tips; z along the pin board's
 * length, 0 at the tail board's inside face, growing toward the pin board's end.
 */
export interface CornerSolids {
  readonly tailBoard: Manifold;
  readonly pinBoard: Manifold;
}

/** How far each board goes on beyond the joint, in mm. */
export const BEYOND = 20;

/** manifold-3d, ready to work. */
export const startSolids = async (): Promise<ManifoldToplevel> => {
  const solids = await startManifold();
  solids.setup();
  return solids;
};

/**
 * Cuts both boards as a maker would who has only the numbers: the tail board from the tails and its own gauge setting,
 * the pin board from the pins and its two. Nothing of the one board goes into the other, so that they fit only if the
 * numbers do.
 */
export const cornerSolids = ({ Manifold }: ManifoldToplevel, joint: Joint): CornerSolids => {
  const { width, tailBoard, pinBoard, tails, pins } = joint;
  const gauge = gauges(joint);

  const block = (from: Vec3, to: Vec3): Manifold =>
    Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

  /** A bar across y from 0 to `depth` and across z from 0 to `length`, as wide at either end of y as is said. */
  const wedge = (near: Interval, far: Interval, depth: number, length: number): Manifold =>
    Manifold.hull(
      [0, length].flatMap((z): Vec3[] => [
        [near[0], 0, z],
        [near[1], 0, z],
        [far[0], depth, z],
        [far[1], depth, z],
      ]),
    );

  return {
    tailBoard: Manifold.union([
      block([0, -BEYOND, 0], [width, 0, tailBoard.thickness]),
      ...tails.map(({ tip, base }) => wedge(base, tip, gauge.tailBoard, tailBoard.thickness)),
    ]),
    pinBoard: Manifold.union([
      block([0, 0, -BEYOND], [width, pinBoard.thickness, 0]),
      ...pins.map(({ narrow, wide }) => wedge(wide, narrow, gauge.pinBoardEnd, gauge.pinBoardFace)),
      ...(kindOf(joint).sockets === 'stopped'
        ? [block([0, gauge.pinBoardEnd, 0], [width, pinBoard.thickness, gauge.pinBoardFace])]
        : []),
    ]),
  };
};

/** How much wood is in two places at once when the tail board is moved so, in mm³. */
export const overlap = ({ tailBoard, pinBoard }: CornerSolids, move: Vec3 = [0, 0, 0]): number => {
  const moved = tailBoard.translate(move);
  const shared = moved.intersect(pinBoard);
  const volume = shared.volume();
  moved.delete();
  shared.delete();
  return volume;
};

/** The volume that both boards fill together, in mm³. */
export const filled = ({ tailBoard, pinBoard }: CornerSolids): number => {
  const corner = tailBoard.add(pinBoard);
  const volume = corner.volume();
  corner.delete();
  return volume;
};

/** Gives back the memory that garbage collection does not reach. */
export const dispose = ({ tailBoard, pinBoard }: CornerSolids): void => {
  tailBoard.delete();
  pinBoard.delete();
};
