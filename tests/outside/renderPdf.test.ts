import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { getDocument, OPS, type PDFDocumentProxy, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, describe, expect, it } from 'vitest';
import { type Affine, apply, IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing, Mark, Point } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { textMark } from '../../src/drawing/shapes.ts';
import { shownText } from '../../src/drawing/shownText.ts';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { pdfBytes } from '../render/pdfBytes.ts';
import { line } from './line.ts';

const POINT = 25.4 / 72;
const A4 = { width: 210, height: 297 };

const drawing = (...marks: Mark[]): Drawing => ({ box: { x0: 0, y0: 0, x1: 210, y1: 297 }, marks });
const page = (...marks: Mark[]): PrintPage => ({
  ...A4,
  placed: [{ drawing: drawing(...marks), at: IDENTITY }],
});

/** What people put into names, and what breaks renderers. */
const HOSTILE = [
  'Half pin 6 · 1:7',
  '½″ − ¼″ × ⅜″ → ⌀5',
  'Žluťoučký kůň, Ελλάδα, Журнал',
  'a(b)c\\d%<e>[f]{g}/h#',
  'emoji 😀🪵, 漢字, \u{10FFFD}',
  'AVAVA WAVE To. fi ffl',
];

const read = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS }).promise;

/** Every straight line of a page as pdf.js sees it, in mm from the bottom left. */
const linesOf = async (document: PDFDocumentProxy, number = 1): Promise<[Point, Point][]> => {
  const { fnArray, argsArray } = await (await document.getPage(number)).getOperatorList();
  let map: Affine = IDENTITY;
  const lines: [Point, Point][] = [];
  fnArray.forEach((operator, i) => {
    if (operator === OPS.transform) map = argsArray[i] as unknown as Affine;
    if (operator !== OPS.constructPath) return;
    const steps: number[] = Object.values(argsArray[i][1][0]);
    let from: Point = [0, 0];
    for (let k = 0; k < steps.length; k += 3) {
      const [x, y] = apply(map, [steps[k + 1] ?? 0, steps[k + 2] ?? 0]);
      const to: Point = [x * POINT, y * POINT];
      // pdf.js writes 0 for a move and 1 for a line.
      if (steps[k] === 1) lines.push([from, to]);
      from = to;
    }
  });
  return lines;
};

describe('a PDF read back by pdf.js', () => {
  it('holds every line where it was put, to a hundredth of a millimetre', async () => {
    const coordinate = fc.double({ min: 0, max: 200, noNaN: true });
    const point = fc.tuple(coordinate, coordinate);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(point, point), { minLength: 1, maxLength: 40 }), async (lines) => {
        const found = await linesOf(await read(await pdfBytes([page(...lines.map(([a, b]) => line(a, b)))])));
        expect(found).toHaveLength(lines.length);
        found.forEach(([[x0, y0], [x1, y1]], i) => {
          const [from, to] = lines[i] ?? [];
          const errors = [
            x0 - (from?.[0] ?? 0),
            y0 - (from?.[1] ?? 0),
            x1 - (to?.[0] ?? 0),
            y1 - (to?.[1] ?? 0),
          ];
          expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.001);
        });
      }),
      { numRuns: 25 },
    );
  });

  it('has pages of the size asked for and asks the printer not to scale them', async () => {
    const letter = { width: 215.9, height: 279.4 };
    const document = await read(
      await pdfBytes([page(), { ...page(), ...letter }, { ...page(), width: 1500 }]),
    );
    const views = await Promise.all([1, 2, 3].map(async (number) => (await document.getPage(number)).view));
    // ISO 216: A4 is 210 x 297; ANSI letter is 8.5 x 11 in, which is 612 x 792 points.
    expect(views[0]?.map((value) => value * POINT)).toEqual([
      0,
      0,
      expect.closeTo(210, 5),
      expect.closeTo(297, 5),
    ]);
    expect(views[1]).toEqual([0, 0, 612, 792]);
    expect((views[2]?.[2] ?? 0) * POINT).toBeCloseTo(1500, 5);
    expect(await document.getViewerPreferences()).toMatchObject({
      PrintScaling: 'None',
      PickTrayByPDFSize: true,
    });
  });

  it('keeps its title and its text, whatever characters they hold', async () => {
    for (const title of HOSTILE) {
      const document = await read(await pdfBytes([page(textMark(title, [10, 10], 5))], title));
      const { info } = await document.getMetadata();
      expect(info).toMatchObject({ Title: title, Creator: 'Halfpin' });
      const { items } = await (await document.getPage(1)).getTextContent({ disableNormalization: true });
      expect(items.map((item) => ('str' in item ? item.str : '')).join('')).toBe(title);
    }
  });

  it('shows line ends as spaces, and control characters and lone surrogates as U+FFFD', async () => {
    const document = await read(
      await pdfBytes([page(textMark('a\nb\tc\u0007d\udc00e', [10, 10], 5))], '\u0000\ud800'),
    );
    const { items } = await (await document.getPage(1)).getTextContent();
    expect(items.map((item) => ('str' in item ? item.str : '')).join('')).toBe('a b c\ufffdd\ufffde');
    expect((await document.getMetadata()).info).toMatchObject({ Title: '\ufffd\ufffd' });
  });

  it('can be read whatever the texts hold', async () => {
    const text = fc.string({ unit: fc.nat(0xffff).map((unit) => String.fromCharCode(unit)) });
    await fc.assert(
      fc.asyncProperty(text, text, async (title, words) => {
        const marks = [
          textMark(words, [10, 10], 5),
          textMark(words, [10, 30], 5, { weight: 'bold' }),
          line([0, 0], [9, 9]),
        ];
        const document = await read(await pdfBytes([page(...marks)], title));
        expect(await linesOf(document)).toHaveLength(1);
        const { info } = await document.getMetadata();
        // pdf.js leaves an empty title out, and one that begins like a byte order mark is read as one.
        if (/^[ -~]/u.test(title)) expect(info).toMatchObject({ Title: shownText(title) });
      }),
      { numRuns: 50 },
    );
  });

  it('sets text as wide as it is measured, without kerning', async () => {
    for (const weight of ['regular', 'bold'] as const) {
      const text = 'AVAVAWAVETofi';
      const document = await read(await pdfBytes([page(textMark(text, [10, 10], 5, { weight }))]));
      const { items } = await (await document.getPage(1)).getTextContent();
      const [item] = items;
      expect(item && 'width' in item ? item.width * POINT : 0).toBeCloseTo(textWidth(text, 5, weight), 2);
    }
  });
});

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
const file = join(folder, 'pages.pdf');
afterAll(() => rmSync(folder, { recursive: true }));

