import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stripsOf } from '../../../src/drawer/blanks/strips.ts';

describe('the strips of a part', () => {
  it('are equal where no glue line is in the way of a groove', () => {
    expect(stripsOf(240, 3, [11, 16])).toEqual([
      [0, 80],
      [80, 160],
      [160, 240],
    ]);
  });

  it('leave a groove 5 mm clear, and then share what is left', () => {
    // The middle of 40 is at 20, in a groove from 18 to 22: the nearest line that is clear of it lies at 13 or 27.
    expect(stripsOf(40, 2, [18, 22])).toBeUndefined();
    // Of 200 the middle is 100; a groove from 98 to 103 moves the line to 93 or 108: 107 / 93 is 1.15.
    const [lower] = stripsOf(200, 2, [98, 100]) ?? [];
    expect(lower).toEqual([0, 105]);
  });

  it('fill the width, are alike, and keep glue lines off the groove, whatever they are', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 600 }),
        fc.integer({ min: 2, max: 6 }),
        fc.integer({ min: 5, max: 50 }),
        fc.integer({ min: 3, max: 12 }),
        (width, count, from, wide) => {
          const strips = stripsOf(width, count, [from, from + wide]);
          fc.pre(strips !== undefined);
          expect(strips).toHaveLength(count);
          const widths = strips.map(([a, b]) => b - a);
          expect(widths.reduce((sum, each) => sum + each, 0)).toBeCloseTo(width, 6);
          expect(Math.max(...widths) / Math.min(...widths)).toBeLessThan(1.15001);
          for (const [, line] of strips.slice(0, -1))
            expect(line <= from - 5 + 1e-6 || line >= from + wide + 5 - 1e-6).toBe(true);
        },
      ),
    );
  });
});
