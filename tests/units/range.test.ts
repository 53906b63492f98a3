import { describe, expect, it } from 'vitest';
import { refuse } from '../../src/units/complaint.ts';
import { say } from '../../src/units/phrase.ts';
import { checkRange, isInRange } from '../../src/units/range.ts';
import { complaintsOf } from '../value.ts';

const RANGE = { least: 0.3, most: 5 };
const wrong = (value: number | undefined): string[] =>
  complaintsOf(refuse(...checkRange(['pin'], 'a pin', value, RANGE)));

describe('a range', () => {
  it('holds both its ends, rounding errors aside, and nothing beyond', () => {
    // 0.1 + 0.2 is a little more than 0.3, and 0.8 - 0.5 a little less.
    for (const value of [0.8 - 0.5, 0.1 + 0.2, 1, 5]) expect(isInRange(value, RANGE)).toBe(true);
    for (const value of [0.29, 5.01, Number.NaN, Number.POSITIVE_INFINITY])
      expect(isInRange(value, RANGE)).toBe(false);
  });

  it('is named in the complaint about what lies outside', () => {
    expect(wrong(6)).toEqual(['pin: a pin is 6 mm; it must be 0.3 mm to 5 mm']);
    expect(wrong(Number.NaN)).toEqual(['pin: a pin is not a number; it must be 0.3 mm to 5 mm']);
    expect(wrong(5)).toEqual([]);
  });

  it('has no complaint about what is not given', () => {
    expect(wrong(undefined)).toEqual([]);
  });

  it('has a hint where one is given', () => {
    expect(complaintsOf(refuse(...checkRange(['pin'], 'a pin', 6, RANGE, say`4`)))).toEqual([
      'pin: a pin is 6 mm; it must be 0.3 mm to 5 mm; try 4',
    ]);
  });
});
