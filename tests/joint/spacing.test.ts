import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { narrowestTip, ratioBetween, shares } from '../../src/joint/spacing.ts';

describe('the shares of the tails', () => {
  it('are alike in even spacing', () => {
    expect(shares({ kind: 'even' }, 4)).toEqual([0.25, 0.25, 0.25, 0.25]);
  });

  it('fall by the ratio from the reference edge up', () => {
    expect(shares({ kind: 'graded', ratio: 0.5, from: 'edge' }, 4)).toEqual([8 / 15, 4 / 15, 2 / 15, 1 / 15]);
  });

  it('fall by the ratio from the middle out to both edges', () => {
    expect(shares({ kind: 'graded', ratio: 0.5, from: 'middle' }, 5)).toEqual([0.1, 0.2, 0.4, 0.2, 0.1]);
    expect(shares({ kind: 'graded', ratio: 0.5, from: 'middle' }, 4)).toEqual([1 / 6, 1 / 3, 1 / 3, 1 / 6]);
  });

  it('are the whole for one tail', () => {
    for (const from of ['edge', 'middle'] as const)
      expect(shares({ kind: 'graded', ratio: 0.7, from }, 1)).toEqual([1]);
  });

  it('sum to one, each the ratio of its neighbour nearer to where the count begins', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.constantFrom('edge' as const, 'middle' as const),
        fc.integer({ min: 1, max: 20 }),
        (ratio, from, count) => {
          const parts = shares({ kind: 'graded', ratio, from }, count);
          expect(parts.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          const begin = from === 'edge' ? 0 : Math.floor(count / 2);
          for (let i = begin + 1; i < count; i++)
            expect((parts[i] ?? 0) / (parts[i - 1] ?? 0)).toBeCloseTo(ratio, 9);
          if (from === 'middle') expectSame(parts.toReversed(), parts);
        },
      ),
    );
  });

  const expectSame = (some: readonly number[], others: readonly number[]): void =>
    some.forEach((part, i) => {
      expect(part).toBeCloseTo(others[i] ?? Number.NaN, 12);
    });
});

describe('the narrowest of tails whose mean is known', () => {
  it('is that mean in even spacing, and the least share of their sum in graded', () => {
    expect(narrowestTip({ kind: 'even' }, { tails: 4, tip: 20 })).toBe(20);
    // 36 are shared as 24 and 12, 45 as 15, 15 and 15 or as 11.25, 22.5 and 11.25.
    expect(narrowestTip({ kind: 'graded', ratio: 0.5, from: 'edge' }, { tails: 2, tip: 18 })).toBeCloseTo(
      12,
      12,
    );
    expect(narrowestTip({ kind: 'graded', ratio: 0.5, from: 'middle' }, { tails: 3, tip: 15 })).toBe(11.25);
  });
});

describe('the ratio between two widths', () => {
  it('is never under one, whichever is the wider', () => {
    expect(ratioBetween(20, 10)).toBe(2);
    expect(ratioBetween(10, 20)).toBe(2);
    expect(ratioBetween(7, 7)).toBe(1);
  });
});
