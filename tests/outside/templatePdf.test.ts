import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { said } from '../cli/program.ts';
import { expectedBands, type KnownJoint } from '../sheets/expectedLines.ts';
import { differences, placing, type Segment } from '../sheets/segments.ts';
import { evenJoint } from './evenJoint.ts';
import { type ReadDocument, type ReadPage, readWithMupdf, readWithPdfjs, type Stroke } from './readPdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

const drawn = (name: string, ...options: string[]): string => {
  const out = join(folder, name);
  said('draw', '--name', name, '--out', out, ...options);
  return join(out, `${name}-templates.pdf`);
};

// By the defaults of common practice: a slope of 1:8; pins half the tail board; a lap a quarter of the front; as many
// tails as bring their tips nearest to three pins: 4 of 17.1 (5 would be 12.6), and 14 of 29.8 (15 would be 27.2).
const LAPPED = evenJoint({ kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, depth: 15 }, 4, 5.5, 8);
const THROUGH = evenJoint(
  { kind: 'through', width: 560, tailBoard: 19, pinBoard: 19, depth: 19 },
  14,
  9.5,
  8,
);

type Board = 'tail' | 'pin';
type Hand = 'left' | 'right';
const PIECES: readonly (readonly [Board, Hand])[] = [
  ['tail', 'left'],
  ['tail', 'right'],
  ['pin', 'left'],
  ['pin', 'right'],
];

interface Lines {
  readonly width: number;
  /** Slopes and squares; baselines and laps; folds. */
  readonly saw: readonly Segment[];
  readonly bold: readonly Segment[];
  readonly folds: readonly Segment[];
}

/** Every line of a whole piece, in its own mm. */
const linesOf = (known: KnownJoint, board: Board, hand: Hand): Lines => {
  const saw: Segment[] = [];
  const bold: Segment[] = [];
  const folds: Segment[] = [];
  let x = 0;
  for (const band of expectedBands(known, board, hand)) {
    if (x > 0)
      folds.push([
        [x, -3],
        [x, known.width + 3],
      ]);
    for (const [role, [a, b]] of band.lines) {
      const line: Segment = [
        [a[0] + x, a[1]],
        [b[0] + x, b[1]],
      ];
      if (role === 'slope' || role === 'square') saw.push(line);
      else bold.push(line);
    }
    x += band.width;
  }
  return { width: x, saw, bold, folds };
};

const hasWidth = (width: number) => (stroke: Stroke) => Math.abs(stroke.width - width) < 0.001;
const segment = ({ from, to }: Stroke): Segment => [from, to];
const penned = ({ strokes }: ReadPage, width: number): Segment[] =>
  strokes.filter(hasWidth(width)).map(segment);

const missing = (found: readonly Segment[], wanted: readonly Segment[]): string[] =>
  differences(found, wanted, 0.01).filter((line) => line.startsWith('missing'));

const installed = (program: string): boolean => spawnSync(program, ['-v']).error === undefined;

const readers = [
  { reader: 'pdf.js', read: readWithPdfjs, there: true },
  { reader: 'mupdf', read: async (file: string) => readWithMupdf(file), there: installed('mutool') },
].filter(({ there }) => there);

let lapped = '';
let through = '';
beforeAll(() => {
  lapped = drawn(
    'lapped',
    '--width',
    '96',
    '--tail-board',
    '11',
    '--pin-board',
    '20',
    '--kind',
    'lapped',
    '--paper',
    'A4',
  );
  through = drawn(
    'through',
    '--width',
    '560',
    '--tail-board',
    '19',
    '--pin-board',
    '19',
    '--kind',
    'through',
    '--paper',
    'Letter',
  );
});

describe.each(readers)('a lapped corner 96 mm wide on A4, read by $reader', ({ read }) => {
  it('has every line of both boards, left and right, where the formulas put it, within 0.01 mm', async () => {
    const { pages } = await read(lapped);
    expect(pages).toHaveLength(1);
    const [page] = pages;
    if (page === undefined) return;
    const edges = penned(page, 0.5);
    const left = PIECES.map(([board, hand]) => linesOf(LAPPED, board, hand));
    const wanted: Segment[] = [];
    // Each edge is the lower edge of one piece, on which all its lines stand.
    for (const edge of edges) {
      const place = placing(edge);
      const i = left.findIndex(
        ({ width, saw, bold, folds }) =>
          Math.abs(Math.hypot(edge[1][0] - edge[0][0], edge[1][1] - edge[0][1]) - width) < 0.01 &&
          missing(penned(page, 0.18), saw.map(place)).length === 0 &&
          missing(penned(page, 0.25), bold.map(place)).length === 0 &&
          missing(penned(page, 0.13), folds.map(place)).length === 0,
      );
      expect([edge, i]).not.toContain(-1);
      wanted.push(...left.splice(i, 1).flatMap(({ saw }) => saw.map(place)));
    }
    expect(left).toEqual([]);
    // And nothing else is drawn to saw to.
    expect(differences(penned(page, 0.18), wanted, 0.01)).toEqual([]);
  });
});

