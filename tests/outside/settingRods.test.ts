import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadProject } from '../../src/cli/loadProject.ts';
import type { Point } from '../../src/drawing/drawing.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import type { PrinterError } from '../../src/paper/printerCorrection.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { pdfBytes } from '../render/pdfBytes.ts';
import { value } from '../value.ts';
import { isPen, lengthOf, printed } from './printedPage.ts';
import { readWithPdfjs, type Stroke } from './readPdf.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-rods-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));

const [BUSH, DIAMETER, TOGETHER] = [16, 12.7, 14];
const TAN = Math.tan((8 * Math.PI) / 180);

/** One corner of even tails: its width, tails, pin, half pin and depth. */
const CORNERS = [
  { name: 'Tray', width: 120, tails: 3, pin: 9, half: 6, depth: 15 },
  { name: 'Box', width: 250, tails: 5, pin: 12, half: 7, depth: 15 },
] as const;

/** A corner longer than its paper, so that its rod is taped from parts. */
const LONG = { name: 'Plinth', width: 610, tails: 12, pin: 12, half: 7, depth: 15 } as const;

type Corner = (typeof CORNERS)[number] | typeof LONG;

/** A plan of corners alone, in a file. */
const planOf = (name: string, corners: readonly Corner[]): string => {
  const file = join(HERE, name);
  writeFileSync(
    file,
    `cutter: {diameter: ${DIAMETER}, angle: 8, length: 20}
fingers: {together: ${TOGETHER}, bush: ${BUSH}}
joints:
${corners
  .map(
    ({ name, width, tails, pin, half, depth }) =>
      `  - {name: ${name}, kind: lapped, width: ${width}, tailBoard: 11, pinBoard: ${depth + 5}, lap: 5, tails: ${tails}, pin: ${pin}, halfPin: ${half}}`,
  )
  .join('\n')}
`,
  );
  return file;
};

/** Where the fingers of a corner end, by the formulas: t = (W - 2 h - (k - 1) p) / k, its base L tan a narrower on either side, the pair's edges (B - D) / 2 inside that; and a spacer that leaves half of a pair pushed together on either side. */
const edgesOf = ({ width, tails, pin, half, depth }: Corner) => {
  const tip = (width - 2 * half - (tails - 1) * pin) / tails;
  return Array.from({ length: tails }, (_, i) => {
    const from = half + i * (tip + pin) + depth * TAN + (BUSH - DIAMETER) / 2;
    const to = half + i * (tip + pin) + tip - depth * TAN - (BUSH - DIAMETER) / 2;
    return { outer: [from, to], inner: [from + TOGETHER / 2, to - TOGETHER / 2] };
  });
};

/** Heights above a rod's reference edge of the lines of one pen that are parallel to it and begin on it or before its end. */
const heightsOn = (strokes: readonly Stroke[], edge: Stroke, width: number, pen: number): number[] => {
  const across = lengthOf(edge);
  const [ux, uy] = [(edge.to[0] - edge.from[0]) / across, (edge.to[1] - edge.from[1]) / across];
  const place = ([x, y]: Point) => {
    const [dx, dy] = [x - edge.from[0], y - edge.from[1]];
    return { along: dx * ux + dy * uy, up: dy * ux - dx * uy };
  };
  return strokes.filter(isPen(pen)).flatMap(({ from, to }) => {
    const [a, b] = [place(from), place(to)];
    const [low, high] = [Math.min(a.along, b.along), Math.max(a.along, b.along)];
    const isOnRod = low > -0.02 && high < across + 0.02 && a.up > 0.02 && a.up < width - 0.02;
    return isOnRod && Math.abs(a.up - b.up) < 0.005 && Math.abs(high - low - 8) < 0.02 ? [a.up] : [];
  });
};

const sorted = (numbers: readonly number[]): number[] => numbers.toSorted((a, b) => a - b);

const expectNear = (found: readonly number[], wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  sorted(found).forEach((height, i) => {
    expect(Math.abs(height - (sorted(wanted)[i] ?? 0))).toBeLessThan(0.01);
  });
};

const TRUE: PrinterError = { x: 1, y: 1, skew: 0 };

