import {
  besideSmallPin,
  type Interval,
  type Joint,
  type JointBoard,
  jointSpan,
  pinLength,
  type SmallPin,
  shoulderZones,
  type Tail,
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
  const { width, depth, tailBoard, pinBoard, tails, pins, smallPins = [], mitre, proud } = joint;
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
      ...tails.flatMap((tail, i) => tailBlocks(tail, smallPins[i], depth, under)),
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
      ...pins.map(({ wide, narrow }) => wedge([0, depth], wide, narrow, pinsEnd)),
      ...smallPins.map(({ wide, narrow, depth: deep }) =>
        wedge([depth - deep, depth], wide, narrow, pinsEnd),
      ),
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

/** A tail; with a small pin in it, the part behind that and one on either side of it. */
const tailBlocks = (
  { base, tip }: Tail,
  small: SmallPin | undefined,
  depth: number,
  length: number,
): ConvexBlock[] => {
  if (small === undefined) return [wedge([0, depth], base, tip, length)];
  const behind = depth - small.depth;
  const middle: Interval = [
    base[0] + ((tip[0] - base[0]) * behind) / depth,
    base[1] + ((tip[1] - base[1]) * behind) / depth,
  ];
  const [lower, upper] = besideSmallPin(middle, small.wide);
  const [lowerTip, upperTip] = besideSmallPin(tip, small.narrow);
  return [
    wedge([0, behind], base, middle, length),
    wedge([behind, depth], lower ?? middle, lowerTip ?? tip, length),
    wedge([behind, depth], upper ?? middle, upperTip ?? tip, length),
  ];
};

/** A tail or a pin, or a part of one: from one depth to another, its width at either, and its length. */
const wedge = ([from, to]: Interval, there: Interval, here: Interval, length: number): ConvexBlock => {
  const side = (which: 0 | 1): Place[] => [
    [there[which], from, 0],
    [here[which], to, 0],
    [here[which], to, length],
    [there[which], from, length],
  ];
  return blockBetween(side(0), side(1));
};