/** A part of a piece as it lies on a page, told by the level lines that run across all of it. */
interface FoundPart {
  readonly page: ReadPage;
  readonly x0: number;
  /** The lower edge, or the line that it is cut along to be laid on its lower neighbour. */
  readonly bottom: number;
  /** The upper edge, or the line that its upper neighbour is laid to. */
  readonly top: number;
  /** Whether it has the edge that everything is measured from. */
  readonly first: boolean;
}

const BOARD = 12 + 19 + 19 + 19 + 12;

const partsOf = ({ pages }: ReadDocument): FoundPart[] =>
  pages.flatMap((page) => {
    const across = (width: number) =>
      penned(page, width).filter(
        ([a, b]) => Math.abs(a[1] - b[1]) < 0.001 && Math.abs(Math.abs(a[0] - b[0]) - BOARD) < 0.01,
      );
    const levels = new Map<string, number[]>();
    for (const [a, b] of across(0.13)) {
      const key = Math.min(a[0], b[0]).toFixed(2);
      levels.set(key, [...(levels.get(key) ?? []), a[1]]);
    }
    return [...levels]
      .sort(([a], [b]) => Number(a) - Number(b))
      .map(([key, heights]): FoundPart => {
        const [bottom = Number.NaN, top = Number.NaN] = heights.sort((p, q) => p - q);
        const x0 = Number(key);
        const first = across(0.5).some(([a, b]) => Math.abs(Math.min(a[0], b[0]) - x0) < 0.01);
        return { page, x0, bottom, top, first };
      });
  });

/** Whether upright lines at an x cover a range without a gap. */
const covers = (lines: readonly Segment[], x: number, from: number, to: number): boolean =>
  lines.some(
    ([a, b]) =>
      Math.abs(a[0] - x) < 0.01 &&
      Math.abs(b[0] - x) < 0.01 &&
      Math.min(a[1], b[1]) < from + 0.01 &&
      Math.max(a[1], b[1]) > to - 0.01,
  );

describe.each(readers)('a through corner 560 mm wide on Letter, read by $reader', ({ read }) => {
  it('is true when its parts are taped: each laid to the line on the part below', async () => {
    const document = await read(through);
    const parts = partsOf(document);
    const starts = parts.flatMap(({ first }, i) => (first ? [i] : []));
    expect(starts).toHaveLength(4);
    const left = PIECES.map(([board, hand]) => linesOf(THROUGH, board, hand));
    starts.forEach((start, i) => {
      const own = parts.slice(start, starts[i + 1] ?? parts.length);
      let y = 0;
      const saw: Segment[] = [];
      const taped = own.map((part) => {
        const { page, x0, bottom, top } = part;
        const from = y;
        const map = ([[ax, ay], [bx, by]]: Segment): Segment => [
          [ax - x0, ay - bottom + from],
          [bx - x0, by - bottom + from],
        ];
        const here = (width: number) =>
          penned(page, width)
            .map(map)
            .filter((line) => line.every(([x]) => x > -0.1 && x < BOARD + 0.1));
        const range = [from, from + top - bottom] as const;
        saw.push(...here(0.18));
        y = range[1];
        return { range, upright: [...here(0.25), ...here(0.13)] };
      });
      expect(y).toBeCloseTo(560, 2);
      const piece = left.findIndex((lines) => differences(saw, lines.saw, 0.01).length === 0);
      expect(piece).toBeGreaterThanOrEqual(0);
      for (const { bold, folds } of left.splice(piece, 1))
        for (const [[x]] of [...bold, ...folds])
          for (const { range, upright } of taped)
            expect([x, range, covers(upright, x, ...range)]).toEqual([x, range, true]);
    });
    expect(left).toEqual([]);
  });

  it('is split nowhere but inside tails', async () => {
    const parts = partsOf(await read(through));
    let y = 0;
    for (const { first, bottom, top } of parts) {
      y = (first ? 0 : y) + top - bottom;
      const inside = THROUGH.tails.some(({ base: [from, to] }) => y > from && y < to);
      expect(inside || Math.abs(y - 560) < 0.01).toBe(true);
    }
  });
});

/** Dots to the millimetre. */
const DOTS = 100;

/**
 * How far the middle of a level or upright line lies off its place as poppler paints it, in mm, on every row of dots
 * across it where nothing else comes near.
 */
