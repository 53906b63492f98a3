import { describe, expect, test } from 'vitest';
import { type MeasuredProof, readProof } from '../../src/paper/readProof.ts';
import { speak } from '../../src/units/phrase.ts';

const nominal = { x: 180, y: 240, d1: 300, d2: 300 };

const complaintsOf = (measured: MeasuredProof): string[] => {
  const error = readProof(nominal, measured);
  if (error.ok) return [];
  return error.complaints.map(
    ({ at, says, hint = [] }) => `${at.join('.')}: ${speak(says, 'mm')} (${speak(hint, 'mm')})`,
  );
};

describe('what a printer may do', () => {
  test('true lengths are no error', () => {
    expect(readProof(nominal, nominal)).toEqual({ ok: true, value: { x: 1, y: 1, skew: 0 } });
  });

  test('sides alone give the scale in each direction', () => {
    expect(readProof(nominal, { x: 179.1, y: 240.6 })).toEqual({
      ok: true,
      value: { x: 179.1 / 180, y: 240.6 / 240, skew: 0 },
    });
  });

  test('a longer first diagonal is a skew to the right, by the law of cosines', () => {
    const error = readProof(nominal, { ...nominal, d1: 300.6, d2: 299.4 });
    // cos of the angle between the sides = (180² + 240² - 299.4²) / (2 · 180 · 240), the sine of the lean.
    expect(error.ok && error.value.skew).toBeCloseTo((180 ** 2 + 240 ** 2 - 299.4 ** 2) / (2 * 180 * 240), 4);
  });

  test('3 % is believed, more is questioned', () => {
    expect(complaintsOf({ x: 185.4, y: 240 })).toEqual([]);
    expect(complaintsOf({ x: 185.5, y: 240 })).toEqual([
      'measuredX: x should be near 180 mm and 185.5 mm is 3.1 % off; no printer is out by more than 3 % ()',
    ]);
  });
});

describe('what no printer does', () => {
  test('inches and centimetres typed as mm are recognized', () => {
    expect(complaintsOf({ x: 7.08, y: 9.45 })).toEqual([
      'measuredX: x should be near 180 mm, so what was measured looks like inches (7.08in)',
      'measuredY: y should be near 240 mm, so what was measured looks like inches (9.45in)',
    ]);
    expect(complaintsOf({ x: 18, y: 240 })).toEqual([
      'measuredX: x should be near 180 mm, so what was measured looks like centimetres (18cm)',
    ]);
  });

  test('mm typed where inches are meant are recognized', () => {
    expect(complaintsOf({ x: 180.2 * 25.4, y: 240 })).toEqual([
      'measuredX: x should be near 180 mm, so what was measured looks like millimetres read as inches (180.2mm)',
    ]);
  });

  test('x and y swapped are recognized', () => {
    expect(complaintsOf({ x: 240.4, y: 179.8 })).toEqual([
      'measuredX: x and y are swapped: x runs across the foot of the sheet and should be near 180 mm, y up its left side and near 240 mm ()',
    ]);
  });

  test('a page fitted to its paper is recognized', () => {
    expect(complaintsOf({ x: 169.2, y: 225.6, d1: 282, d2: 282 })).toEqual([
      'measuredX: everything is about 94 % of its size: the page was fitted to the paper, or this is another proof sheet ()',
    ]);
  });

  test('one diagonal alone, and lengths that are none, are refused together', () => {
    expect(complaintsOf({ x: 0, y: Number.NaN, d2: 300 })).toEqual([
      'measuredX: x must be a length over 0, near 180 mm ()',
      'measuredY: y must be a length over 0, near 240 mm ()',
      'measuredD1: one diagonal is no use without the other: d1 is missing ()',
    ]);
  });

  test('diagonals that do not match the sides, or with more skew than any printer, are refused', () => {
    expect(complaintsOf({ x: 180, y: 240, d1: 303, d2: 303 })).toEqual([
      'measuredD1: sides of 180 mm and 240 mm have diagonals of about 300 mm, not 303 mm: one of the four is wrong ()',
    ]);
    expect(complaintsOf({ x: 180, y: 240, d1: 306, d2: 294 })).toEqual([
      "measuredD1: the diagonals 306 mm and 294 mm differ by more than any printer's skew makes them ()",
    ]);
  });
});
