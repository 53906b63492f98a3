import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Point } from '../../src/drawing/drawing.ts';
import type { KnownJoint } from '../template/anyCorner.ts';
import { expectedBands } from '../template/expectedLines.ts';
import { differences, type Segment } from '../template/segments.ts';
import { type ReadDocument, type ReadPage, readWithMupdf, readWithPdfjs, type Stroke } from './readPdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

const drawn = (name: string, ...options: string[]): string => {
  const out = join(folder, name);
  execFileSync('node', ['dist/halfpin.js', 'draw', '--name', name, '--out', out, ...options]);
  return join(out, `${name}-templates.pdf`);
};

type Known = Omit<KnownJoint, 'joint'>;

/** Even tails worked out by the formulas: W = 2 h + k t + (k - 1) p, and a base L/n narrower on either side. */
const evenJoint = (sizes: Omit<Known, 'tails' | 'proud'>, count: number, pin: number, run: number): Known => {
  const { width, depth } = sizes;
  const tip = (width - 2 * pin - (count - 1) * pin) / count;
  const tails = Array.from({ length: count }, (_, i) => {
    const from = pin + i * (tip + pin);
    return {
      tip: [from, from + tip] as const,
      base: [from + depth / run, from + tip - depth / run] as const,
    };
  });
  return { ...sizes, proud: 0, tails };
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
const linesOf = (known: Known, board: Board, hand: Hand): Lines => {
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

/** Takes a piece's mm to the page where its lower edge runs along a line. */
const placing = ([from, to]: Segment): ((line: Segment) => Segment) => {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const place = ([x, y]: Point): Point => [from[0] + x * dx - y * dy, from[1] + x * dy + y * dx];
  return ([a, b]) => [place(a), place(b)];
};

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

/** Where the same line stands again on the page, on which a part is to be laid. */
const levelLines = (page: ReadPage, x0: number, x1: number): number[] =>
  penned(page, 0.13)
    .filter(
      ([a, b]) =>
        Math.abs(a[1] - b[1]) < 0.001 &&
        Math.abs(Math.min(a[0], b[0]) - x0) < 0.001 &&
        Math.abs(Math.max(a[0], b[0]) - x1) < 0.001,
    )
    .map(([a]) => a[1])
    .sort((p, q) => p - q);

interface FoundPart {
  readonly page: number;
  readonly x0: number;
  /** The page's height of the lower edge, or of the line that the part is laid to its lower neighbour along. */
  readonly bottom: number;
  /** The page's height of the line that its upper neighbour is laid along; none on the topmost part. */
  readonly top: number | undefined;
  readonly saw: readonly Segment[];
  readonly bold: readonly Segment[];
}

/** The parts on the pages, in the order of the pages and from left to right: each has two folds, 19 mm apart. */
const partsOf = ({ pages }: ReadDocument): FoundPart[] =>
  pages.flatMap((page, number) => {
    const upright = [
      ...new Set(
        penned(page, 0.13)
          .filter(([a, b]) => Math.abs(a[0] - b[0]) < 0.001 && Math.abs(a[1] - b[1]) > 100)
          .map(([a]) => Number(a[0].toFixed(2))),
      ),
    ].sort((p, q) => p - q);
    // A part's outline and its folds: 0, 31, 50 and 81 mm from its left.
    const lefts = upright.filter((x) =>
      [31, 50, 81].every((off) => upright.some((other) => Math.abs(other - x - off) < 0.03)),
    );
    return lefts.map((x0): FoundPart => {
      const within = ([a, b]: Segment) => [a, b].every(([x]) => x > x0 - 0.1 && x < x0 + 81.1);
      const exact =
        penned(page, 0.13).find(
          ([a, b]) =>
            Math.abs(a[0] - x0) < 0.01 && Math.abs(b[0] - x0 - 81) < 0.02 && Math.abs(a[1] - b[1]) < 0.001,
        )?.[0][0] ?? x0;
      const levels = levelLines(page, exact, exact + 81);
      const edge = penned(page, 0.5).find(within);
      return {
        page: number,
        x0: exact,
        bottom: edge === undefined ? (levels[0] ?? Number.NaN) : edge[0][1],
        top: undefined,
        saw: penned(page, 0.18).filter(within),
        bold: penned(page, 0.25).filter(within),
      };
    });
  });
