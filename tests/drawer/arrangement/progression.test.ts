import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { progressionOf } from '../../../src/drawer/arrangement/progression.ts';

const MARK = 0.5;

describe('the progression of heights', () => {
  it('is arithmetic where each is as much higher than the one above, lower too', () => {
    expect(progressionOf([76, 94, 112, 130], MARK)).toEqual({
      kind: 'arithmetic',
      step: 18,
      isRounded: false,
    });
    expect(progressionOf([130, 112, 94], MARK)).toEqual({ kind: 'arithmetic', step: -18, isRounded: false });
  });

  it('is geometric where each is as many times as high', () => {
    // 80, 120, 180: each half as much again.
    expect(progressionOf([80, 120, 180], MARK)).toEqual({
      kind: 'geometric',
      ratio: expect.closeTo(1.5, 9),
      isRounded: false,
    });
  });

  it('is equal where all are', () => {
    expect(progressionOf([90, 90, 90], MARK)).toEqual({ kind: 'equal' });
    expect(progressionOf([90], MARK)).toEqual({ kind: 'equal' });
    // What cannot be shared in whole marks.
    expect(progressionOf([90, 90, 90.5], MARK)).toEqual({ kind: 'equal' });
  });

  it('is none of these where heights are free, and of two heights', () => {
    expect(progressionOf([76, 76, 110, 146, 190], MARK)).toEqual({ kind: 'free' });
    expect(progressionOf([76, 110], MARK)).toEqual({ kind: 'free' });
  });

  it('is found in heights that were rounded to a mark, up or down', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 120 }),
        fc.double({ min: 1.15, max: 1.6, noNaN: true }),
        fc.double({ min: 10, max: 40, noNaN: true }),
        fc.array(fc.boolean(), { minLength: 4, maxLength: 6 }),
        (first, ratio, step, ups) => {
          const rounded = (heights: readonly number[]) =>
            heights.map(
              (height, i) => (ups[i] === true ? Math.ceil(height * 2) : Math.floor(height * 2)) / 2,
            );
          const geometric = progressionOf(rounded(ups.map((_, i) => first * ratio ** i)), MARK);
          expect(geometric.kind).toBe('geometric');
          if (geometric.kind === 'geometric') expect(geometric.ratio).toBeCloseTo(ratio, 1);
          const arithmetic = progressionOf(rounded(ups.map((_, i) => first + step * i)), MARK);
          expect(arithmetic.kind).toBe('arithmetic');
          if (arithmetic.kind === 'arithmetic') expect(Math.abs(arithmetic.step - step)).toBeLessThan(0.5);
        },
      ),
      { numRuns: 100 },
    );
  });
});
