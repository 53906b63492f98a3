/**
 * Hound's tooth and grouped corners, as solids through manifold-3d (https://github.com/elalish/manifold, Apache-2.0). The
 * volumes expected are worked out by hand beside each check.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupedSpec, jointsOf, toothedSpec } from '../joint/anySpec.ts';
import { assembled, near, RUNS, SKIN, within } from './cornerChecks.ts';
import { BEYOND, filled, overlap } from './jointSolids.ts';

const anyToothed = jointsOf(toothedSpec);

describe.each([
  ["hound's tooth", anyToothed],
  ['with its tails in groups', jointsOf(groupedSpec)],
])('the boards of a corner %s, pushed together', (_, anyJoint) => {
  it('are nowhere in the same place, and leave no gap', () => {
    fc.assert(
      fc.property(anyJoint, (joint) => {
        const { width, tailBoard, pinBoard } = joint;
        // A double-lapped tail board ends behind the pin board's lap, which fills the corner all the same.
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

  it('come apart along the length of the pin board, and not along that of the tail board', () => {
    fc.assert(
      fc.property(anyJoint, fc.double({ min: 0.01, max: 1.5, noNaN: true }), (joint, part) => {
        assembled(joint, (corner) => {
          near(overlap(corner, [0, 0, part * joint.tailBoard.thickness]), 0, joint);
          expect(overlap(corner, [0, -0.05, 0])).toBeGreaterThan(1e-4);
        });
      }),
      RUNS,
    );
  });
});

describe("a hound's tooth", () => {
  it('shows a small pin in the middle of each tail at both outside faces, and none behind half the depth', () => {
    fc.assert(
      fc.property(anyToothed, (joint) => {
        const { smallPins = [], tails } = joint;
        const [ts, tp] = [joint.tailBoard.thickness, joint.pinBoard.thickness];
        assembled(joint, ({ pinBoard, tailBoard }) => {
          smallPins.forEach(({ narrow, wide }, i) => {
            const across = narrow[1] - narrow[0];
            // A skin of the pin board's outside face and of its ends: all of both is the small pin's.
            const face = within(pinBoard, [narrow[0], tp - SKIN, 0], [narrow[1], tp, ts]);
            expect(face / (SKIN * ts * across)).toBeCloseTo(1, 6);
            const end = within(pinBoard, [narrow[0], tp / 2, ts - SKIN], [narrow[1], tp, ts]);
            expect(end / ((SKIN * across * tp) / 2)).toBeCloseTo(1, 6);
            // From half the depth inward the tail is whole, from side to side of its base.
            const [from, to] = tails[i]?.base ?? [0, 0];
            const core = within(tailBoard, [from, 0, 0], [to, tp / 2, ts]);
            expect(core / (((to - from) * ts * tp) / 2)).toBeCloseTo(1, 6);
            // Where the base is no wider than the small pin half way up, the pins beside it stand under its sides.
            const under = [Math.max(wide[0], from), Math.min(wide[1], to)] as const;
            expect(within(pinBoard, [under[0], 0, 0.01], [under[1], tp / 2 - 0.01, ts])).toBeLessThan(1e-6);
          });
        });
      }),
      RUNS,
    );
  });
});
