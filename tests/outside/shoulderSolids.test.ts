/**
 * Corners with mitred shoulders, as solids through manifold-3d (https://github.com/elalish/manifold, Apache-2.0). The
 * volumes expected are worked out by hand beside each check.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shoulderZones } from '../../src/joint/joint.ts';
import { jointsOf, shoulderedSpec } from '../joint/anySpec.ts';
import { assembled, near, RUNS, SKIN, within } from './cornerChecks.ts';
import { BEYOND, filled, overlap } from './jointSolids.ts';

const anyShouldered = jointsOf(shoulderedSpec);

describe('the boards of a corner with mitred shoulders, pushed together', () => {
  it('are nowhere in the same place, and leave no gap', () => {
    fc.assert(
      fc.property(anyShouldered, (joint) => {
        const { width, tailBoard, pinBoard } = joint;
        const whole =
          width * (BEYOND * tailBoard.thickness + pinBoard.thickness * (BEYOND + tailBoard.thickness));
        assembled(joint, (corner) => {
          near(overlap(corner), 0, joint);
          near(filled(corner), whole, joint);
        });
      }),
      RUNS,
    );
  });

  it('show at a shoulder no end grain: only the tail board at its outside face, only the pin board at its own', () => {
    fc.assert(
      fc.property(anyShouldered, (joint) => {
        const [ts, tp] = [joint.tailBoard.thickness, joint.pinBoard.thickness];
        assembled(joint, ({ tailBoard, pinBoard }) => {
          for (const [from, to] of shoulderZones(joint)) {
            // Within a hair of the corner's edge the boards meet.
            const [y, z] = [tp - (2 * SKIN * tp) / ts, ts - (2 * SKIN * ts) / tp];
            expect(within(pinBoard, [from, 0, ts - SKIN], [to, y, ts])).toBeLessThan(1e-9);
            expect(within(tailBoard, [from, tp - SKIN, 0], [to, tp, z])).toBeLessThan(1e-9);
          }
        });
      }),
      RUNS,
    );
  });

  it('come apart along the length of the pin board, out of its end, and not along that of the tail board', () => {
    fc.assert(
      fc.property(anyShouldered, fc.double({ min: 0.01, max: 1.5, noNaN: true }), (joint, part) => {
        assembled(joint, (corner) => {
          near(overlap(corner, [0, 0, part * joint.tailBoard.thickness]), 0, joint);
          expect(overlap(corner, [0, -0.05, 0])).toBeGreaterThan(1e-4);
        });
      }),
      RUNS,
    );
  });
});
