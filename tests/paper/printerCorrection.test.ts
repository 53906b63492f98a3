import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Affine, apply, compose, IDENTITY, translation } from '../../src/drawing/affine.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { MARGIN_RANGE, printableBox } from '../../src/paper/printable.ts';
import { correctPage, inverse } from '../../src/paper/printerCorrection.ts';
import { readProof } from '../../src/paper/readProof.ts';
import { mapBox } from '../drawing/mapBox.ts';

const empty = { box: { x0: 0, y0: 0, x1: 0, y1: 0 }, marks: [] };

const share = fc.double({ min: 0.975, max: 1.025, noNaN: true });
const skew = fc.double({ min: -0.008, max: 0.008, noNaN: true });
const side = fc.double({ min: 150, max: 1200, noNaN: true });

/** What a printer does that prints `x` and `y` too long and lets upright lines lean by an angle. */
const printer = (x: number, y: number, lean: number): Affine => [
  x,
  0,
  y * Math.sin(lean),
  y * Math.cos(lean),
  0,
  0,
];

const distance = (map: Affine, from: readonly [number, number], to: readonly [number, number]): number => {
  const [a, b] = [apply(map, from), apply(map, to)];
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
};

test('a page corrected by what its proof measured comes out of the printer true, within 0.02 mm', () => {
  fc.assert(
    fc.property(share, share, skew, side, side, (x, y, lean, width, height) => {
      const error = printer(x, y, lean);
      const nominal = { x: 180, y: 240, d1: 300, d2: 300 };
      const read = readProof(nominal, {
        x: distance(error, [0, 0], [180, 0]),
        y: distance(error, [0, 0], [0, 240]),
        d1: distance(error, [0, 0], [180, 240]),
        d2: distance(error, [0, 240], [180, 0]),
      });
      if (!read.ok) throw new Error('refused');
      const page: PrintPage = { width, height, placed: [{ drawing: empty, at: IDENTITY }] };
      const [placed] = correctPage(page, read.value).placed;
      if (placed === undefined) throw new Error('nothing placed');
      const aboutMiddle = compose(
        compose(translation(-width / 2, -height / 2), error),
        translation(width / 2, height / 2),
      );
      const out = compose(placed.at, aboutMiddle);
      for (const corner of [
        [0, 0],
        [width, 0],
        [0, height],
        [width, height],
      ] as const) {
        const [cornerX, cornerY] = apply(out, corner);
        expect(Math.abs(cornerX - corner[0])).toBeLessThan(0.02);
        expect(Math.abs(cornerY - corner[1])).toBeLessThan(0.02);
      }
    }),
  );
});

test('what is drawn inside a printable box stays inside the margins when it is corrected', () => {
  fc.assert(
    fc.property(share, share, skew, side, side, (x, y, lean, width, height) => {
      const error = { x, y, skew: lean };
      const margin = MARGIN_RANGE.least;
      const aboutMiddle = compose(
        compose(translation(-width / 2, -height / 2), inverse(error)),
        translation(width / 2, height / 2),
      );
      const box = mapBox(aboutMiddle, printableBox({ width, height }, margin, error));
      expect(Math.min(box.x0, box.y0)).toBeGreaterThanOrEqual(margin - 1e-9);
      expect(width - box.x1).toBeGreaterThanOrEqual(margin - 1e-9);
      expect(height - box.y1).toBeGreaterThanOrEqual(margin - 1e-9);
    }),
  );
});

test('a printer that prints 0.4 % short across and 0.3 % long up gets pages 0.4 % wider and 0.3 % lower', () => {
  const [a, b, c, d] = inverse({ x: 0.996, y: 1.003, skew: 0 });
  expect([b, c].map(Math.abs)).toEqual([0, 0]);
  expect(a * 0.996).toBeCloseTo(1, 12);
  expect(d * 1.003).toBeCloseTo(1, 12);
});
