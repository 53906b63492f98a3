import { describe, expect, it } from 'vitest';
import { sentence } from '../../src/units/complaint.ts';
import { notationOf, parseFractions, unitOf, unitWords } from '../../src/units/notation.ts';

describe('a notation', () => {
  it('is its unit to those who type', () => {
    expect(unitOf('mm')).toBe('mm');
    expect(unitOf('in/16')).toBe('in');
  });

  it('heads a table with what its figures are rounded to', () => {
    expect([unitWords('mm'), unitWords('in'), unitWords('in/16'), unitWords('in/1000')]).toEqual([
      'mm',
      'inches to 1/64',
      'inches to 1/16',
      'inches to .001',
    ]);
  });

  it('has fractions of an inch, of nothing else', () => {
    expect(notationOf('in', undefined)).toEqual({ ok: true, value: 'in' });
    expect(notationOf('in', 64)).toEqual({ ok: true, value: 'in' });
    expect(notationOf('in', 'decimal')).toEqual({ ok: true, value: 'in/1000' });
    expect(notationOf('mm', undefined)).toEqual({ ok: true, value: 'mm' });
    const wrong = notationOf('mm', 32);
    expect(wrong.ok ? '' : wrong.complaints.map((each) => sentence(each, 'mm')).join()).toContain(
      'fractions are of an inch',
    );
  });

  it.each(['65', '0', '64ths', '1/64', '', 'Decimal', '-16', '16.5'])(
    'refuses %j, and says what there is',
    (typed) => {
      const read = parseFractions(typed);
      expect(read.ok ? '' : read.complaints.map((each) => sentence(each, 'mm')).join()).toContain(
        'must be 64, 32, 16 or decimal',
      );
    },
  );

  it('is read as an option has it, in letters', () => {
    expect(['64', '32', '16', 'decimal'].map((typed) => parseFractions(typed))).toEqual(
      [64, 32, 16, 'decimal'].map((value) => ({ ok: true, value })),
    );
  });
});
