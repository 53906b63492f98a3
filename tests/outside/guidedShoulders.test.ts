/**
 * What a dovetail cutter takes of corners with laps on both boards and of corners with mitred shoulders, as solids through
 * manifold-3d (https://github.com/elalish/manifold, Apache-2.0): the finished boards are cut to their gauges, and the
 * cutter's way is swept through them.
 */
import fc from 'fast-check';
import type { Manifold, Mat4 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import type { Interval, Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { SAME_WIDTH } from '../../src/router/limits/fitToCutter.ts';
import { layOutForCutter } from '../../src/router/limits/layOutForCutter.ts';
import { routerCut, tailsByHand } from '../../src/router/passes/routerCut.ts';
import { closedSpec, shoulderedSpec } from '../joint/anySpec.ts';
import { box, Solid, sweep, wasm } from './guidedSolids.ts';
import { BEYOND, cornerSolids, dispose } from './jointSolids.ts';

const anyCutter: fc.Arbitrary<Cutter> = fc.record({
  diameter: fc.constantFrom(8, 9.5, 12.7),
  angle: fc.constantFrom(6, 8, 10),
  length: fc.constant(20),
});

/** Corners that a cutter can cut, with that cutter. */
const cutBy = (specs: fc.Arbitrary<JointSpec>) =>
  fc
    .tuple(specs, anyCutter)
    .map(([{ slope: _, ...spec }, cutter]) => ({ cutter, laid: layOutForCutter(spec as JointSpec, cutter) }))
    .filter(({ laid }) => laid.ok)
    .map(({ cutter, laid }) => {
      if (!laid.ok) throw new Error('filtered');
      return { joint: laid.value, cutter };
    });

const RUNS = { numRuns: 8 };

/** The axis of the sweep to that of the corner's y: the cutter's end at its depth below the pin board's inside face … */
const intoFace = (depth: number): Mat4 => [1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, depth, 0, 1];
/** … and at the tail board's baseline. */
const INTO_END: Mat4 = [1, 0, 0, 0, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0, 0, 1];

const shared = (a: Manifold, b: Manifold): number => {
  const both = a.intersect(b);
  const volume = both.volume();
  both.delete();
  return volume;
};

/** What may be cut too much, in mm3: a space may be as much narrower than the cutter as no rule can show, and is taken for as wide. */
const dust = (joint: Joint, spaces: readonly number[], least: number): number =>
  spaces.reduce((sum, space) => sum + Math.min(SAME_WIDTH, Math.max(0, least - space)), 0) *
    joint.depth *
    joint.tailBoard.thickness +
  1e-3;
const widths = (intervals: readonly Interval[]): number[] => intervals.map(([from, to]) => to - from);

/** All that the cutter takes of the sockets: in from the pin board's end, to the stop. */
const socketsTaken = (joint: Joint, cutter: Cutter): Manifold => {
  const { pinCut } = routerCut(joint, cutter, 1);
  if (pinCut.kind !== 'round') throw new Error('sockets of a straight cutter');
  const end = joint.tailBoard.thickness - joint.proud;
  return Solid.union(
    pinCut.passes.map((centres) =>
      sweep(
        cutter,
        0,
        joint.depth,
        centres.flatMap((x): [number, number][] => [
          [x, end - pinCut.socket.stop],
          [x, end + cutter.diameter],
        ]),
      ).transform(intoFace(joint.depth)),
    ),
  );
};

describe('the sockets of a corner with two laps, or with mitred shoulders, cut along a guide', () => {
  const anyStopped = cutBy(fc.oneof(closedSpec, shoulderedSpec).filter(({ kind }) => kind !== 'through'));

  it('take nothing of pins, laps and shoulders', () => {
    fc.assert(
      fc.property(anyStopped, ({ joint, cutter }) => {
        const corner = cornerSolids(wasm, joint);
        const { width, pinBoard, tailBoard } = joint;
        const beyondBaseline = corner.pinBoard.intersect(
          box([0, 0, 0], [width, pinBoard.thickness, tailBoard.thickness]),
        );
        const spaces = widths(joint.tails.map(({ tip }) => tip));
        expect(shared(beyondBaseline, socketsTaken(joint, cutter))).toBeLessThan(
          dust(joint, spaces, cutter.diameter),
        );
        dispose(corner);
      }),
      RUNS,
    );
  });

  it('have room for all of every tail but its inside arrises, where those are to be rounded', () => {
    fc.assert(
      fc.property(anyStopped, ({ joint, cutter }) => {
        const { pinCut } = routerCut(joint, cutter, 1);
        if (pinCut.kind !== 'round') throw new Error('sockets of a straight cutter');
        const { fromFace, atBase } = pinCut.socket.ease;
        const taken = socketsTaken(joint, cutter);
        const pinsEnd = joint.tailBoard.thickness - joint.tailBoard.lap - joint.proud;
        expect(fromFace).toBeLessThan(pinsEnd);
        for (const { tip, base } of joint.tails) {
          const tail = Solid.hull(
            [0, pinsEnd].flatMap((z): [number, number, number][] => [
              [base[0], 0, z],
              [base[1], 0, z],
              [tip[0], joint.depth, z],
              [tip[1], joint.depth, z],
            ]),
          );
          const left = tail.subtract(taken);
          // Beyond where the round begins nothing is left; before it, no more than a square of its size on either side.
          const square = box([-1e4, -1, fromFace], [1e4, joint.depth + 1, pinsEnd]);
          expect(shared(left, square)).toBeLessThan(1e-3);
          expect(left.volume()).toBeLessThan(2 * atBase * fromFace * joint.depth);
          expect(left.volume()).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });

  it('are all that the cutter cuts: the tails are sawn', () => {
    fc.assert(
      fc.property(anyStopped, ({ joint, cutter }) => {
        expect(tailsByHand(routerCut(joint, cutter, 1))).toBe(true);
      }),
      RUNS,
    );
  });
});

describe('the spaces of a through corner with mitred shoulders, cut along a guide', () => {
  it('are cleared between the tails, and nothing of tails and shoulders is taken', () => {
    fc.assert(
      fc.property(cutBy(shoulderedSpec.filter(({ kind }) => kind === 'through')), ({ joint, cutter }) => {
        const { passes } = routerCut(joint, cutter, 1);
        const { lower, upper } = joint.shoulder;
        expect([passes[0]?.length === 0, passes.at(-1)?.length === 0]).toEqual([lower > 0, upper > 0]);
        const ts = joint.tailBoard.thickness;
        const corner = cornerSolids(wasm, joint);
        joint.pins.forEach(({ narrow, wide }, i) => {
          const centres = passes[i] ?? [];
          if (centres.length === 0) return;
          const way = centres.flatMap((x): [number, number][] => [
            [x, -BEYOND],
            [x, ts + BEYOND],
          ]);
          const taken = sweep(cutter, 0, joint.depth, way).transform(INTO_END);
          expect(shared(corner.tailBoard, taken)).toBeLessThan(dust(joint, widths([wide]), cutter.diameter));
          const pin = Solid.hull(
            [0, ts].flatMap((z): [number, number, number][] => [
              [wide[0], 0, z],
              [wide[1], 0, z],
              [narrow[0], joint.depth, z],
              [narrow[1], joint.depth, z],
            ]),
          );
          if (i > 0 && i < joint.pins.length - 1) expect(pin.subtract(taken).volume()).toBeLessThan(1e-3);
        });
        dispose(corner);
      }),
      RUNS,
    );
  });
});
