import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { closerEdges, narrowestCloser } from '../../src/joint/closerSpacing.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { shares } from '../../src/joint/spacing.ts';
import { adviceFor, against, jointOf } from './told.ts';

/** 400 = 2 x 10 + 5 x 20 + 280 for the tails. */
const spec: JointSpec = {
  kind: 'through',
  width: 400,
  tailBoard: 19,
  pinBoard: 19,
  pin: 20,
  halfPin: { lower: 10, upper: 10 },
  spacing: closerEdges({ kind: 'even', tails: 6 }, 0.5),
};

const tips = (change: Partial<JointSpec> = {}): number[] =>
  jointOf({ ...spec, ...change } as JointSpec).tails.map(({ tip: [from, to] }) => to - from);

/** Everything close to what is expected of it. */
const near = (values: readonly number[], expected: readonly number[]): void => {
  expect(values).toHaveLength(expected.length);
  values.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 9);
  });
};

describe('tails that are closer at the edges', () => {
  it('are each a part of their inner neighbour, two at either edge, and equal between; pins stay as they are', () => {
    // Weights 1/4, 1/2, 1, 1, 1/2, 1/4 are 3.5 together, so one in the middle is 280 / 3.5 = 80.
    near(tips(), [20, 40, 80, 80, 40, 20]);
    const { pins, even } = jointOf(spec);
    near(
      pins.map(({ narrow: [from, to] }) => to - from),
      [10, 20, 20, 20, 20, 20, 10],
    );
    // No dividers step them.
    expect(even).toBe(false);
  });

  it('are two at either edge of 0.7 unless given, so that the outermost is half of one in the middle', () => {
    // 0.49 + 0.7 + 1 + 0.7 + 0.49 = 3.38; 2 x 10 + 4 x 20 + 338 = 438.
    near(tips({ width: 438, spacing: closerEdges({ kind: 'even', tails: 5 }) }), [49, 70, 100, 70, 49]);
  });

  it('may be one at either edge, or more', () => {
    // 1/2 + 4 + 1/2 = 5: 280 / 5 = 56.
    near(tips({ spacing: closerEdges({ kind: 'even', tails: 6 }, 0.5, 1) }), [28, 56, 56, 56, 56, 28]);
    // With three at either edge none is left between: 1/8, 1/4, 1/2 and again, 1.75 together.
    near(tips({ spacing: closerEdges({ kind: 'even', tails: 6 }, 0.5, 3) }), [20, 40, 80, 80, 40, 20]);
  });

  it('fill the width, lie alike from both edges, and are no wider than their inner neighbour', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0.5, max: 0.95, noNaN: true }),
        fc.integer({ min: 1, max: 10 }),
        (count, ratio, each) => {
          const spacing = closerEdges({ kind: 'even' }, ratio, each);
          const parts = shares(spacing, count);
          expect(parts.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
          near(parts.toReversed(), parts);
          for (let i = 1; i < count / 2; i++)
            expect(parts[i - 1]).toBeLessThanOrEqual((parts[i] ?? 0) * (1 + 1e-9));
          expect(narrowestCloser(spacing, count)).toBeCloseTo(Math.min(...parts), 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('are as many as look well unless given, and no more than leave the outermost a base', () => {
    const free = jointOf({ ...spec, spacing: closerEdges({ kind: 'even' }) });
    expect(free.tails.length).toBeGreaterThan(3);
    // Base 3 at 1:8 over 19 takes 3 + 4.75 = 7.75 of a tip, here a quarter of a middle one: 8 tails have 240 over weights
    // of 5.5, so 10.9 outermost, 9 have 220 over 6.5, 8.46, and 10 have 200 over 7.5, 6.67.
    const [told] = against({ ...spec, spacing: closerEdges({ kind: 'even', tails: 10 }, 0.5) });
    expect(told).toContain('tails: 10 tails are too many for 400 mm');
    expect(told).toContain('1 to 9');
    near(tips({ spacing: closerEdges({ kind: 'even', tails: 9 }, 0.5) }).slice(0, 1), [220 / 6.5 / 4]);
  });

  it('may be in any kind of corner', () => {
    for (const kind of ['lapped', 'double-lapped', 'secret-mitred'] as const)
      expect(jointOf({ ...spec, kind } as JointSpec).tails).toHaveLength(6);
  });

  it('are refused outside their ranges', () => {
    expect(against({ ...spec, spacing: closerEdges({ kind: 'even' }, 1.2, 0) })).toEqual([
      'closer: each tail nearer to the edge is 1.2 of its neighbour; it must be 0.5 to 0.95; try 0.7',
      'closerTails: 0 tails at either edge are narrower; it must be a whole number, 1 to 10; try 2',
    ]);
    expect(against({ ...spec, spacing: closerEdges({ kind: 'even', tails: 1.5 }, 0.9) })).toHaveLength(1);
  });

  it('are advised against where the board has too few for that', () => {
    expect(adviceFor(spec)).toEqual([]);
    expect(adviceFor({ ...spec, width: 250, spacing: closerEdges({ kind: 'even', tails: 3 }) })).toEqual([
      'closerTails: 3 tails are too few for 2 narrower ones at either edge and equal ones between; try 1, or use more tails',
    ]);
    expect(adviceFor({ ...spec, width: 200, spacing: closerEdges({ kind: 'even', tails: 2 }) })).toEqual([
      'closerTails: two tails have no wider ones between them: the joint is evenly spaced; use more tails',
    ]);
  });
});
