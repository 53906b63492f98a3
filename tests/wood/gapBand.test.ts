import { assert, double, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  GAP_BAND,
  gapsThroughYear,
  gapToLeave,
  judgeGaps,
  largestToMake,
  sizesThroughYear,
} from '../../src/wood/gapBand.ts';

const year = { making: 8, driest: 6, dampest: 12 };

const moisture = double({ min: 0, max: 30, noNaN: true });
const climates = record({ making: moisture, a: moisture, b: moisture }).map(({ making, a, b }) => ({
  making,
  driest: Math.min(a, b),
  dampest: Math.max(a, b),
}));
const coefficient = double({ min: 0, max: 0.008, noNaN: true });
const opening = double({ min: 20, max: 2000, noNaN: true });

describe('sizesThroughYear', () => {
  it('shrinks and swells from the size when made', () => {
    const sizes = sizesThroughYear(200, 0.002, year);
    expect(sizes.making).toBe(200);
    expect(sizes.driest).toBeCloseTo(199.2, 12);
    expect(sizes.dampest).toBeCloseTo(201.6, 12);
  });

  it('is never larger when driest than when dampest, and constant for what does not move', () => {
    assert(
      property(opening, coefficient, climates, (made, c, climate) => {
        const sizes = sizesThroughYear(made, c, climate);
        expect(sizes.driest).toBeLessThanOrEqual(sizes.dampest);
        expect(sizesThroughYear(made, 0, climate)).toEqual({ making: made, driest: made, dampest: made });
      }),
    );
  });
});

describe('gapsThroughYear', () => {
  it('is what the sizes leave of the opening', () => {
    expect(gapsThroughYear(202, { making: 200, driest: 199, dampest: 203 })).toEqual({
      making: 2,
      driest: 3,
      dampest: -1,
    });
  });
});

describe('judgeGaps', () => {
  const band = { least: 0.5, most: 3 };

  it.each([
    [0.5, 3, 'fits'],
    [0.4, 3, 'sticks'],
    [0.5, 3.1, 'shows'],
    [-1, 3.1, 'sticks and shows'],
  ] as const)('of %f mm when dampest and %f mm when driest says: %s', (dampest, driest, verdict) => {
    expect(judgeGaps({ making: 1, driest, dampest }, band)).toBe(verdict);
  });

  it('does not mind the last digits of a computed gap', () => {
    expect(judgeGaps({ making: 1, driest: 3 + 1e-9, dampest: 0.5 - 1e-9 }, band)).toBe('fits');
  });

  it('does not judge the day of making, when the drawer is not yet where it is kept', () => {
    expect(judgeGaps({ making: 0, driest: 2, dampest: 1 }, band)).toBe('fits');
  });
});

describe('GAP_BAND', () => {
  it('is from a free half millimetre to 3 mm (common practice)', () => {
    expect(GAP_BAND).toEqual({ least: 0.5, most: 3 });
  });
});

describe('largestToMake', () => {
  it('leaves room to swell', () => {
    expect(largestToMake(201.6, 0.002, year)).toBeCloseTo(200, 12);
  });

  it('leaves none where the wood can only shrink', () => {
    expect(largestToMake(201.6, 0.002, { making: 12, driest: 6, dampest: 9 })).toBe(201.6);
  });

  it('never grows beyond the most, and reaches it', () => {
    assert(
      property(opening, coefficient, climates, (most, c, climate) => {
        const sizes = sizesThroughYear(largestToMake(most, c, climate), c, climate);
        expect(Math.max(sizes.making, sizes.driest, sizes.dampest)).toBeCloseTo(most, 8);
      }),
    );
  });
});

describe('gapToLeave', () => {
  it('is what still leaves the least gap when dampest', () => {
    // A part of 200 grows by 200 x 0.002 x 4 = 1.6 to 201.6, and 202.1 - 201.6 = 0.5.
    expect(gapToLeave(202.1, 0.002, year, 0.5)).toBeCloseTo(2.1, 10);
  });

  it('is the least gap for what does not move, and where the workshop is damper than the year', () => {
    expect(gapToLeave(202, 0, year, 0.5)).toBe(0.5);
    expect(gapToLeave(202, 0.002, { making: 12, driest: 6, dampest: 9 }, 0.5)).toBe(0.5);
  });

  it('makes a drawer that never sticks, and is the smallest gap that does', () => {
    assert(
      property(opening, coefficient, climates, (height, c, climate) => {
        const gap = gapToLeave(height, c, climate, GAP_BAND.least);
        const gaps = gapsThroughYear(height, sizesThroughYear(height - gap, c, climate));
        expect(gap).toBeGreaterThanOrEqual(GAP_BAND.least - 1e-9);
        expect(Math.min(gaps.making, gaps.dampest)).toBeCloseTo(GAP_BAND.least, 8);
        expect(judgeGaps(gaps, GAP_BAND)).not.toContain('sticks');
      }),
    );
  });

  it('is larger for wood that moves more, so that of two woods the larger gap serves both', () => {
    assert(
      property(opening, coefficient, coefficient, climates, (height, a, b, climate) => {
        expect(gapToLeave(height, Math.min(a, b), climate, 0.5)).toBeLessThanOrEqual(
          gapToLeave(height, Math.max(a, b), climate, 0.5) + 1e-9,
        );
      }),
    );
  });
});
