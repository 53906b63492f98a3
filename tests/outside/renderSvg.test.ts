import { spawnSync } from 'node:child_process';
import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Mark, Point } from '../../src/drawing/drawing.ts';
import { textMark } from '../../src/drawing/shapes.ts';
import { renderSvg } from '../../src/render/svg.ts';
import { svgWindow } from '../../src/render/svgWindow.ts';
import { FONTS } from '../render/fonts.ts';
import { pdfBytes } from '../render/pdfBytes.ts';
import { line } from './line.ts';

const BOX = { x0: -10, y0: 5, x1: 20, y1: 25 };
const [WIDTH, HEIGHT] = [BOX.x1 - BOX.x0, BOX.y1 - BOX.y0];

const drawing = (...marks: Mark[]): Drawing => ({ box: BOX, marks });

/** A raster: 0 is paper, 1 black; x to the right and y downward in dots. */
interface Raster {
  readonly width: number;
  readonly height: number;
  readonly ink: (x: number, y: number) => number;
}

/** The drawing as resvg paints its SVG, so many dots to the millimetre. */
const painted = (marks: readonly Mark[], dots: number): Raster => {
  const svg = renderSvg(drawing(...marks), { title: 'Buttons' }, { fonts: FONTS, window: svgWindow() });
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: WIDTH * dots },
    background: 'white',
  }).render();
  const { width, height, pixels } = image;
  return { width, height, ink: (x, y) => 1 - (pixels[(y * width + x) * 4] ?? 0) / 255 };
};

/** Where the ink of a row or column has its middle, and how much there is, in mm. */
const stroke = (inks: readonly number[], dots: number): [middle: number, width: number] => {
  const total = inks.reduce((sum, ink) => sum + ink, 0);
  const moment = inks.reduce((sum, ink, i) => sum + ink * (i + 0.5), 0);
  return [moment / total / dots, total / dots];
};

describe('an SVG painted by resvg', () => {
  it('has lines with their centre where it was put and their width true', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -9, max: 19, noNaN: true }),
        fc.double({ min: 6, max: 24, noNaN: true }),
        (x, y) => {
          const { width, height, ink } = painted([line([x, 5], [x, 25]), line([-10, y], [20, y])], 100);
          expect([width, height]).toEqual([3000, 2000]);
          // Along a row and a column that the other line does not touch.
          const row = y > 15 ? 1900 : 100;
          const column = x > 5 ? 100 : 2900;
          const [middleX, across] = stroke(
            Array.from({ length: width }, (_, i) => ink(i, row)),
            100,
          );
          const [middleY, down] = stroke(
            Array.from({ length: height }, (_, i) => ink(column, i)),
            100,
          );
          expect(middleX).toBeCloseTo(x - BOX.x0, 2);
          expect(middleY).toBeCloseTo(BOX.y1 - y, 2);
          // The saw line is 0.18 mm wide.
          expect(across).toBeCloseTo(0.18, 2);
          expect(down).toBeCloseTo(0.18, 2);
        },
      ),
      { numRuns: 5 },
    );
  });

  it('fills areas with their grey', () => {
    const points: Point[] = [
      [0, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ];
    const { ink } = painted(
      [{ kind: 'fill', role: 'waste', tone: 0.8, paths: [{ points, closed: true }] }],
      10,
    );
    expect(ink(150, 100)).toBeCloseTo(0.2, 2);
    expect(ink(50, 100)).toBe(0);
  });

  it('says at what size it prints', () => {
    const svg = renderSvg(drawing(), { title: '' }, { fonts: FONTS, window: svgWindow() });
    // CSS: an inch is 96 pixels; resvg counts whole ones.
    const { width, height } = new Resvg(svg);
    expect(width).toBe(Math.round((WIDTH / 25.4) * 96));
    expect(height).toBe(Math.round((HEIGHT / 25.4) * 96));
  });

  it('can be read whatever the texts hold', () => {
    const text = fc.string({ unit: fc.nat(0xffff).map((unit) => String.fromCharCode(unit)) });
    fc.assert(
      fc.property(text, text, (title, words) => {
        const svg = renderSvg(
          drawing(textMark(words, [0, 10], 4)),
          { title, description: words },
          { fonts: FONTS, window: svgWindow() },
        );
        expect(new Resvg(svg).width).toBe(113);
      }),
      { examples: [['\u0000\uffff]]>', '<!--&\ud800']], numRuns: 50 },
    );
  });

  const poppler = spawnSync('pdftoppm', ['-v']).error === undefined;

  it.skipIf(!poppler)(
    'has its letters where the PDF of the same drawing has them, painted by poppler',
    async () => {
      const marks: Mark[] = [
        textMark('AVA pin ½″ é', [-8, 8], 4),
        { ...textMark('To 1:7', [15, 6], 4, { weight: 'bold' }), turn: 90 },
        { ...textMark('middle gjq', [0, 22], 4, { anchor: 'middle' }), turn: 180 },
        { ...textMark('漢\u0000\u{1FAB5}', [9, 12], 3, { anchor: 'end' }), turn: 270 },
      ];
      const page = {
        width: WIDTH,
        height: HEIGHT,
        placed: [{ drawing: drawing(...marks), at: [1, 0, 0, 1, 10, -5] as const }],
      };
      const { stdout } = spawnSync('pdftoppm', ['-r', '2540', '-gray', '-singlefile', '-'], {
        input: await pdfBytes([page]),
        maxBuffer: 1 << 26,
      });
      const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(stdout.toString('latin1', 0, 40));
      const pdfInk = (x: number, y: number): number =>
        1 - (stdout[(header?.[0].length ?? 0) + y * Number(header?.[1]) + x] ?? 0) / 255;
      const { width, height, ink } = painted(marks, 100);
      expect([Number(header?.[1]), Number(header?.[2])]).toEqual([width, height]);
      let [black, different] = [0, 0];
      for (let y = 0; y < height; y++)
        for (let x = 0; x < width; x++) {
          black += ink(x, y);
          // Dots at the edges of letters are painted differently; letters out of place differ through and through.
          if (Math.abs(ink(x, y) - pdfInk(x, y)) > 0.6) different++;
        }
      expect(black).toBeGreaterThan(100_000);
      expect(different / black).toBeLessThan(0.02);
    },
  );
});
