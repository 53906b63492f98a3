import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, formatNumber, formatVolume, nearestMark } from '../../src/units/formatLength.ts';
import type { Notation } from '../../src/units/notation.ts';
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

describe('formatLength shows inches to the nearest mark of the rule', () => {
  it.each<[number, Notation, string]>([
    [0, 'in', '0"'],
    [1, 'in', '1"'],
    [0.5, 'in', '1/2"'],
    [5.6875, 'in', '5 11/16"'],
    [12 + 1 / 64, 'in', '12 1/64"'],
    [63 / 64, 'in', '63/64"'],
    [27 / 32 + 0.004, 'in', '27/32"'],
    [27 / 32 - 0.004, 'in', '27/32"'],
    // 0.789 in are 50.5 sixty-fourths.
    [51 / 64 - 0.008, 'in', '25/32"'],
    [0.9999, 'in', '1"'],
    [-0.5, 'in', '−1/2"'],
    [-(5 + 11 / 16), 'in', '−5 11/16"'],
    [-(27 / 32 + 0.004), 'in', '−27/32"'],
    [0.789, 'in/32', '25/32"'],
    [0.77, 'in/32', '25/32"'],
    [0.76, 'in/32', '3/4"'],
    [0.789, 'in/16', '13/16"'],
    [5.98, 'in/16', '6"'],
    [1e-9 + 1 / 64, 'in', '1/64"'],
    [-1e-9 + 1 / 64, 'in', '1/64"'],
  ])('%d in, %s, as %s', (inches, notation, shown) => {
    expect(formatLength(inches * 25.4, notation)).toBe(shown);
  });

  it.each<[number, Notation, string]>([
    [0.012, 'in', '.012"'],
    [0.003, 'in', '.003"'],
    [-0.003, 'in', '−.003"'],
    [0.0004, 'in', '0"'],
    [-0.0004, 'in', '0"'],
    [1 / 64, 'in/32', '.016"'],
    [1 / 32, 'in/16', '.031"'],
  ])('but %d in, under the first mark of %s, in thousandths: %s', (inches, notation, shown) => {
    expect(formatLength(inches * 25.4, notation)).toBe(shown);
  });

  // As ASME Y14.5 writes decimal inches, from memory: no zero before the point, and zeros to as many places as are meant.
  it.each([
    [0.797, '.797"'],
    [0.5, '.500"'],
    [2, '2.000"'],
    [1.25, '1.250"'],
    [12.0306, '12.031"'],
    // Half-way between two thousandths, however it came to be.
    [14.8125, '14.813"'],
    [14.8125 - 1e-12, '14.813"'],
    [3 / 16, '.188"'],
    [-0.75, '−.750"'],
    [0, '0"'],
  ])('%d in as a decimal, %s', (inches, shown) => {
    expect(formatLength(inches * 25.4, 'in/1000')).toBe(shown);
  });

  it('without the mark of the unit where a table names it', () => {
    expect(formatNumber(5.6875 * 25.4, 'in')).toBe('5 11/16');
    expect(formatNumber(18.504, 'mm')).toBe('18.5');
  });
});

const IN_INCHES = ['in', 'in/32', 'in/16', 'in/1000'] as const;
const notations = fc.constantFrom(...IN_INCHES);
const parts = { in: 64, 'in/32': 32, 'in/16': 16, 'in/1000': 1000 };

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

  it('lies on a mark of the rule and within half a mark, or in thousandths under the first', () => {
    fc.assert(
      fc.property(fc.oneof(sizes, fc.double({ min: -2, max: 2, noNaN: true })), notations, (mm, notation) => {
        const shown = read(formatLength(mm, notation)) / 25.4;
        const step = Math.abs(shown) < 1 / parts[notation] ? 1000 : parts[notation];
        expect(shown * step).toBeCloseTo(Math.round(shown * step), 6);
        expect(Math.abs(shown - mm / 25.4)).toBeLessThan(0.5 / step + 1e-9);
      }),
    );
  });

  it('means exactly what it shows: typed back it is shown alike', () => {
    fc.assert(
      fc.property(sizes, notations, (mm, notation) => {
        const shown = formatLength(mm, notation);
        expect(formatLength(read(shown), notation)).toBe(shown);
        expect(read(formatNumber(mm, notation), 'in')).toBeCloseTo(read(shown), 9);
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

  it('never shows a fraction that can be reduced', () => {
    fc.assert(
      fc.property(sizes, (mm) => {
        const [, top, bottom] = /(\d+)\/(\d+)/u.exec(formatNumber(mm, 'in')) ?? [];
        if (top !== undefined) {
          expect(Number(top) % 2).toBe(1);
          expect([2, 4, 8, 16, 32, 64]).toContain(Number(bottom));
        }
      }),
    );
  });
});

describe('widths between the nearest marks', () => {
  it('add up to the whole, and leave no line half a mark off, however many they are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 60, noNaN: true }), { minLength: 1, maxLength: 60 }),
        notations,
        (widths, notation) => {
          let [line, told] = [0, 0];
          for (const width of widths) {
            const mark = nearestMark(line + width, notation);
            told += read(formatLength(mark - nearestMark(line, notation), notation));
            line += width;
            expect(Math.abs(told - line) / 25.4).toBeLessThan(0.5 / parts[notation] + 1e-9);
          }
          expect(told).toBeCloseTo(nearestMark(line, notation), 6);
        },
      ),
    );
  });

  it('are what they are in mm', () => {
    expect(nearestMark(18.123456, 'mm')).toBe(18.123456);
  });
});

describe('a volume', () => {
  it('is told in board feet of 144 cubic inches of rough thickness, or in cubic metres', () => {
    // A board 2 in thick, 6 in wide and 8 ft long is 8 board feet by the definition.
    expect(formatVolume(2 * 6 * 96 * 25.4 ** 3, 'in')).toBe('8.00 board feet');
    expect(formatVolume(2 * 6 * 96 * 25.4 ** 3, 'in/1000')).toBe('8.00 board feet');
    expect(formatVolume(26 * 230 * 2150, 'mm')).toBe('0.0129 m³');
  });
});
