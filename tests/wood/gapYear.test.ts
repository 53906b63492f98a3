import { describe, expect, it } from 'vitest';
import { gapsThroughYear, sizesThroughYear } from '../../src/wood/gapBand.ts';
import { gapYear } from '../../src/wood/gapYear.ts';

const climate = { making: 8, driest: 6, dampest: 12 };

describe('gapYear', () => {
  it('goes from driest through dampest to driest again', () => {
    const points = gapYear(202, 200, 0.002, climate, 4);
    expect(points.map(({ time }) => time)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    for (const [i, moisture] of [6, 9, 12, 9, 6].entries())
      expect(points[i]?.moisture).toBeCloseTo(moisture, 10);
    for (const [i, gap] of [2.8, 1.6, 0.4, 1.6, 2.8].entries()) expect(points[i]?.gap).toBeCloseTo(gap, 10);
  });

  it('turns slowly at both ends of the year', () => {
    // A cosine has gone (2 - sqrt 3) / 4 of its swing, 0.067, after a twelfth of the year.
    const [, first] = gapYear(202, 200, 0.002, climate, 12);
    expect(first?.moisture).toBeCloseTo(6 + (6 * (2 - Math.sqrt(3))) / 4, 10);
  });

  it('meets the gaps at both ends of the year, and never leaves them', () => {
    const ends = gapsThroughYear(202, sizesThroughYear(200, 0.002, climate));
    const gaps = gapYear(202, 200, 0.002, climate, 24).map(({ gap }) => gap);
    expect(Math.max(...gaps)).toBeCloseTo(ends.driest, 10);
    expect(Math.min(...gaps)).toBeCloseTo(ends.dampest, 10);
  });
});