const middlesOf = (file: string, pageHeight: number, [a, b]: Segment, pen: number): number[] => {
  const level = Math.abs(a[1] - b[1]) < 1e-6;
  const reach = 40;
  const left = Math.round(Math.min(a[0], b[0]) * DOTS) - (level ? 0 : reach);
  const top = Math.round((pageHeight - Math.max(a[1], b[1])) * DOTS) - (level ? reach : 0);
  const length = Math.round(Math.hypot(a[0] - b[0], a[1] - b[1]) * DOTS);
  const [width, height] = level ? [length, 2 * reach] : [2 * reach, length];
  const crop = ['-x', left, '-y', top, '-W', width, '-H', height].map(String);
  const image = execFileSync('pdftoppm', ['-r', String(25.4 * DOTS), '-gray', '-singlefile', ...crop, file], {
    maxBuffer: 1 << 26,
  });
  const dots = image.subarray(image.length - width * height);
  return Array.from({ length }, (_, k) => {
    const inks = Array.from(
      { length: 2 * reach },
      (_, i) => 255 - (dots[level ? i * width + k : k * width + i] ?? 0),
    );
    const ink = inks.reduce((sum, value) => sum + value, 0);
    const middle = inks.reduce((sum, value, i) => sum + value * (i + 0.5), 0) / ink;
    return {
      breadth: ink / 255 / DOTS,
      at: level ? pageHeight - (top + middle) / DOTS : (left + middle) / DOTS,
    };
  })
    .filter(({ breadth }) => Math.abs(breadth - pen) < 0.015)
    .map(({ at }) => at - (level ? a[1] : a[0]));
};

describe('the PDF of a corner', () => {
  it('asks for printing at actual size, and for the paper of its pages', async () => {
    // ISO 216: A4 is 210 x 297 mm. ANSI: Letter is 8.5 x 11 in, of 25.4 mm.
    const sizes: readonly (readonly [string, number, number])[] = [
      [lapped, 210, 297],
      [through, 8.5 * 25.4, 11 * 25.4],
    ];
    for (const [file, width, height] of sizes) {
      const { pages, preferences } = await readWithPdfjs(file);
      for (const page of pages) {
        expect(page.width).toBeCloseTo(width, 4);
        expect(page.height).toBeCloseTo(height, 4);
      }
      // ISO 32000-1, table 150.
      expect(preferences).toMatchObject({ PrintScaling: 'None', PickTrayByPDFSize: true });
    }
  });

  it('keeps every line inside the margins, a part that is taped included', async () => {
    for (const file of [lapped, through])
      for (const { strokes, width, height } of (await readWithPdfjs(file)).pages)
        for (const { from, to, width: pen } of strokes)
          for (const [x, y] of [from, to]) {
            expect(Math.min(x, width - x) - pen / 2).toBeGreaterThan(5);
            expect(Math.min(y, height - y) - pen / 2).toBeGreaterThan(5);
          }
  });

  it.skipIf(!installed('qpdf'))('has nothing that qpdf complains of', () => {
    for (const file of [lapped, through])
      expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
        'No syntax or stream encoding errors found',
      );
  });

  it.skipIf(!installed('pdftotext'))('says to poppler what stands on its pieces', () => {
    const text = execFileSync('pdftotext', ['-raw', lapped, '-'], { encoding: 'utf8' }).replace(/\s+/gu, ' ');
    for (const words of [
      'lapped · tail board',
      'lapped · pin board',
      'OUTSIDE FACE',
      'lap 5 mm',
      'slope 1:8',
      'quantity 1',
    ])
      expect(text).toContain(words);
  });

  it.skipIf(!installed('pdftoppm'))(
    'prints its lines with their middle where they are, for poppler',
    async () => {
      const [page] = (await readWithPdfjs(lapped)).pages;
      const [edge] = page === undefined ? [] : penned(page, 0.5);
      if (page === undefined || edge === undefined) throw new Error('no edge');
      const place = placing(edge);
      const { saw, bold } =
        PIECES.map(([board, hand]) => linesOf(LAPPED, board, hand)).find(
          (lines) => missing(penned(page, 0.18), lines.saw.map(place)).length === 0,
        ) ?? linesOf(LAPPED, 'tail', 'left');
      const straight = ([a, b]: Segment) => Math.abs(a[0] - b[0]) < 1e-6 || Math.abs(a[1] - b[1]) < 1e-6;
      const judged = [
        ...saw.map((line) => ({ line: place(line), pen: 0.18 })),
        ...bold.map((line) => ({ line: place(line), pen: 0.25 })),
      ].filter(({ line }) => straight(line));
      for (const { line, pen } of [...judged.slice(0, 4), ...judged.slice(-2)]) {
        const middles = middlesOf(lapped, page.height, line, pen);
        expect(middles.length).toBeGreaterThan(100);
        // Half of them at least: near a line's ends others meet it.
        const median = middles.sort((p, q) => p - q)[Math.floor(middles.length / 2)];
        expect(Math.abs(median ?? Number.NaN)).toBeLessThan(0.01);
      }
    },
  );
});
