import fc from 'fast-check';
import { expect, test } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { drawFrame, type PageFacts, printableHeightFor, usableBox } from '../../src/paper/frame.ts';
import { printableBox } from '../../src/paper/printable.ts';
import { inkBox, isInside, overlaps, segmentsOf } from './ink.ts';

const facts: PageFacts = { planName: 'Haberdashery chest', number: 3, count: 12, paper: 'A4', unit: 'mm' };

const textsOf = ({ marks }: Drawing) => marks.filter((mark) => mark.kind === 'text');

const barsOf = ({ marks }: Drawing) =>
  marks.flatMap((mark) => (mark.kind === 'stroke' ? mark.paths.flatMap(segmentsOf) : []));

const lengths = (drawing: Drawing) => {
  const across = barsOf(drawing).map(([a, b]) => b[0] - a[0]);
  const up = barsOf(drawing).map(([a, b]) => b[1] - a[1]);
  return [Math.max(...across), Math.max(...up)].map((length) => Number(length.toFixed(9)));
};

test('a frame on A4 names plan, page, paper and 100 %, and what to measure', () => {
  const frame = drawFrame(printableBox({ width: 210, height: 297 }, 6, undefined), facts);
  expect(textsOf(frame).map(({ text }) => text)).toEqual([
    'Haberdashery chest',
    'page 3 of 12 · A4 · print at 100 %',
    'measure this check bar and the upright one: 100 mm',
    'measure this check bar too, 100 mm: a printer may be out in one direction only',
  ]);
});

test('both check bars are 100 mm with a tick each 10 mm, on A5 either way too', () => {
  for (const [width, height] of [
    [210, 297],
    [148, 210],
    [210, 148],
  ] as const) {
    const frame = drawFrame(printableBox({ width, height }, 6, undefined), facts);
    expect(lengths(frame)).toEqual([100, 100]);
    expect(barsOf(frame).length).toBe(2 * (1 + 11));
  }
});

test('a frame in inches gives the lengths of the bars in inches too', () => {
  const printable = printableBox({ width: 215.9, height: 279.4 }, 6, undefined);
  const words = textsOf(drawFrame(printable, { ...facts, unit: 'in' })).map(({ text }) => text);
  expect(words[2]).toBe('measure this check bar and the upright one: 4"');
});

test('a corrected page names the printer and its error, as far as there is room', () => {
  const correction = { printer: 'workshop', error: { x: 1.004, y: 0.997, skew: 0 } };
  const wide = drawFrame(printableBox({ width: 420, height: 297 }, 6, undefined), { ...facts, correction });
  expect(textsOf(wide)[1]?.text).toBe(
    'page 3 of 12 · A4 · corrected for workshop, which prints 0.40 % long across and 0.30 % short up · print at 100 %',
  );
  const narrow = drawFrame(printableBox({ width: 148, height: 210 }, 6, undefined), { ...facts, correction });
  expect(textsOf(narrow)[1]?.text).toBe('page 3 of 12 · A4 · corrected for workshop · print at 100 %');
});

test('the usable box has the height that a printable box is made for', () => {
  const printable = printableBox({ width: 210, height: printableHeightFor(200) + 12 }, 6, undefined);
  const usable = usableBox(printable);
  expect(usable.y1 - usable.y0).toBeCloseTo(200, 9);
});

const side = fc.double({ min: 90, max: 1200, noNaN: true });
const name = fc.string({ unit: 'grapheme', maxLength: 80 });

test('on every paper, with names of any length, nothing leaves the printable box, enters the usable one or overlaps', () => {
  fc.assert(
    fc.property(
      side,
      side,
      fc.double({ min: 5, max: 20, noNaN: true }),
      name,
      name,
      fc.boolean(),
      fc.boolean(),
      (width, height, margin, planName, printer, corrected, inches) => {
        const printable = printableBox({ width, height }, margin, undefined);
        const usable = usableBox(printable);
        const frame = drawFrame(printable, {
          ...facts,
          planName,
          paper: `${width.toFixed(2)}x${height.toFixed(2)}mm`,
          number: 9999,
          count: 10000,
          unit: inches ? 'in' : 'mm',
          ...(corrected ? { correction: { printer, error: { x: 0.98, y: 1.02, skew: 0 } } } : {}),
        });
        expect(isInside(inkBox(frame.marks, IDENTITY), printable)).toBe(true);
        const parts = [
          ...textsOf(frame).map(textBox),
          ...barsOf(frame).map(([a, b]) => ({
            x0: Math.min(a[0], b[0]),
            y0: Math.min(a[1], b[1]),
            x1: Math.max(a[0], b[0]),
            y1: Math.max(a[1], b[1]),
          })),
        ];
        const texts = parts.slice(0, textsOf(frame).length);
        texts.forEach((text, i) => {
          expect(overlaps(text, usable)).toBe(false);
          for (const other of parts.slice(i + 1)) expect(overlaps(text, other)).toBe(false);
        });
      },
    ),
  );
});
