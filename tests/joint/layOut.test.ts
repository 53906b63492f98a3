import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint, Tail } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { told } from '../value.ts';
import { listedSpec, ordinarySpec, wildSpec } from './anySpec.ts';
import { jointOf } from './told.ts';

describe('a through joint of four even tails', () => {
  // 100 less half pins of 5 + 5 and three pins of 5 leaves 75: 18.75 a tail. Over 12 mm, 1:8 takes 1.5 from each side.
  const joint = jointOf({
    kind: 'through',
    width: 100,
    tailBoard: 10,
    pinBoard: 12,
    spacing: { kind: 'even', tails: 4 },
  });

  it('has each tail where the formula puts it', () => {
    expect(joint.tails).toEqual([
      { tip: [5, 23.75], base: [6.5, 22.25] },
      { tip: [28.75, 47.5], base: [30.25, 46] },
      { tip: [52.5, 71.25], base: [54, 69.75] },
      { tip: [76.25, 95], base: [77.75, 93.5] },
    ]);
  });

  it('has pins in all that the tails leave, a half pin at either edge', () => {
    expect(joint.pins).toEqual([
      { narrow: [0, 5], wide: [0, 6.5], half: true },
      { narrow: [23.75, 28.75], wide: [22.25, 30.25], half: false },
      { narrow: [47.5, 52.5], wide: [46, 54], half: false },
      { narrow: [71.25, 76.25], wide: [69.75, 77.75], half: false },
      { narrow: [95, 100], wide: [93.5, 100], half: true },
    ]);
  });

  it('repeats what it was made for', () => {
    expect(joint).toMatchObject({
      kind: 'through',
      width: 100,
      depth: 12,
      slope: { run: 8 },
      tailBoard: { thickness: 10, lap: 0 },
      pinBoard: { thickness: 12, lap: 0 },
      shoulder: { lower: 0, upper: 0 },
      setBack: 0,
      proud: 0,
      even: true,
      advice: [],
    });
  });
});

describe('a lapped joint with unequal half pins', () => {
  // 60 - 8 - 4 - 6 leaves 42: 21 a tail. Over 20 - 6 = 14 mm, 1:7 takes 2 from each side.
  it('loses the slope over the tails length only, and begins after the lower half pin', () => {
    const joint = jointOf({
      kind: 'lapped',
      width: 60,
      tailBoard: 12,
      pinBoard: 20,
      lap: 6,
      slope: { run: 7 },
      halfPin: { lower: 8, upper: 4 },
      spacing: { kind: 'even', tails: 2 },
    });
    expect(joint.depth).toBe(14);
    expect(joint.pinBoard).toEqual({ thickness: 20, lap: 6 });
    expect(joint.tails).toEqual([
      { tip: [8, 29], base: [10, 27] },
      { tip: [35, 56], base: [37, 54] },
    ]);
    expect(joint.pins.map(({ narrow }) => narrow)).toEqual([
      [0, 8],
      [29, 35],
      [56, 60],
    ]);
    expect(joint.pins.map(({ wide }) => wide)).toEqual([
      [0, 10],
      [27, 37],
      [54, 60],
    ]);
  });
});

describe('graded spacing', () => {
  const graded = (width: number, tails: number, from: 'edge' | 'middle', ratio = 0.5): Joint =>
    jointOf({
      kind: 'through',
      width,
      tailBoard: 10,
      pinBoard: 8,
      spacing: { kind: 'graded', tails, ratio, from },
    });
  const tips = (joint: Joint): (readonly number[])[] => joint.tails.map(({ tip }) => tip);

  it('from the edge makes each tail the given part of the one below it', () => {
    // 90 - 10 - 10 leaves 70 = 40 + 20 + 10.
    expect(tips(graded(90, 3, 'edge'))).toEqual([
      [5, 45],
      [50, 70],
      [75, 85],
    ]);
  });

  it('with a ratio over 1 makes the lowest tail the narrowest', () => {
    expect(tips(graded(90, 3, 'edge', 2))).toEqual([
      [5, 15],
      [20, 40],
      [45, 85],
    ]);
  });

  it('from the middle makes one tail of an odd number the widest', () => {
    // 70 = 17.5 + 35 + 17.5
    expect(tips(graded(90, 3, 'middle'))).toEqual([
      [5, 22.5],
      [27.5, 62.5],
      [67.5, 85],
    ]);
  });

  it('from the middle makes two tails of an even number the widest', () => {
    // 100 - 10 - 15 leaves 75 = 12.5 + 25 + 25 + 12.5.
    expect(tips(graded(100, 4, 'middle'))).toEqual([
      [5, 17.5],
      [22.5, 47.5],
      [52.5, 77.5],
      [82.5, 95],
    ]);
  });

  it('is even where its ratio is 1, and else is not', () => {
    expect(graded(90, 3, 'edge', 1).even).toBe(true);
    expect(graded(90, 3, 'edge', 0.99).even).toBe(false);
    expect(graded(90, 2, 'middle').even).toBe(true);
  });
});

