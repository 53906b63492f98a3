import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Role } from '../../src/drawing/drawing.ts';
import { halfpin } from '../cli/program.ts';
import { expectedBands } from '../sheets/expectedLines.ts';
import { placing, type Segment } from '../sheets/segments.ts';
import { evenJoint } from './evenJoint.ts';
import { paintedByMupdf, paintedByPoppler, paintedByResvg, type Raster } from './raster.ts';
import { type ReadPage, readWithPdfjs } from './readPdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));
// Letter paper, 8.5 x 11 in, is a whole number of dots both ways.
beforeAll(() => {
  halfpin(
    [
      'draw',
      '--width',
      '96',
      '--tail-board',
      '11',
      '--pin-board',
      '20',
      '--kind',
      'lapped',
      '--as',
      'pdf,svg',
    ].concat('--paper', 'Letter', '--out', folder),
  );
});

const DOTS_PER_INCH = 1200;
/** Dots to the millimetre: half of one is 0.011 mm. */
const DOTS = DOTS_PER_INCH / 25.4;

// By the defaults of common practice, worked out by hand: a lap of a quarter, pins of half the tail board, slope 1:8.
const CORNER = evenJoint({ kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, depth: 15 }, 4, 5.5, 8);

/** A line as the formulas have it, and the width that ISO 128 gives its kind. */
interface Ruled {
  readonly line: Segment;
  readonly pen: number;
}
const PEN: Readonly<Partial<Record<Role, number>>> = {
  slope: 0.18,
  square: 0.18,
  baseline: 0.25,
  lap: 0.25,
};
const FOLD = 0.13;

interface PieceName {
  readonly board: 'tail' | 'pin';
  readonly hand: 'left' | 'right';
  readonly file: string;
}
const PIECES: readonly PieceName[] = [
  { board: 'tail', hand: 'left', file: 'corner-tail-board-a.svg' },
  { board: 'tail', hand: 'right', file: 'corner-tail-board-b.svg' },
  { board: 'pin', hand: 'left', file: 'corner-pin-board-a.svg' },
  { board: 'pin', hand: 'right', file: 'corner-pin-board-b.svg' },
];

/** Every line to saw, gauge or fold along of a piece. */
const linesOf = ({ board, hand }: PieceName) => {
  const lines: Ruled[] = [];
  let x = 0;
  const ruled = ([[ax, ay], [bx, by]]: Segment, pen: number): Ruled => ({
    pen,
    line: [
      [ax + x, ay],
      [bx + x, by],
    ],
  });
  for (const band of expectedBands(CORNER, board, hand)) {
    const fold: Segment = [
      [0, -3],
      [0, CORNER.width + 3],
    ];
    if (x > 0) lines.push(ruled(fold, FOLD));
    lines.push(...band.lines.map(([role, line]) => ruled(line, PEN[role] ?? Number.NaN)));
    x += band.width;
  }
  return { lines, width: x };
};

/** How a line was painted at one place: how far its two edges lie off where they should, in dots. */
type Station = readonly [number, number];

/** Room about a line's edges that must be white, or something else comes near; and dots that the ink may spill into. */
const WHITE = 2;
const SPILL = 2;

