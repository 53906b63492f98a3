import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkMargin, pageHeightFor, printableBox } from '../../src/paper/printable.ts';
import { speak } from '../../src/units/phrase.ts';

test('without a correction a page may hold ink up to its margins', () => {
  expect(printableBox({ width: 210, height: 297 }, 6, undefined)).toEqual({ x0: 6, y0: 6, x1: 204, y1: 291 });
});

test('a printer that prints short leaves less room for drawings, one that prints long does not leave more', () => {
  const short = printableBox({ width: 210, height: 297 }, 5, { x: 0.98, y: 1.01, skew: 0 });
  expect(short.x1 - short.x0).toBeCloseTo(200 * 0.98, 9);
  expect(short.y1 - short.y0).toBeCloseTo(287, 9);
});

test('a roll is cut as long as its printable height needs', () => {
  const error = { x: 0.98, y: 0.97, skew: 0.02 };
  fc.assert(
    fc.property(fc.double({ min: 100, max: 4000, noNaN: true }), (height) => {
      const box = printableBox({ width: 610, height: pageHeightFor(height, 6, error) }, 6, error);
      expect(box.y1 - box.y0).toBeCloseTo(height, 6);
    }),
  );
});

test('a margin outside 5 to 20 mm is refused with the range', () => {
  expect(checkMargin(5)).toEqual([]);
  expect(checkMargin(4.9).map(({ says }) => speak(says, 'mm'))).toEqual([
    'the margin is 4.9 mm; it must be 5 mm to 20 mm',
  ]);
  expect(checkMargin(Number.NaN).length).toBe(1);
});
