import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listedValues, planNumber, roundWidths, stepOf } from '../../../src/page/model/planNumber.ts';
import { total } from '../../../src/page/model/widths.ts';
import { parseLength } from '../../../src/units/parseLength.ts';

describe('planNumber', () => {
  it('writes millimetres as they are', () => {
    expect(planNumber(17.5, 'mm')).toBe(17.5);
    expect(planNumber(0.1 + 0.2, 'mm')).toBe(0.3);
  });

  it('writes inches as a rule shows them, and as a decimal what lies between its marks', () => {
    expect(planNumber(25.4, 'in')).toBe(1);
    expect(planNumber(25.4 * (5 + 11 / 16), 'in')).toBe('5 11/16');
    expect(planNumber(25.4 / 64, 'in')).toBe('1/64');
    expect(planNumber(10, 'in')).toBe(0.393701);
  });

  it('lists a width in all the digits that keep it equal to others, but without errors of calculation', () => {
    expect(listedValues([6, 53 / 3, 5, 53 / 3, 6 - 1e-11], 'mm')).toEqual({
      tails: [17.666666666667, 17.666666666667],
      pins: [5],
      halfPin: [6, 6],
    });
  });

  it('is read back as what it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5000, noNaN: true }),
        fc.constantFrom('mm', 'in'),
        (value, unit) => {
          const read = parseLength(planNumber(value, unit), unit);
          expect(read.ok && Math.abs(read.value - value) < 6e-5).toBe(true);
        },
      ),
    );
  });
});

describe('roundWidths', () => {
  it('moves every line to the nearest hundredth, the last one staying at the board edge', () => {
    const widths = roundWidths([6, 53 / 3, 5, 53 / 3, 5, 53 / 3, 6], 'mm');
    expect(listedValues(widths, 'mm')).toEqual({
      tails: [17.67, 17.66, 17.67],
      pins: [5, 5],
      halfPin: [6, 6],
    });
  });

  it('keeps what lies on a mark of an inch rule there', () => {
    const mark = stepOf('in');
    const widths = roundWidths([mark * 16, mark * 40, mark * 17], 'in');
    expect(listedValues(widths, 'in')).toEqual({ tails: ['5/8'], pins: [], halfPin: ['1/4', '17/64'] });
  });

  it('never changes the sum', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 60, noNaN: true }), { minLength: 3, maxLength: 41 }),
        fc.constantFrom('mm', 'in'),
        (widths, unit) => {
          const rounded = roundWidths(widths, unit);
          expect(total(rounded)).toBeCloseTo(total(widths), 9);
          expect(rounded.every((width, i) => Math.abs(width - (widths[i] ?? 0)) < 0.011)).toBe(true);
        },
      ),
    );
  });
});
