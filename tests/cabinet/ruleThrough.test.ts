import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HeightRule, rowHeights } from '../../src/cabinet/heightRule.ts';
import { ruleThrough } from '../../src/cabinet/ruleThrough.ts';
import { value } from '../value.ts';

describe('ruleThrough', () => {
  it('finds what fixes an arithmetic progression whose upper rows are so high', () => {
    // Three rows in 450: with 110 on top the mean of 150 is the second, and the third 190.
    const through = (by: Extract<HeightRule, { kind: 'arithmetic' }>['by']) =>
      ruleThrough({ kind: 'arithmetic', ...(by && { by }) }, { upper: 1, height: 110, count: 3, total: 450 });
    expect(through(undefined)).toEqual({ key: 'step', value: expect.closeTo(40, 9) });
    expect(through({ key: 'first', value: 1 })).toEqual({ key: 'first', value: expect.closeTo(110, 9) });
    expect(through({ key: 'overall', value: 1 })).toEqual({
      key: 'overall',
      value: expect.closeTo(190 / 110, 9),
    });
  });

  it('finds the ratio of a geometric progression', () => {
    // 100, 200 and 400: the upper two are 300 of 700.
    const found = ruleThrough(
      { kind: 'geometric', by: { key: 'ratio', value: 1 } },
      { upper: 2, height: 300, count: 3, total: 700 },
    );
    expect(found).toEqual({ key: 'ratio', value: expect.closeTo(2, 9) });
  });

  it('is no progression of equal or listed rows', () => {
    expect(ruleThrough({ kind: 'equal' }, { upper: 1, height: 1, count: 2, total: 9 })).toBe(undefined);
  });

  it('gives rows whose upper ones are as high as was asked for, whatever fixes them', () => {
    const rules = fc.constantFrom<HeightRule>(
      { kind: 'arithmetic' },
      { kind: 'arithmetic', by: { key: 'first', value: 1 } },
      { kind: 'arithmetic', by: { key: 'overall', value: 1 } },
      { kind: 'geometric', by: { key: 'first', value: 1 } },
      { kind: 'geometric', by: { key: 'ratio', value: 1 } },
      { kind: 'geometric', by: { key: 'overall', value: 1 } },
    );
    fc.assert(
      fc.property(
        rules,
        fc.integer({ min: 2, max: 7 }),
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.double({ min: 0.8, max: 1.2, noNaN: true }),
        (rule, count, where, lean) => {
          const upper = 1 + Math.floor(where * (count - 1));
          const total = 100 * count;
          const height = ((total * upper) / count) * (1 + ((lean - 1) * (count - upper)) / count);
          const found = ruleThrough(rule, { upper, height, count, total });
          const by = found as { key: 'first'; value: number };
          const { heights } = value(rowHeights({ kind: rule.kind, by } as HeightRule, count, total, 18));
          expect(heights.slice(0, upper).reduce((sum, each) => sum + each, 0)).toBeCloseTo(height, 6);
        },
      ),
      { numRuns: 60 },
    );
  });
});
