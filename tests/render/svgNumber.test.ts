import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { svgNumber } from '../../src/render/svgNumber.ts';

describe('svgNumber', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.00004, '0'],
    [12, '12'],
    [0.5, '0.5'],
    [-0.25, '-0.25'],
    [12.34567, '12.3457'],
    [9.99999, '10'],
    [0.0001, '0.0001'],
    [1200.01, '1200.01'],
  ])('writes %f as %s', (value, written) => {
    expect(svgNumber(value)).toBe(written);
  });

  it('writes what reads back within half of 0.0001, without needless digits', () => {
    fc.assert(
      fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (value) => {
        const written = svgNumber(value);
        expect(Math.abs(Number(written) - value)).toBeLessThanOrEqual(0.00005000001);
        expect(String(Number(written))).toBe(written);
      }),
    );
  });
});
