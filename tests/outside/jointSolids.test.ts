/**
 * Both boards of a corner as solids through manifold-3d, an independent library of exact solid geometry
 * (https://github.com/elalish/manifold, Apache-2.0). The volumes expected are worked out by hand beside each check.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { kindOf } from '../../src/joint/kinds/kinds.ts';
import { jointsOf, listedSpec, ordinarySpec } from '../joint/anySpec.ts';
import { jointOf } from '../joint/told.ts';
import { assembled, near, RUNS } from './cornerChecks.ts';
import { BEYOND, filled, overlap } from './jointSolids.ts';

const anyJoint = jointsOf(fc.oneof(ordinarySpec, listedSpec));

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const size = ([from, to]: readonly [number, number]): number => to - from;

/** The step by which a board is moved, in mm: less than any size of a joint. */
const STEP = 0.05;

/** How far the pins reach into the tail board's thickness. */
const reach = ({ tailBoard, proud }: Joint): number => tailBoard.thickness - proud;

describe('the boards of any corner, pushed together', () => {
  it('are nowhere in the same place', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        assembled(joint, (corner) => near(overlap(corner), 0, joint));
      }),
      RUNS,
    );
  });

  it('leave no gap: they fill the corner of two whole boards', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { width, tailBoard, pinBoard, proud, tails } = joint;
        const wholeTailBoard = width * BEYOND * tailBoard.thickness;
        const wholePinBoard = width * pinBoard.thickness * (BEYOND + reach(joint));
        const standingProud =
          sum(tails.map(({ tip, base }) => (size(tip) + size(base)) / 2)) *
          (pinBoard.thickness - pinBoard.lap) *
          proud;
        assembled(joint, (corner) =>
          near(filled(corner), wholeTailBoard + wholePinBoard + standingProud, joint),
        );
      }),
      RUNS,
    );
  });

  it('come apart along the length of the pin board, out of its end, without touching', () => {
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0.01, max: 1.5, noNaN: true }), (joint, part) => {
        assembled(joint, (corner) =>
          near(overlap(corner, [0, 0, part * joint.tailBoard.thickness]), 0, joint),
        );
      }),
      RUNS,
    );
  });

  it('cannot be pulled apart along the length of the tail board: every tail binds on both its sides', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { tails, depth, slope } = joint;
        // A strip as wide as the slope makes the step, on each side, as long as what is left in the socket.
        const strip = (STEP / slope.run) * (depth - STEP);
        assembled(joint, (corner) =>
          near(overlap(corner, [0, -STEP, 0]), 2 * tails.length * strip * reach(joint), joint),
        );
      }),
      RUNS,
    );
  });

  it('cannot be pushed further along the length of the tail board: its shoulders meet the pins, its tips the lap', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { tails, pins, slope } = joint;
        // Both are a step thick and lose, over its thickness, the slope on either side of every tail.
        const slopes = (tails.length * STEP ** 2) / slope.run;
        const shoulders = sum(pins.map(({ wide }) => size(wide))) * STEP - slopes;
        const tips =
          kindOf(joint).sockets === 'open' ? 0 : sum(tails.map(({ tip }) => size(tip))) * STEP - slopes;
        assembled(joint, (corner) =>
          near(overlap(corner, [0, STEP, 0]), (shoulders + tips) * reach(joint), joint),
        );
      }),
      RUNS,
    );
  });

  it('cannot be pushed further along the length of the pin board: the tails meet the floor of their sockets', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const floors = sum(joint.tails.map(({ tip, base }) => ((size(tip) + size(base)) / 2) * joint.depth));
        assembled(joint, (corner) => near(overlap(corner, [0, 0, -STEP]), floors * STEP, joint));
      }),
      RUNS,
    );
  });

  it('cannot be shifted across the width, up or down', () => {
    fc.assert(
      fc.property(anyJoint, fc.constantFrom(STEP, -STEP), (joint, across) => {
        const sides = joint.tails.length * joint.depth * STEP * reach(joint);
        assembled(joint, (corner) => near(overlap(corner, [across, 0, 0]), sides, joint));
      }),
      RUNS,
    );
  });

  it('cannot be moved in any slanting direction either', () => {
    const part = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyJoint, fc.tuple(part, part, part), (joint, [x, y, z]) => {
        fc.pre(Math.hypot(x, y) > 0.1);
        assembled(joint, (corner) => {
          expect(overlap(corner, [x * STEP, y * STEP, z * STEP])).toBeGreaterThan(1e-4);
        });
      }),
      RUNS,
    );
  });
});

describe('boards cut to numbers that are a tenth of a millimetre off', () => {
  const spec: JointSpec = {
    kind: 'lapped',
    width: 96,
    tailBoard: 11,
    pinBoard: 20,
    lap: 5,
    spacing: { kind: 'even', tails: 4 },
  };
  const joint = jointOf(spec);
  const whole = joint.width * (BEYOND * 11 + 20 * (BEYOND + 11));

  it('are found out where a tail is too wide', () => {
    const tails = joint.tails.map(({ tip, base }, i) =>
      i === 1 ? { tip, base: [base[0], base[1] + 0.1] as const } : { tip, base },
    );
    // A wedge of 0.1 at the base, 15 long, 11 thick.
    assembled({ ...joint, tails }, (corner) => {
      expect(overlap(corner)).toBeCloseTo(8.25, 6);
      expect(filled(corner)).toBeCloseTo(whole, 6);
    });
  });

  it('are found out where a pin is too narrow', () => {
    const pins = joint.pins.map((pin, i) =>
      i === 2 ? { ...pin, narrow: [pin.narrow[0], pin.narrow[1] - 0.1] as const } : pin,
    );
    assembled({ ...joint, pins }, (corner) => {
      expect(overlap(corner)).toBeCloseTo(0, 6);
      expect(filled(corner)).toBeCloseTo(whole - 8.25, 6);
    });
  });
});
