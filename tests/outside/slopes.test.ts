import { describe, expect, it } from 'vitest';
import { tailOutline } from '../../src/joint/tailOutline.ts';
import { degrees, parseSlope, type Slope } from '../../src/units/slope.ts';
import { jointOf } from '../joint/told.ts';
import { value } from '../value.ts';

const slopeOf = (text: string): Slope => value(parseSlope(text));

const RADIAN = 180 / Math.PI;

const RUNS = [2.5, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20];

describe('the angle of a slope', () => {
  // Tables of natural tangents (from memory), to a hundredth of a degree: tan 14.04° = 0.2500 and so on.
  it.each([
    ['1:4', 14.04],
    ['1:5', 11.31],
    ['1:6', 9.46],
    ['1:7', 8.13],
    ['1:8', 7.13],
    ['1:9', 6.34],
    ['1:10', 5.71],
  ])('of %s is %d° off square, as tables of tangents have it', (text, angle) => {
    expect(degrees(slopeOf(text))).toBeCloseTo(angle, 2);
  });

  // The language's own arc tangent (ECMA-262, Math.atan).
  it.each(RUNS)('of 1:%d is the arc tangent of its rise', (run) => {
    expect(degrees(slopeOf(`1:${run}`))).toBeCloseTo(Math.atan(1 / run) * RADIAN, 12);
  });

  it.each(RUNS)('of 1:%d reads back as the same slope', (run) => {
    expect(slopeOf(`${(Math.atan(1 / run) * RADIAN).toFixed(10)}deg`).run).toBeCloseTo(run, 7);
  });
});

/**
 * The framing-square construction (common practice; "Building Furniture", 2007, drawer article, draws a bevel so): hold
 * the square to the edge with the run on one arm and 1 on the other. The line through both marks is the slope; its
 * angle follows from the three sides of that triangle alone, by the law of cosines.
 */
const framingSquare = (run: number): number => {
  const line = Math.sqrt(run * run + 1);
  return Math.acos((run * run + line * line - 1) / (2 * run * line)) * RADIAN;
};

describe('a bevel drawn by joining a mark on either arm of a framing square', () => {
  it.each([6, 8])('1 in from the edge and %d in along it, has the angle of that slope', (run) => {
    expect(framingSquare(run)).toBeCloseTo(degrees(slopeOf(`1 in ${run}`)), 10);
  });

  it.each(RUNS)('lies on the side of a tail of 1:%d that is set out', (run) => {
    const joint = jointOf({
      kind: 'through',
      width: 120,
      tailBoard: 12,
      pinBoard: 15,
      slope: { run },
      spacing: { kind: 'even', tails: 3 },
    });
    for (const tail of joint.tails) {
      const [base, tip, farTip, farBase] = tailOutline(tail, joint);
      for (const [[x0, y0], [x1, y1]] of [
        [base, tip],
        [farBase, farTip],
      ] as const)
        expect(Math.atan2(Math.abs(x1 - x0), y1 - y0) * RADIAN).toBeCloseTo(framingSquare(run), 9);
      // Both sides lean away from the tail's middle: it is a dovetail, and not a finger or a wedge.
      expect(tip[0]).toBeLessThan(base[0]);
      expect(farTip[0]).toBeGreaterThan(farBase[0]);
    }
  });
});
