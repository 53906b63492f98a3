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
import { type ReadPage, readWithPdfjs, type Stroke } from './readPdf.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-rods-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));

const [BUSH, DIAMETER, TOGETHER] = [16, 12.7, 14];
const TAN = Math.tan((8 * Math.PI) / 180);

/** One corner of even tails: its width, tails, pin, half pin and depth. */
const CORNERS = [
  { name: 'Tray', width: 120, tails: 3, pin: 9, half: 6, depth: 15 },
  { name: 'Box', width: 250, tails: 5, pin: 12, half: 7, depth: 15 },
] as const;

const PLAN = join(HERE, 'corners.yaml');
writeFileSync(
  PLAN,
  `cutter: {diameter: ${DIAMETER}, angle: 8, length: 20}
fingers: {together: ${TOGETHER}, bush: ${BUSH}}
joints:
${CORNERS.map(
  ({ name, width, tails, pin, half, depth }) =>
    `  - {name: ${name}, kind: lapped, width: ${width}, tailBoard: 11, pinBoard: ${depth + 5}, lap: 5, tails: ${tails}, pin: ${pin}, halfPin: ${half}}`,
).join('\n')}
`,
);

/** Where the fingers of a corner end, by the formulas: t = (W - 2 h - (k - 1) p) / k, its base L tan a narrower on either side, the pair's edges (B - D) / 2 inside that; and a spacer that leaves half of a pair pushed together on either side. */
const edgesOf = ({ width, tails, pin, half, depth }: (typeof CORNERS)[number]) => {
  const tip = (width - 2 * half - (tails - 1) * pin) / tails;
  return Array.from({ length: tails }, (_, i) => {
    const from = half + i * (tip + pin) + depth * TAN + (BUSH - DIAMETER) / 2;
    const to = half + i * (tip + pin) + tip - depth * TAN - (BUSH - DIAMETER) / 2;
    return { outer: [from, to], inner: [from + TOGETHER / 2, to - TOGETHER / 2] };
  });
};

/** What a printer makes of a page: 1 mm across is `x` mm, 1 mm up `y` mm, and uprights lean. */
const printed = ({ width, height, strokes }: ReadPage, { x, y, skew }: PrinterError): Stroke[] => {
  const at = ([px, py]: Point): Point => {
    const [dx, dy] = [px - width / 2, py - height / 2];
    return [dx * x + dy * y * skew, dy * y * Math.sqrt(1 - skew * skew)];
  };
  return strokes.map((stroke) => ({ ...stroke, from: at(stroke.from), to: at(stroke.to) }));
};

const lengthOf = ({ from, to }: Stroke): number => Math.hypot(to[0] - from[0], to[1] - from[1]);
const isPen = (width: number) => (stroke: Stroke) => Math.abs(stroke.width - width) < 0.003;

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

describe.each([
  ['a printer that prints true', TRUE],
  ['a printer that is corrected', { x: 0.996, y: 1.003, skew: 0.002 }],
])('setting rods of two corners on %s', (name, error) => {
  let strokes: Stroke[] = [];
  beforeAll(async () => {
    const project = await loadProject(PLAN, {});
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
    const rods = pages.find((page) => page.strokes.some(isPen(0.5)));
    strokes = rods === undefined ? [] : printed(rods, error);
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
