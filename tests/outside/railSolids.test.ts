/**
 * A rail over the drawers and both sides that it is let into, as solids through manifold-3d (https://github.com/elalish/manifold,
 * Apache-2.0), cut from the numbers that are printed: the rail from its length, its tails and its gauge, the sockets from the
 * pins and from the sides' gauges. x runs from left to right from the left side's inside face, y back from the sides' front
 * edges, z up from their top ends.
 */
import fc from 'fast-check';
import type { Manifold, Vec3 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { jointRecord } from '../../src/joint/jointRecord.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { railLength, type TopRail } from '../../src/joint/topRail.ts';
import { layOutSingle } from '../../src/project/layOutSingle.ts';
import { startSolids } from './jointSolids.ts';

const { Manifold: Solid } = await startSolids();

/** How far down the sides go, mm. */
const DOWN = 80;
const SKIN = 0.01;

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Rails of ordinary sizes, in front or set back, that can be made. */
const anyRail = fc
  .record({
    width: size(30, 140),
    tailBoard: size(12, 32),
    pinBoard: size(12, 32),
    lap: size(3, 8),
    run: size(5, 10),
    lower: size(3, 9),
    upper: size(3, 9),
    between: size(60, 700),
    setBack: fc.oneof(fc.constant(0), size(0, 200)),
    behind: size(0, 100),
  })
  .map(({ run, lower, upper, between, setBack, behind, ...boards }) => {
    const spec: JointSpec = {
      kind: 'lapped',
      ...boards,
      slope: { run },
      halfPin: { lower, upper },
      spacing: { kind: 'even', tails: 1 },
    };
    const rail: TopRail = { between, setBack, sideWidth: setBack + boards.width + behind };
    return { rail, laid: layOutSingle({ spec, rail }, {}) };
  })
  .filter(({ laid }) => laid.ok);

const block = (from: Vec3, to: Vec3): Manifold =>
  Solid.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

/** Upright over `z`, from an interval across at one x to another at another. */
const wedge = (
  x: readonly [number, number],
  near: readonly number[],
  far: readonly number[],
  z: readonly [number, number],
): Manifold =>
  Solid.hull(
    z.flatMap((each): Vec3[] => [
      ...near.map((y): Vec3 => [x[0], y, each]),
      ...far.map((y): Vec3 => [x[1], y, each]),
    ]),
  );

/** The rail with its tails, and the two sides with their sockets. */
const carcaseOf = ({ rail, laid }: { rail: TopRail; laid: ReturnType<typeof layOutSingle> }) => {
  if (!laid.ok) throw new Error('filtered');
  const { tails, pins, gauges, width, tailBoard, pinBoard } = jointRecord('Rail', laid.value, 'mm');
  const { between, setBack, sideWidth } = rail;
  const back = ([from, to]: readonly [number, number]): number[] => [from + setBack, to + setBack];
  const [tail] = tails;
  const [front, behind] = pins;
  if (tail === undefined || front === undefined || behind === undefined)
    throw new Error('one tail, two pins');
  const tailLong = (railLength(rail, laid.value) - between) / 2;
  expect(tailLong).toBeCloseTo(gauges.tailBoard, 9);
  const thick: [number, number] = [-tailBoard.thickness, 0];
  const deep: [number, number] = [-gauges.pinBoardFace, 0];
  const mouth = back([front.wide[1], behind.wide[0]]);
  const floor = back([front.narrow[1], behind.narrow[0]]);
  const right = between + gauges.pinBoardEnd;
  return {
    joint: laid.value,
    rail: Solid.union([
      block([0, setBack, thick[0]], [between, setBack + width, 0]),
      wedge([0, -tailLong], back(tail.base), back(tail.tip), thick),
      wedge([between, between + tailLong], back(tail.base), back(tail.tip), thick),
    ]),
    sides: [
      block([-pinBoard.thickness, 0, -DOWN], [0, sideWidth, 0]).subtract(
        wedge([0, -gauges.pinBoardEnd], mouth, floor, deep),
      ),
      block([between, 0, -DOWN], [between + pinBoard.thickness, sideWidth, 0]).subtract(
        wedge([between, right], mouth, floor, deep),
      ),
    ] as const,
  };
};

const sharedBy = (one: Manifold, other: Manifold, move: Vec3 = [0, 0, 0]): number =>
  one.translate(move).intersect(other).volume();

describe('a rail over the drawers, between both sides', () => {
  it('fills its sockets, and is nowhere in the same place as the sides', () => {
    fc.assert(
      fc.property(anyRail, (made) => {
        const { rail, sides, joint } = carcaseOf(made);
        const { between, sideWidth } = made.rail;
        const boards = 2 * joint.pinBoard.thickness * sideWidth * DOWN;
        const whole = boards + between * joint.width * joint.tailBoard.thickness;
        for (const side of sides) expect(sharedBy(rail, side) / whole).toBeLessThan(1e-9);
        expect(Solid.union([rail, ...sides]).volume() / whole).toBeCloseTo(1, 7);
      }),
      { numRuns: 12 },
    );
  });

  it('comes out upward, and in no other direction', () => {
    fc.assert(
      fc.property(anyRail, size(0.05, 40), (made, by) => {
        const { rail, sides } = carcaseOf(made);
        const inTheWay = (move: Vec3): number =>
          sides.reduce((sum, side) => sum + sharedBy(rail, side, move), 0);
        expect(inTheWay([0, 0, by])).toBeLessThan(1e-6);
        for (const move of [
          [0, 0, -by],
          [by, 0, 0],
          [-by, 0, 0],
          [0, by, 0],
          [0, -by, 0],
        ] as Vec3[])
          expect(inTheWay(move.map((each) => each / 20) as Vec3)).toBeGreaterThan(1e-4);
        // The tails alone keep one side from going outward.
        expect(sharedBy(sides[0], rail, [-by / 20, 0, 0])).toBeGreaterThan(1e-4);
      }),
      { numRuns: 6 },
    );
  });

  it('shows nothing at the sides or in front of them, and its tails above', () => {
    fc.assert(
      fc.property(anyRail, (made) => {
        const { rail, sides, joint } = carcaseOf(made);
        const { sideWidth } = made.rail;
        const [ts, lap] = [joint.pinBoard.thickness, joint.pinBoard.lap];
        const [left] = sides;
        // A skin of the left side's outside face, and of the lap behind it, is all the side's.
        for (const deep of [SKIN, lap]) {
          const skin = block([-ts, 0, -DOWN], [-ts + deep, sideWidth, 0]);
          expect(sharedBy(skin, left) / skin.volume()).toBeCloseTo(1, 7);
        }
        const front = block([-ts, 0, -DOWN], [0, SKIN, 0]);
        expect(sharedBy(front, left) / front.volume()).toBeCloseTo(1, 7);
        // Above, a tail: as wide as the mean of its tip and its base, as long as the joint is deep.
        const [{ tip, base } = { tip: [0, 0], base: [0, 0] }] = joint.tails;
        const tail = (joint.depth * (tip[1] - tip[0] + base[1] - base[0])) / 2;
        const above = block([-ts, 0, -SKIN], [0, sideWidth, 0]);
        expect(sharedBy(above, rail) / (tail * SKIN)).toBeCloseTo(1, 6);
      }),
      { numRuns: 12 },
    );
  });
});