describe('listed spacing', () => {
  const listed = (tails: number[], pins?: number[], width = 60): JointSpec => ({
    kind: 'through',
    width,
    tailBoard: 10,
    pinBoard: 8,
    spacing: { kind: 'listed', tails, ...(pins && { pins }) },
  });

  it('has tails and pins as they are listed, from the reference edge up', () => {
    // 5 + 20 + 4 + 12 + 3 + 11 + 5 = 60
    expect(jointOf(listed([20, 12, 11], [4, 3])).tails.map(({ tip }) => tip)).toEqual([
      [5, 25],
      [29, 41],
      [44, 55],
    ]);
  });

  it('makes all pins as wide as a pin where none are listed', () => {
    expect(jointOf(listed([20, 12, 8])).tails.map(({ tip }) => tip)).toEqual([
      [5, 25],
      [30, 42],
      [47, 55],
    ]);
  });

  it('is even where tails and pins are each of one width', () => {
    expect(jointOf(listed([22.5, 22.5])).even).toBe(true);
    expect(jointOf(listed([15, 15, 12], [4, 4])).even).toBe(false);
    expect(jointOf(listed([14, 14, 14], [3, 5])).even).toBe(false);
  });

  it('gives the last half pin what rounding left', () => {
    expect(jointOf(listed([22.5, 22.46])).pins.at(-1)?.narrow).toEqual([54.96, 60]);
  });

  it('has no alternatives', () => {
    expect(jointOf(listed([22.5, 22.5])).alternatives).toEqual([]);
  });
});

const interpolate = (a: number, b: number, t: number): number => a + (b - a) * t;

/** Where a joint is cut at a level from the baseline (0) to the tips (1): tails and pins, in order from the reference edge. */
const bandsAt = ({ tails, pins }: Joint, t: number): (readonly [number, number])[] =>
  pins.flatMap(({ narrow, wide }, i) => {
    const pin = [interpolate(wide[0], narrow[0], t), interpolate(wide[1], narrow[1], t)] as const;
    const tail = tails[i];
    if (tail === undefined) return [pin];
    return [
      pin,
      [interpolate(tail.base[0], tail.tip[0], t), interpolate(tail.base[1], tail.tip[1], t)] as const,
    ];
  });

const mirrored = ({ tails, width }: Joint): Tail[] =>
  [...tails].reverse().map(({ tip, base }) => ({
    tip: [width - tip[1], width - tip[0]],
    base: [width - base[1], width - base[0]],
  }));

const expectSameTails = (some: readonly Tail[], others: readonly Tail[]): void => {
  expect(some).toHaveLength(others.length);
  some.forEach((tail, i) => {
    const other = others[i];
    for (const end of [0, 1] as const) {
      expect(tail.tip[end]).toBeCloseTo(other?.tip[end] ?? Number.NaN, 8);
      expect(tail.base[end]).toBeCloseTo(other?.base[end] ?? Number.NaN, 8);
    }
  });
};

/** What holds for every joint that may be cut. */
const expectSound = (joint: Joint, spec: JointSpec): void => {
  const { tails, pins, depth, slope, width } = joint;
  expect(tails.length).toBeGreaterThanOrEqual(1);
  expect(pins).toHaveLength(tails.length + 1);
  expect(pins.map(({ half }) => half)).toEqual(pins.map((_, i) => i === 0 || i === tails.length));
  const sum = [...tails.map(({ tip }) => tip), ...pins.map(({ narrow }) => narrow)].reduce(
    (total, [from, to]) => total + to - from,
    0,
  );
  expect(sum).toBeCloseTo(width, 8);
  for (const { tip, base } of tails) {
    expect(base[0] - tip[0]).toBeCloseTo(depth / slope.run, 8);
    expect(tip[1] - base[1]).toBeCloseTo(depth / slope.run, 8);
    expect(base[1] - base[0]).toBeGreaterThan(3 - 1e-6);
  }
  // Listed widths may miss the board's by as much as rounding to the hundredth leaves; the last half pin takes it up.
  const loss = spec.spacing.kind === 'listed' ? 0.05 : 0;
  for (const { narrow } of pins) expect(narrow[1] - narrow[0]).toBeGreaterThan(1 - loss - 1e-6);
  for (const level of [0, 0.3, 1]) {
    let edge = 0;
    for (const [from, to] of bandsAt(joint, level)) {
      expect(from).toBeCloseTo(edge, 8);
      expect(to).toBeGreaterThan(from);
      edge = to;
    }
    expect(edge).toBeCloseTo(width, 8);
  }
  expect(depth).toBeCloseTo(joint.pinBoard.thickness - joint.pinBoard.lap, 9);
  if (spec.kind === 'lapped') {
    expect(joint.pinBoard.lap).toBeGreaterThan(1 - 1e-6);
    expect(depth).toBeGreaterThan(3 - 1e-6);
  } else expect(joint.pinBoard.lap).toBe(0);
};

