/**
 * Corners that laps close on both boards, as solids through manifold-3d (https://github.com/elalish/manifold,
 * Apache-2.0). The volumes expected are worked out by hand beside each check.
 */
import fc from 'fast-check';
import type { Vec3 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { closedSpec, jointsOf } from '../joint/anySpec.ts';
import { jointOf } from '../joint/told.ts';
import { assembled, near, RUNS, SKIN, within } from './cornerChecks.ts';
import { BEYOND, filled, overlap } from './jointSolids.ts';

const anyClosed = jointsOf(closedSpec);

describe('the boards of a corner that laps close on both, pushed together', () => {
  it('are nowhere in the same place, and leave no gap', () => {
    fc.assert(
      fc.property(anyClosed, (joint) => {
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

  it('come apart along the length of the pin board without touching', () => {
    fc.assert(
      fc.property(anyClosed, fc.double({ min: 0.01, max: 1.5, noNaN: true }), (joint, part) => {
        assembled(joint, (corner) =>
          near(overlap(corner, [0, 0, part * joint.tailBoard.thickness]), 0, joint),
        );
      }),
      RUNS,
    );
  });

  it('come apart in no other direction', () => {
    const part = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyClosed, fc.tuple(part, part, part), (joint, [x, y, z]) => {
        fc.pre(Math.hypot(x, y) > 0.1);
        assembled(joint, (corner) => {
          expect(overlap(corner, [x * 0.05, y * 0.05, z * 0.05])).toBeGreaterThan(1e-4);
        });
      }),
      RUNS,
    );
  });

  it('show of the pin board’s end grain, beside the tail board, a strip as wide as the lap, or none where they are mitred', () => {
    fc.assert(
      fc.property(anyClosed, (joint) => {
        const { width, tailBoard, pinBoard, mitre } = joint;
        const [ts, tp] = [tailBoard.thickness, pinBoard.thickness];
        assembled(joint, ({ pinBoard: board }) => {
          const strip = within(board, [0, -BEYOND, ts - SKIN], [width, tp, ts]) / (width * SKIN);
          // A skin deep a mitre leaves half a skin times its slope, at most 8 mm of lap to 1 mm.
          if (mitre === undefined) expect(strip).toBeCloseTo(pinBoard.lap, 6);
          else expect(strip).toBeLessThan(8 * SKIN);
        });
      }),
      RUNS,
    );
  });

  it('show no end grain of the tail board on the pin board’s outside face', () => {
    fc.assert(
      fc.property(anyClosed, (joint) => {
        const { width, tailBoard, pinBoard } = joint;
        const tp = pinBoard.thickness;
        assembled(joint, ({ tailBoard: board }) => {
          const seen =
            within(board, [0, tp - SKIN, -BEYOND], [width, tp, tailBoard.thickness]) / (width * SKIN);
          expect(seen).toBeLessThan(8 * SKIN);
        });
      }),
      RUNS,
    );
  });

  it('show at the edges of mitred ones one straight line, from the inside corner to the outside corner', () => {
    fc.assert(
      fc.property(
        anyClosed.filter(({ mitre }) => mitre !== undefined),
        (joint) => {
          const { width, tailBoard, pinBoard, shoulder } = joint;
          const [ts, tp] = [tailBoard.thickness, pinBoard.thickness];
          for (const [from, to] of [
            [0, shoulder.lower],
            [width - shoulder.upper, width],
          ] as const)
            assembled(joint, (corner) => {
              const box = [
                [from, 0, 0],
                [to, tp, ts],
              ] as const satisfies readonly [Vec3, Vec3];
              near(within(corner.tailBoard, ...box), ((to - from) * ts * tp) / 2, joint);
              near(within(corner.pinBoard, ...box), ((to - from) * ts * tp) / 2, joint);
            });
        },
      ),
      RUNS,
    );
  });
});

describe('a secret-mitred corner cut a tenth of a millimetre off', () => {
  it('is found out', () => {
    const joint = jointOf({
      kind: 'secret-mitred',
      width: 96,
      tailBoard: 18,
      pinBoard: 18,
      lap: 4,
      spacing: { kind: 'even', tails: 2 },
    });
    const tails = joint.tails.map(({ tip, base }) => ({ tip, base: [base[0], base[1] + 0.1] as const }));
    // Two wedges of 0.1 at the base, 14 long, 14 high.
    assembled({ ...joint, tails }, (corner) => expect(overlap(corner)).toBeCloseTo(19.6, 6));
  });
});
