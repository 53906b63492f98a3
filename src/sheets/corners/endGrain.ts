import type { JointBoard } from '../../joint/joint.ts';
import type { View } from './axonometry.ts';
import type { ConvexBlock, Face } from './convexBlock.ts';
import { dot, type Place, partWay } from './space.ts';
import type { Segment } from './trueEdges.ts';

/** The direction in which the fibres of each board run. */
const FIBRES: Readonly<Record<JointBoard, Place>> = { tail: [0, 1, 0], pin: [0, 0, 1] };

/** A surface that crosses the fibres by less than this, the sine of 24 degrees, shows as long grain: the sides of every tail do. */
const LEAST_CROSSING = 0.4;

/** The lines on a square end are at 45 degrees: in planes of one x + y + z. */
const ACROSS: Place = [1, 1, 1];

/**
 * Lines on the surfaces of a board that cross its fibres, where it is to look like end grain.
 * @param apart how far apart they are in the picture, in mm
 */
export const endGrain = (board: JointBoard, block: ConvexBlock, view: View, apart: number): Segment[] =>
  block
    .filter(
      ({ outward }) =>
        Math.abs(dot(outward, FIBRES[board])) > LEAST_CROSSING && dot(outward, view.eye) > SEEN,
    )
    .flatMap((face) => hatched(face, apart * steepness(face, view)));

/** A surface that is turned to the eye by less than this is a line in the picture. */
const SEEN = 0.01;

/** How much x + y + z grows on a face for every mm of the picture, where it grows most. */
const steepness = ({ outward }: Face, { eye, right, up }: View): number => {
  const along = (way: Place): number =>
    dot(ACROSS, way) - (dot(ACROSS, eye) * dot(outward, way)) / dot(outward, eye);
  return Math.hypot(along(right), along(up));
};

/** The lines of a face in which planes x + y + z = k `step` meet it. */
const hatched = ({ corners }: Face, step: number): Segment[] => {
  const levels = corners.map((corner) => dot(ACROSS, corner) / step);
  const first = Math.floor(Math.min(...levels)) + 1;
  const count = Math.max(0, Math.ceil(Math.max(...levels)) - first);
  return Array.from({ length: count }, (_, i) => first + i).flatMap((k): Segment[] => {
    const [from, to] = corners.flatMap((a, i): Place[] => {
      const next = (i + 1) % corners.length;
      const [before, after] = [levels[i] ?? 0, levels[next] ?? 0];
      // A plane through a corner meets one of its two edges, not both.
      return before >= k === after >= k
        ? []
        : [partWay(a, corners[next] ?? a, (k - before) / (after - before))];
    });
    return from === undefined || to === undefined ? [] : [[from, to]];
  });
};
