import {
  type Interval,
  type Joint,
  type JointBoard,
  jointSpan,
  pinLength,
  shoulderZones,
} from '../../joint/joint.ts';
import { blockBetween, type ConvexBlock } from './convexBlock.ts';
import { type Place, SAME_PLACE } from './space.ts';

/** A section across the boards' width: mm along the tail board and along the pin board. */
type Section = readonly (readonly [y: number, z: number])[];

/**
 * Both boards of a closed corner as blocks that fill them and nowhere overlap, from the joint's numbers alone: the boards
 * up to their baselines, tails and pins, the laps beyond those, and what is mitred at the edges.
 * @param beyond how far either board goes on from the joint, in mm
 */
export const cornerBlocks = (
  joint: Joint,
  beyond: number,
): Readonly<Record<JointBoard, readonly ConvexBlock[]>> => {
  const { width, depth, tailBoard, pinBoard, tails, pins, mitre, proud } = joint;
  const [ts, tp] = [tailBoard.thickness, pinBoard.thickness];
  const across: Interval = [0, width];
  const span = jointSpan(joint);
  const under = ts - tailBoard.lap;
  const pinsEnd = pinLength(joint);
  const lapsEnd = ts - proud;
  // Laps of both boards meet in a mitre, where the corner has one; else the pin board's runs past the other.
  const isMitred = mitre !== undefined;
  return {
    tail: [
      ...bar(across, [
        [-beyond, 0],
        [-beyond, ts],
        [0, ts],
        [0, 0],
      ]),
      ...tails.map(({ base, tip }) => wedge(base, tip, depth, under)),
      ...bar(span, [
        [0, under],
        [0, ts],
        [isMitred ? tp : depth, ts],
        [depth, under],
      ]),
      ...shoulderZones(joint).flatMap((zone) =>
        bar(zone, [
          [0, 0],
          [0, ts],
          [tp, ts],
        ]),
      ),
    ],
    pin: [
      ...bar(across, [
        [0, -beyond],
        [tp, -beyond],
        [tp, 0],
        [0, 0],
      ]),
      ...pins.map(({ wide, narrow }) => wedge(wide, narrow, depth, pinsEnd)),
      ...bar(span, [
        [depth, 0],
        [tp, 0],
        [tp, lapsEnd],
        [depth, isMitred ? pinsEnd : lapsEnd],
      ]),
      ...shoulderZones(joint).flatMap((zone) =>
        bar(zone, [
          [0, 0],
          [tp, 0],
          [tp, ts],
        ]),
      ),
    ],
  };
};

/** A block of one section from one place across the boards to another; nothing where the section is flat, as that of a lap that is none. */
const bar = ([from, to]: Interval, section: Section): ConvexBlock[] => {
  const isFlat = ([0, 1] as const).some((axis) => {
    const values = section.map((corner) => corner[axis]);
    return Math.max(...values) - Math.min(...values) < SAME_PLACE;
  });
  if (isFlat) return [];
  const at = (x: number) => section.map(([y, z]): Place => [x, y, z]);
  return [blockBetween(at(from), at(to))];
};

/** A tail or a pin: its width where the tails have their bases and where they have their tips, its depth, and its length. */
const wedge = (bases: Interval, tips: Interval, depth: number, length: number): ConvexBlock => {
  const side = (which: 0 | 1): Place[] => [
    [bases[which], 0, 0],
    [tips[which], depth, 0],
    [tips[which], depth, length],
    [bases[which], 0, length],
  ];
  return blockBetween(side(0), side(1));
};
