import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentence } from '../../src/units/complaint.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { speak } from '../../src/units/phrase.ts';
import { quote } from '../../src/units/quote.ts';
import type { Unit } from '../../src/units/unit.ts';

const read = (text: string | number, unit: Unit = 'mm'): number => {
  const result = parseLength(text, unit);
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, unit)).join('; '));
  return result.value;
};

describe('parseLength reads', () => {
  it.each([
    ['18', 18],
    [' 18 ', 18],
    ['18mm', 18],
    ['18 mm', 18],
    ['18MM', 18],
    ['18.5', 18.5],
    ['18,5', 18.5],
    ['18,25', 18.25],
    ['0,125', 0.125],
    ['12345,678', 12345.678],
    ['.5', 0.5],
    [',5mm', 0.5],
    ['007', 7],
    ['1.8cm', 18],
    ['1,8 cm', 18],
    ['0', 0],
    ['1/2', 0.5],
    ['½', 0.5],
    ['18½', 18.5],
    ['18 ½ mm', 18.5],
  ])('%j as %d mm', (text, mm) => {
    expect(read(text)).toBe(mm);
  });

  it.each([
    ['3/4in', 0.75],
    ['3/4"', 0.75],
    ['3 / 4 in', 0.75],
    ['3⁄4″', 0.75],
    ['0.75 in', 0.75],
    ['0,75 in', 0.75],
    ['.75in', 0.75],
    ['1 inch', 1],
    ['2 inches', 2],
    ['2 IN', 2],
    ['2 in.', 2],
    ['5 11/16"', 5.6875],
    ['5-11/16in', 5.6875],
    ['5 - 11/16 in', 5.6875],
    ['5 -11/16 in', 5.6875],
    ['5–11/16”', 5.6875],
    ['5‑11/16″', 5.6875],
    ["5 11/16''", 5.6875],
    ['5 11/16’’', 5.6875],
    ['5 11/16′′', 5.6875],
    ['5\u00a011/16\u202fin', 5.6875],
    ['11/8"', 1.375],
    ['5½"', 5.5],
    ['5 ½"', 5.5],
    ['5-½"', 5.5],
    ['1¼ in', 1.25],
    ['1¾ in', 1.75],
    ['⅛"', 0.125],
    ['⅜"', 0.375],
    ['⅝"', 0.625],
    ['⅞"', 0.875],
  ])('%j as %d in', (text, inches) => {
    expect(read(text)).toBeCloseTo(inches * 25.4, 10);
  });

  it('a bare number in the unit of the user', () => {
    expect(read('18', 'mm')).toBe(18);
    expect(read('2', 'in')).toBe(50.8);
    expect(read('5-1/2', 'in')).toBeCloseTo(139.7, 10);
    expect(read(2, 'in')).toBe(50.8);
    expect(read(18.5, 'mm')).toBe(18.5);
  });

  it('a unit that is written, whatever the unit of the user', () => {
    expect(read('18mm', 'in')).toBe(18);
    expect(read('1.8cm', 'in')).toBe(18);
    expect(read('1in', 'mm')).toBe(25.4);
  });

  it('a minus sign before the length, for the caller to refuse with a range', () => {
    expect(read('-3')).toBe(-3);
    expect(read('−3mm')).toBe(-3);
    expect(read('-½')).toBe(-0.5);
    expect(read('-5-1/2"')).toBeCloseTo(-139.7, 10);
  });
});

describe('parseLength refuses', () => {
  it.each([
    [''],
    [' '],
    ['mm'],
    ['wide'],
    ['NaN'],
    ['Infinity'],
    ['-Infinity'],
    ['1e3'],
    ['0x10'],
    ['1 1'],
    ['5 11'],
    ['5-11in'],
    ['5"3/4'],
    ['18 18mm'],
    ['1/0'],
    ['0/0'],
    ['5 1/0'],
    ['5 17/16'],
    ['3 4/4'],
    ['1/2/3'],
    ['/2'],
    ['1/'],
    ['-'],
    ['--3'],
    ['+3'],
    ['3-'],
    ['5.'],
    ['1.2.3'],
    ['1,2,3'],
    ['1.234,5'],
    ['18 m'],
    ['5′'],
    ["5'"],
    ['5 ft'],
    ['½5'],
    ['½½'],
    ['1½2'],
    ['3/½'],
    ['１８'],
    ['١٨'],
    ['5¹¹⁄₁₆'],
    ['18mm\u0000'],
    ['18mm 3'],
    ['9'.repeat(400)],
    [`${'9'.repeat(308)}in`],
  ])('%j, saying how a length is written', (text) => {
    expect(parseLength(text, 'mm')).toEqual({
      ok: false,
      complaints: [
        {
          at: [],
          says: [expect.any(String), quote(text), ' is not a length'],
          hint: ['18, 18mm, 0.75in, 3/4in or 5-11/16in'],
        },
      ],
    });
  });

  it('numbers that are no size, or that overflow once they are mm', () => {
    for (const nonsense of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(parseLength(nonsense, 'mm').ok).toBe(false);
    expect(parseLength(1e308, 'in').ok).toBe(false);
  });

  it('a comma that may part thousands or decimals, offering both', () => {
    const result = parseLength('1,250 mm', 'mm');
    expect(result).toMatchObject({ ok: false });
    if (result.ok) return;
    expect(result.complaints.map(({ says, hint = [] }) => [speak(says, 'mm'), speak(hint, 'mm')])).toEqual([
      ['"1,250 mm" can be read in two ways', '1250 or 1.25'],
    ]);
  });

  it('a very long text without searching it for ever, and quotes only its beginning', () => {
    for (const piece of ['1', ' ', '1 ', '-', '1/', '½', '1,'])
      expect(parseLength(`1${piece.repeat(100_000)}x`, 'mm').ok).toBe(false);
    expect(quote('x'.repeat(41))).toBe(`"${'x'.repeat(40)}…"`);
    expect(quote('x'.repeat(40))).toBe(`"${'x'.repeat(40)}"`);
  });

  it('any text at all without throwing', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[-−0-9/⁄., ½¾"'inmc]{0,12}$/u)),
        fc.constantFrom<Unit>('mm', 'in'),
        (text, unit) => {
          const result = parseLength(text, unit);
          if (result.ok) expect(Number.isFinite(result.value)).toBe(true);
          else expect(result.complaints).toHaveLength(1);
        },
      ),
    );
  });
});

describe('a fraction of an inch', () => {
  const told = (text: string, unit: 'mm' | 'in') => {
    const result = parseLength(text, unit);
    return result.ok ? '' : result.complaints.map((complaint) => sentence(complaint, 'in')).join();
  };

  it('is one that some rule is marked in', () => {
    for (const text of ['3/128in', '7/10in', '1 49/100"', '63/64']) expect(told(text, 'in')).toBe('');
    expect(told('5/65', 'in')).toBe('"5/65" is in parts of 1/65 in, which no rule is marked in; try 5/64in');
    expect(told('2 1/3in', 'mm')).toBe(
      '"2 1/3in" is in parts of 1/3 in, which no rule is marked in; try 2-21/64in',
    );
  });

  it('may be any of a mm', () => {
    expect(told('1/3', 'mm')).toBe('');
  });
});
