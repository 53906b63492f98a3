import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, formatNumber } from '../../src/units/formatLength.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { speak } from '../../src/units/phrase.ts';
import type { Unit } from '../../src/units/unit.ts';

const read = (text: string | number, unit: Unit = 'mm'): number => {
  const result = parseLength(text, unit);
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, unit)).join('; '));
  return result.value;
};

describe('formatLength shows mm', () => {
  it.each([
    [18, '18 mm'],
    [18.5, '18.5 mm'],
    [0, '0 mm'],
    [-0, '0 mm'],
    [0.004, '0 mm'],
    [-0.004, '0 mm'],
    [0.006, '0.01 mm'],
    [21.4499, '21.45 mm'],
    [0.1 + 0.2, '0.3 mm'],
    [-3.25, '-3.25 mm'],
    [5000, '5000 mm'],
  ])('%d as %s', (mm, shown) => {
    expect(formatLength(mm, 'mm')).toBe(shown);
  });
});

describe('formatLength shows inches as the nearest 1/64 and what is left over', () => {
  it.each([
    [0, '0"'],
    [1, '1"'],
    [0.5, '1/2"'],
    [5.6875, '5 11/16"'],
    [12 + 1 / 64, '12 1/64"'],
    [63 / 64, '63/64"'],
    [27 / 32 + 0.004, '27/32" +.004'],
    [27 / 32 - 0.004, '27/32" −.004'],
    [5 + 0.003, '5" +.003'],
    [0.003, '0" +.003'],
    [0.9999, '1"'],
    [2 - 0.006, '2" −.006'],
    // Exactly between two marks: the upper one, and the 7.8 thousandths back.
    [1 / 128, '1/64" −.008'],
    [-0.5, '−1/2"'],
    [-(5 + 11 / 16), '−5 11/16"'],
    // 27/32 and a little more, counted downward from zero: both parts are below it.
    [-(27 / 32 + 0.004), '−27/32" −.004'],
    [-(27 / 32 - 0.004), '−27/32" +.004'],
    [-0.003, '0" −.003'],
  ])('%d in as %s', (inches, shown) => {
    expect(formatLength(inches * 25.4, 'in')).toBe(shown);
  });

  it('without the mark of the unit where a table names it', () => {
    expect(formatNumber(5.6875 * 25.4, 'in')).toBe('5 11/16');
    expect(formatNumber(18.504, 'mm')).toBe('18.5');
  });
});

/** Adds up what an inch reading says: whole, fraction and thousandths, each read by hand. */
const sum = (shown: string): number => {
  const groups = /^(−?)(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?\s*(?:([+−])\.(\d{3}))?$/u.exec(shown);
  if (groups === null) throw new Error(shown);
  const [, minus, whole = '0', top = '0', bottom = '1', sign, thousandths = '0'] = groups;
  return (
    (minus === '−' ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom)) +
    ((sign === '−' ? -1 : 1) * Number(thousandths)) / 1000
  );
};

describe('showing and reading again', () => {
  const sizes = fc.double({ min: -5000, max: 5000, noNaN: true });

  it('loses at most half a hundredth of a mm', () => {
    fc.assert(
      fc.property(sizes, (mm) => {
        expect(Math.abs(read(formatLength(mm, 'mm')) - mm)).toBeLessThan(0.005 + 1e-9);
      }),
    );
  });

  it('counts no marks of what is longer than any rule', () => {
    expect(formatLength(25.4e6, 'in')).toBe('1000000"');
    expect(formatLength(1e308, 'in')).toBe('3.93701e+306"');
    expect(formatLength(-1e308, 'in')).toBe('-3.93701e+306"');
  });

  it('loses at most half a thousandth of an inch', () => {
    fc.assert(
      fc.property(sizes, (mm) => {
        expect(Math.abs(sum(formatNumber(mm, 'in')) - mm / 25.4)).toBeLessThan(0.0005 + 1e-9);
      }),
    );
  });

  it('loses nothing of a size on a mark of an inch rule, however the fraction is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 64 * 200 }), (marks) => {
        const mm = (marks / 64) * 25.4;
        const shown = formatLength(mm, 'in');
        expect(shown).not.toMatch(/[+−]/u);
        expect(read(shown)).toBeCloseTo(mm, 9);
        expect(read(shown.replace(' ', '-').replace('"', 'in'))).toBeCloseTo(mm, 9);
        expect(read(shown.replace('"', ''), 'in')).toBeCloseTo(mm, 9);
      }),
    );
  });

  it('never shows a remainder of more than half a mark, nor a fraction that can be reduced', () => {
    fc.assert(
      fc.property(sizes, (mm) => {
        const shown = formatNumber(mm, 'in');
        const [, top, bottom] = /(\d+)\/(\d+)/u.exec(shown) ?? [];
        if (top !== undefined) {
          expect(Number(top) % 2).toBe(1);
          expect([2, 4, 8, 16, 32, 64]).toContain(Number(bottom));
        }
        expect(Number(/\.(\d{3})$/u.exec(shown)?.[1] ?? 0)).toBeLessThanOrEqual(8);
      }),
    );
  });
});