const installed = (program: string): boolean => spawnSync(program, ['-v']).error === undefined;
const run = (program: string, ...args: string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

describe('a PDF read back by other programs', () => {
  it.skipIf(!installed('qpdf'))('has nothing that qpdf complains of', async () => {
    writeFileSync(
      file,
      await pdfBytes([page(), page(...HOSTILE.map((text, i) => textMark(text, [10, 10 * i], 5)))]),
    );
    expect(run('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found');
  });

  it.skipIf(!installed('pdftotext'))('gives its text to poppler', async () => {
    const texts = HOSTILE.map((text, i) => textMark(text, [10, 10 + 20 * i], 5));
    writeFileSync(file, await pdfBytes([page(...texts)]));
    const lines = run('pdftotext', '-layout', file, '-')
      .split('\n')
      .filter((text) => text.trim() !== '');
    // poppler writes the lines from the top of the page downward.
    expect(lines.map((text) => text.trim().replace('\f', '')).reverse()).toEqual(HOSTILE);
    expect(run('pdfinfo', file)).toMatch(/Page size: +595\.276 x 841\.89 pts \(A4\)/);
  });

  it.skipIf(!installed('mutool'))('puts every letter where it is measured, for mupdf', async () => {
    const text = 'AVA To 1:7';
    const turned: Affine = [0, 1, -1, 0, 200, 10];
    writeFileSync(
      file,
      await pdfBytes([{ ...A4, placed: [{ drawing: drawing(textMark(text, [20, 30], 5)), at: turned }] }]),
    );
    const letters = [
      ...run('mutool', 'trace', file, '1').matchAll(/<g unicode="(.)" .*?x="(.*?)" y="(.*?)"/g),
    ];
    expect(letters.map(([, letter]) => letter).join('')).toBe(text);
    letters.forEach(([, , x, y], i) => {
      const [wantedX, wantedY] = apply(turned, [20 + textWidth(text.slice(0, i), 5, 'regular'), 30]);
      // mupdf cuts every advance short to thousandths of an em, here 0.005 mm; it counts downward from the top.
      expect(Math.abs(Number(x) * POINT - wantedX)).toBeLessThan(0.001 + 0.005 * i);
      expect(Math.abs(297 - Number(y) * POINT - wantedY)).toBeLessThan(0.001 + 0.005 * i);
    });
  });

  it.skipIf(!installed('pdftoppm'))(
    'prints lines with their centre where it was put, for poppler',
    async () => {
      // 100 dots to the millimetre.
      const small: PrintPage = {
        width: 30,
        height: 20,
        placed: [
          { drawing: drawing(line([12.34, 0], [12.34, 20]), line([0, 7.77], [30, 7.77])), at: IDENTITY },
        ],
      };
      writeFileSync(file, await pdfBytes([small]));
      run('pdftoppm', '-r', '2540', '-gray', '-singlefile', file, join(folder, 'dots'));
      const dots = readFileSync(join(folder, 'dots.pgm'));
      const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(dots.toString('latin1', 0, 40));
      const [width, height] = [Number(header?.[1]), Number(header?.[2])];
      expect([width, height]).toEqual([3000, 2000]);
      const darkness = (x: number, y: number): number =>
        255 - (dots[(header?.[0].length ?? 0) + y * width + x] ?? 0);
      /** The middle and the width of what is dark along one row or column, in mm. */
      const stroke = (values: number[]): [number, number] => {
        const total = values.reduce((sum, value) => sum + value, 0);
        const moment = values.reduce((sum, value, i) => sum + value * (i + 0.5), 0);
        return [moment / total / 100, total / 255 / 100];
      };
      const [x, across] = stroke(Array.from({ length: width }, (_, i) => darkness(i, 100)));
      const [y, down] = stroke(Array.from({ length: height }, (_, i) => darkness(100, i)));
      expect(Math.abs(x - 12.34)).toBeLessThan(0.01);
      expect(Math.abs(20 - y - 7.77)).toBeLessThan(0.01);
      // The saw line is 0.18 mm wide; poppler fits edges to whole dots.
      expect(Math.abs(across - 0.18)).toBeLessThan(0.015);
      expect(Math.abs(down - 0.18)).toBeLessThan(0.015);
    },
  );
});