/** Every page of a plan's rods as a printer makes them, read back; `name` tells its files apart. */
const readRods = async (plan: string, name: string, error: PrinterError): Promise<Stroke[][]> => {
  const project = await loadProject(plan, {});
  const sheets = value(
    sheetsOf(project, {
      paper: value(parsePaper('A4')),
      kinds: ['guides'],
      ...(error !== TRUE && { correction: { printer: 'office', error } }),
    }),
  );
  const file = join(HERE, `${name}.pdf`);
  writeFileSync(file, await pdfBytes(sheets.flatMap((set) => [...set.pages()])));
  const { pages } = await readWithPdfjs(file);
  return pages.map((page) => printed(page, error)).filter((strokes) => strokes.some(isPen(0.5)));
};

describe.each([
  ['a printer that prints true', TRUE],
  ['a printer that is corrected', { x: 0.996, y: 1.003, skew: 0.002 }],
])('setting rods of two corners on %s', (name, error) => {
  let strokes: Stroke[] = [];
  beforeAll(async () => {
    [strokes = []] = await readRods(planOf('corners.yaml', CORNERS), name, error);
  });

  it.each(CORNERS)(
    'have every edge of the fingers of $name where the formulas put it, within 0.01 mm',
    (corner) => {
      const pairs = edgesOf(corner);
      const edges = strokes.filter(isPen(0.5));
      expect(edges).toHaveLength(CORNERS.length);
      const own = edges.filter(
        (edge) =>
          heightsOn(strokes, edge, corner.width, 0.18).length ===
          2 * pairs.flatMap(({ outer }) => outer).length,
      );
      // Marked at both edges of the strip, so that it serves turned end for end.
      const outer = pairs.flatMap((pair) => [...pair.outer, ...pair.outer]);
      const inner = pairs.flatMap((pair) => pair.inner);
      expect(own).toHaveLength(1);
      for (const edge of own) {
        expectNear(heightsOn(strokes, edge, corner.width, 0.18), outer);
        expectNear(heightsOn(strokes, edge, corner.width, 0.13), inner);
      }
    },
  );
});

describe('a setting rod that is longer than its paper', () => {
  it('has every edge of its fingers where the formulas put it, once it is taped at its crosses', async () => {
    const [strokes = []] = await readRods(planOf('long.yaml', [LONG]), 'long', TRUE);
    const across = ({ from, to }: Stroke) => ({
      left: Math.min(from[0], to[0]),
      up: from[1],
      long: Math.abs(from[1] - to[1]) < 0.005 ? lengthOf({ width: 0, from, to }) : 0,
    });
    const levels = strokes.map((stroke) => ({ ...across(stroke), pen: stroke.width }));
    const near = (a: number, b: number) => Math.abs(a - b) < 0.02;
    // The marks at a part's left edge begin there, 8 mm long; its parts stand side by side in their order.
    const marks = levels.filter(({ long, pen }) => near(long, 8) && Math.abs(pen - 0.18) < 0.003);
    const lefts = sorted(marks.map(({ left }) => left)).filter(
      (x, i, all) => i === 0 || x - (all[i - 1] ?? 0) > 0.1,
    );
    const parts = lefts.filter((_, i) => i % 2 === 0);
    expect(parts).toHaveLength(3);
    const edge = levels.find(({ pen }) => Math.abs(pen - 0.5) < 0.003);
    let zero = edge?.up ?? Number.NaN;
    let taped = Number.NaN;
    const found: number[] = [];
    parts.forEach((left, i) => {
      // The arms of its register crosses are 6 mm across, 1.2 mm inside its edge.
      const crosses = sorted(
        levels.filter(({ long, left: x }) => near(long, 6) && near(x, left + 1.2)).map(({ up }) => up),
      );
      expect(crosses).toHaveLength(i === 1 ? 2 : 1);
      if (i > 0) zero = (crosses[0] ?? Number.NaN) - taped;
      found.push(...marks.filter(({ left: x }) => near(x, left)).map(({ up }) => up - zero));
      taped = (crosses.at(-1) ?? Number.NaN) - zero;
    });
    const outer = edgesOf(LONG).flatMap((pair) => pair.outer);
    // What lies under a join is on both parts.
    for (const height of found) expect(outer.some((wanted) => Math.abs(wanted - height) < 0.01)).toBe(true);
    for (const wanted of outer) expect(found.some((height) => Math.abs(wanted - height) < 0.01)).toBe(true);
  });
});