/** A line's edges as it was painted, at every half millimetre where nothing comes near; none in the gaps of dashes. */
const stationsOf = (raster: Raster, { line: [a, b], pen }: Ruled): Station[] => {
  const level = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]);
  // Along the line run the dots' columns where it is nearly level, and their rows where it is nearly upright.
  const column = ([x]: Segment[0]) => x * DOTS;
  const row = ([, y]: Segment[0]) => raster.height - y * DOTS;
  const [along, across] = level ? [column, row] : [row, column];
  const ink = (i: number, j: number) => (level ? raster.ink(i, j) : raster.ink(j, i)) / 255;
  const [from, to] = [Math.min(along(a), along(b)), Math.max(along(a), along(b))];
  const rise = (across(b) - across(a)) / (along(b) - along(a));
  const half = (pen / 2) * DOTS * Math.hypot(1, rise);
  const stations: Station[] = [];
  for (let i = Math.ceil(from + DOTS); i < to - DOTS; i += Math.round(DOTS / 2)) {
    const middle = across(a) + (i + 0.5 - along(a)) * rise;
    const [first, last] = [Math.floor(middle - half) - SPILL, Math.ceil(middle + half) + SPILL];
    let [sum, moment, around] = [0, 0, 0];
    for (let j = first - WHITE; j < last + WHITE; j++) {
      if (j < first || j >= last) around += ink(i, j);
      sum += ink(i, j);
      moment += ink(i, j) * (j + 0.5);
    }
    if (around > 0 || sum < half) continue;
    const found = moment / sum;
    stations.push([found - sum / 2 - (middle - half), found + sum / 2 - (middle + half)]);
  }
  return stations;
};

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** What is wrong with how lines were painted. */
const faultsOf = (raster: Raster, lines: readonly Ruled[]): string[] =>
  lines.flatMap(({ line, pen }) => {
    const stations = stationsOf(raster, { line, pen });
    const [near, far] = [median(stations.map(([edge]) => edge)), median(stations.map(([, edge]) => edge))];
    const worst = Math.max(...stations.flat().map(Math.abs));
    const wrong = [
      ...(stations.length < 10 ? [`seen at ${stations.length} places only`] : []),
      // Painters fit a line to whole dots: its middle to half a dot, and its width as well.
      ...(Math.abs(near + far) / 2 < 0.5 ? [] : [`its middle is ${(near + far) / 2} dots off`]),
      ...(Math.max(Math.abs(near), Math.abs(far)) < 1 ? [] : [`its edges are ${near} and ${far} dots off`]),
      // Where hatching meets it, it may look wider, but by less than itself.
      ...(worst < 0.5 + pen * DOTS ? [] : [`an edge is ${worst} dots off`]),
    ];
    return wrong.map((fault) => `${JSON.stringify(line)}: ${fault}`);
  });

const painters = [
  { painter: 'poppler', paint: paintedByPoppler },
  { painter: 'mupdf', paint: paintedByMupdf },
];

const NO_PAGE: Raster = { width: 0, height: 0, ink: () => 0 };

/** The reference edges on a page, each the lower edge of a piece: half a millimetre wide. */
const edgesOf = ({ strokes }: ReadPage): Segment[] =>
  strokes.filter(({ width }) => Math.abs(width - 0.5) < 0.001).map(({ from, to }): Segment => [from, to]);

describe('a corner painted at 1200 dots to the inch has every line where the formulas put it, within half a dot', () => {
  it.each(painters)('from its PDF by $painter', async ({ paint }) => {
    const file = join(folder, 'corner-templates.pdf');
    const { pages } = await readWithPdfjs(file);
    const rasters = paint(file, DOTS_PER_INCH);
    expect(rasters.map(({ width, height }) => [width, height])).toEqual(pages.map(() => [10200, 13200]));
    const left = PIECES.map(linesOf);
    pages.forEach((page, number) => {
      for (const edge of edgesOf(page)) {
        const place = placing(edge);
        const faults = left.map(({ lines, width }) =>
          Math.abs(Math.hypot(edge[1][0] - edge[0][0], edge[1][1] - edge[0][1]) - width) > 0.01
            ? ['of another width']
            : faultsOf(
                rasters[number] ?? NO_PAGE,
                lines.map(({ line, pen }) => ({ line: place(line), pen })),
              ),
        );
        const i = faults.findIndex((found) => found.length === 0);
        expect(i < 0 ? faults : []).toEqual([]);
        left.splice(i, 1);
      }
    });
    expect(left).toEqual([]);
  });

  it.each(PIECES)('from the SVG of its $board board, $hand, by resvg', (piece) => {
    const raster = paintedByResvg(readFileSync(join(folder, piece.file), 'utf8'), DOTS_PER_INCH);
    // Three millimetres stand out all round for the folds.
    const bottom = raster.height / DOTS - CORNER.width - 3;
    const place = placing([
      [3, bottom],
      [4, bottom],
    ]);
    const lines = linesOf(piece).lines.map(({ line, pen }) => ({ line: place(line), pen }));
    expect(faultsOf(raster, lines)).toEqual([]);
  });
});