describe('any wish', () => {
  it('of ordinary sizes gives a joint that fills the board, obeys its slope and keeps all limits, or says why not', () => {
    let cut = 0;
    fc.assert(
      fc.property(fc.oneof(ordinarySpec, listedSpec), (spec) => {
        const result = layOut(spec);
        if (result.ok) {
          cut++;
          expectSound(result.value, spec);
        } else expect(result.complaints.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
    // Else the property would hold of nothing.
    expect(cut).toBeGreaterThan(200);
  });

  it('of listed widths that fill the board is cut as it is listed', () => {
    fc.assert(
      fc.property(listedSpec, (spec) => {
        const { tails, pins } = jointOf(spec);
        if (spec.spacing.kind !== 'listed') throw new Error('not listed');
        expect(tails).toHaveLength(spec.spacing.tails.length);
        spec.spacing.tails.forEach((width, i) => {
          const { tip = [0, 0] } = tails[i] ?? {};
          expect(tip[1] - tip[0]).toBeCloseTo(width, 8);
        });
        spec.spacing.pins?.forEach((width, i) => {
          const { narrow = [0, 0] } = pins[i + 1] ?? {};
          expect(narrow[1] - narrow[0]).toBeCloseTo(width, 8);
        });
      }),
    );
  });

  it('of any numbers at all never throws, and what it gives is sound', () => {
    fc.assert(
      fc.property(wildSpec, (spec) => {
        const result = layOut(spec);
        if (result.ok) return expectSound(result.value, spec);
        expect(result.complaints.length).toBeGreaterThan(0);
        for (const line of told(result.complaints)) expect(line).not.toMatch(/undefined|\[object/u);
      }),
      { numRuns: 1000 },
    );
  });

  it('of a very long list is refused like any other', () => {
    const tails = new Array<number>(200_000).fill(1);
    const result = layOut({
      kind: 'through',
      width: 100,
      tailBoard: 10,
      pinBoard: 10,
      spacing: { kind: 'listed', tails },
    });
    expect(result.ok ? 0 : result.complaints.length).toBe(200_000);
  });

  it('is not changed by laying it out, and gives the same joint again', () => {
    fc.assert(
      fc.property(ordinarySpec, (spec) => {
        const before = structuredClone(spec);
        expect(layOut(spec)).toEqual(layOut(spec));
        expect(spec).toEqual(before);
      }),
    );
  });

  it('with its half pins swapped and its spacing turned round gives the mirror image', () => {
    fc.assert(
      fc.property(
        fc.oneof(ordinarySpec, listedSpec).filter((spec) => layOut(spec).ok),
        fc.record({
          lower: fc.double({ min: 1, max: 9, noNaN: true }),
          upper: fc.double({ min: 1, max: 9, noNaN: true }),
        }),
        (spec, someHalfPins) => {
          const { spacing } = spec;
          const halfPin = spacing.kind === 'listed' ? (spec.halfPin ?? someHalfPins) : someHalfPins;
          const result = layOut({ ...spec, halfPin });
          if (!result.ok) return;
          const joint = result.value;
          const turned =
            spacing.kind === 'listed'
              ? {
                  ...spacing,
                  tails: spacing.tails.toReversed(),
                  ...(spacing.pins && { pins: spacing.pins.toReversed() }),
                }
              : spacing.kind === 'graded' && spacing.from === 'edge'
                ? { ...spacing, tails: joint.tails.length, ratio: 1 / spacing.ratio }
                : spacing;
          const other = jointOf({
            ...spec,
            halfPin: { lower: halfPin.upper, upper: halfPin.lower },
            spacing: turned,
          });
          expectSameTails(other.tails, mirrored(joint));
        },
      ),
    );
  });
});
