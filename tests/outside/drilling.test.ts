import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Point } from '../../src/drawing/drawing.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import type { PrinterError } from '../../src/paper/printerCorrection.ts';
import { readProject } from '../../src/project/readProject.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { said } from '../cli/program.ts';
import { pdfBytes } from '../render/pdfBytes.ts';
import { value } from '../value.ts';
import { isPen, lengthOf, printed } from './printedPage.ts';
import { readWithMupdf, readWithPdfjs, type Stroke } from './readPdf.ts';

const HERE = mkdtempSync(join(tmpdir(), 'halfpin-drilling-'));
afterAll(() => rmSync(HERE, { recursive: true, force: true }));

/** Clearances of 0.5 at each side and 1 above. */
const PLAN = `name: Chest
stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {slope: "1:7", pin: 5, halfPin: 6, lap: 5}
groove: {offset: 11, width: 5, depth: 5}
fit: {side: 0.5, top: 1}
pulls: {holes: {diameter: 5}}
drawers:
- {name: Buttons, opening: {width: 281, height: 77, depth: 420}, pulls: {above: 5%}}
- {name: Cloth, opening: {width: 575, height: 191, depth: 420}, pulls: {number: 2, holes: {spacing: 64}}, locks: {pin: 18}}
- {name: Thread, opening: {width: 121, height: 65, depth: 420}, front: {lip: {sides: 8, top: 6, bottom: 0}}}
`;

/** A template: the height of its front, and its holes from the end and the lower edge, worked out by hand. */
interface Known {
  readonly high: number;
  readonly holes: readonly Point[];
}

const KNOWN: Readonly<Record<string, Known>> = {
  // 280 x 76: in the middle, 5 % of 76 above 38.
  'buttons-front-drilling-left': { high: 76, holes: [[140, 41.8]] },
  // 574 x 190: a quarter of it is 143.5, 32 to either side; the key is in the middle, 18 below the upper edge.
  'cloth-front-drilling-left': {
    high: 190,
    holes: [
      [111.5, 95],
      [175.5, 95],
      [287, 172],
    ],
  },
  'cloth-front-drilling-right': {
    high: 190,
    holes: [
      [111.5, 95],
      [175.5, 95],
    ],
  },
  // 121 + 2 x 8 = 137 long, 65 + 6 = 71 wide.
  'thread-front-drilling-left': { high: 71, holes: [[68.5, 35.5]] },
};

const TRUE: PrinterError = { x: 1, y: 1, skew: 0 };

const middleOf = ({ from, to }: Stroke): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];

/** The distance of a point from the line that a stroke lies on. */
const offLine = ([x, y]: Point, stroke: Stroke): number =>
  Math.abs(
    (stroke.to[0] - stroke.from[0]) * (y - stroke.from[1]) -
      (stroke.to[1] - stroke.from[1]) * (x - stroke.from[0]),
  ) / lengthOf(stroke);

/** The sine of the angle between two strokes. */
const sine = (a: Stroke, b: Stroke): number =>
  Math.abs((a.to[0] - a.from[0]) * (b.to[1] - b.from[1]) - (a.to[1] - a.from[1]) * (b.to[0] - b.from[0])) /
  (lengthOf(a) * lengthOf(b));

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.1;

const apart = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/**
 * Every template on a page, by its bold upper edge: the fold at the lower edge is parallel to that and 6 mm longer, as folds run 3 mm
 * past the outline, and its middle is opposite the edge's; the fold at the end begins 3 mm beyond an end of the edge, and is 6 mm longer
 * than the edges lie apart. Places on it are measured along the edge and square to it, from where the folds cross.
 */
const templatesOn = (strokes: readonly Stroke[]): Known[] => {
  const thin = strokes.filter(isPen(0.13));
  const arms = strokes.filter(isPen(0.18)).filter((stroke) => lengthOf(stroke) > 5);
  return strokes.filter(isPen(0.5)).flatMap((edge): Known[] => {
    const lower = thin.find(
      (each) =>
        near(lengthOf(each), lengthOf(edge) + 6) &&
        sine(each, edge) < 0.001 &&
        near(apart(middleOf(each), middleOf(edge)), offLine(middleOf(edge), each)) &&
        offLine(middleOf(edge), each) > 20,
    );
    if (lower === undefined) return [];
    const high = offLine(middleOf(edge), lower);
    // The far end of a whole front is bold too, and all of these cover more of the front than it is high.
    if (high > lengthOf(edge)) return [];
    const ends = [edge.from, edge.to] as const;
    const [start, far] = thin.some(
      (each) =>
        near(lengthOf(each), high + 6) &&
        [each.from, each.to].some((point) => near(apart(point, ends[0]), 3)),
    )
      ? ends
      : [ends[1], ends[0]];
    const along = ([x, y]: Point): number =>
      ((x - start[0]) * (far[0] - start[0]) + (y - start[1]) * (far[1] - start[1])) / lengthOf(edge);
    const holes = arms
      .filter((arm) => sine(arm, edge) < 0.001)
      .flatMap((arm): Point[] => {
        const middle = middleOf(arm);
        const place: Point = [along(middle), offLine(middle, lower)];
        const isOn =
          place[0] > 0 && place[0] < lengthOf(edge) && place[1] < high && offLine(middle, edge) < high;
        if (!isOn) return [];
        // The other arm crosses it in its middle.
        expect(arms.some((other) => sine(other, arm) > 0.999 && apart(middleOf(other), middle) < 0.01)).toBe(
          true,
        );
        return [place];
      });
    return [{ high, holes }];
  });
};

const sorted = (all: readonly Known[]): number[][] =>
  all
    .map(({ high, holes }) => [high, ...holes.toSorted((a, b) => a[0] - b[0]).flat()])
    .toSorted((a, b) => a.length - b.length || (a[0] ?? 0) - (b[0] ?? 0));

/** The pages of drilling templates of the plan, corrected for a printer, in a file. */
const fileFor = async (name: string, paper: string, error: PrinterError): Promise<string> => {
  const reading = readProject(PLAN);
  if (!reading.ok) throw new Error('no plan');
  const sheets = value(
    sheetsOf(reading.value, {
      paper: value(parsePaper(paper)),
      kinds: ['drilling'],
      ...(error !== TRUE && { correction: { printer: 'office', error } }),
    }),
  );
  const file = join(HERE, `${name}.pdf`);
  writeFileSync(file, await pdfBytes(sheets.flatMap((set) => [...set.pages()])));
  return file;
};

const expectKnown = (pages: readonly (readonly Stroke[])[]): void => {
  const found = sorted(pages.flatMap(templatesOn));
  const wanted = sorted(Object.values(KNOWN));
  expect(found.map(({ length }) => length)).toEqual(wanted.map(({ length }) => length));
  const errors = found.flatMap((numbers, i) =>
    numbers.map((number, j) => Math.abs(number - (wanted[i]?.[j] ?? 0))),
  );
  expect(Math.max(...errors)).toBeLessThan(0.02);
};

describe('the drilling templates as paper', () => {
  // On A2 none is divided.
  it('have every hole in its place from the folds, as pdf.js and mupdf read them', async () => {
    const file = await fileFor('true', 'A2', TRUE);
    const { pages } = await readWithPdfjs(file);
    expectKnown(pages.map(({ strokes }) => strokes));
    expectKnown(readWithMupdf(file).pages.map(({ strokes }) => strokes));
  });

  it.each([
    { x: 1.012, y: 0.991, skew: 0 },
    { x: 0.996, y: 1.004, skew: 0.006 },
  ])(
    'have them there after a printer of $x by $y that leans by $skew has printed what is corrected for it',
    async (error) => {
      const { pages } = await readWithPdfjs(await fileFor(`for-${error.x}`, 'A2', error));
      expectKnown(pages.map((page) => printed(page, error)));
      // What is not corrected is found to be wrong.
      expect(() => expectKnown(pages.map(({ strokes }) => strokes))).toThrow();
    },
  );
});

describe('the drilling templates as SVG', () => {
  beforeAll(() => {
    writeFileSync(join(HERE, 'chest.yaml'), PLAN);
    said('draw', join(HERE, 'chest.yaml'), '--as', 'svg', '--out', HERE);
  });

  const paths = (svg: string, role: string): Point[][] =>
    [
      ...(svg.match(new RegExp(`<g class="${role}">([\\s\\S]*?)</g>`, 'u'))?.[1] ?? '').matchAll(
        / d="([^"]*)"/gu,
      ),
    ].flatMap(([, data = '']) =>
      data
        .split('M')
        .slice(1)
        .map((path) =>
          [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]): Point => [Number(x), Number(y)]),
        ),
    );

  it.each(Object.entries(KNOWN))('%s has its holes from its folds', (name, { holes }) => {
    const svg = readFileSync(join(HERE, `${name}.svg`), 'utf8');
    const [lower, end] = paths(svg, 'fold');
    const y = lower?.[0]?.[1] ?? Number.NaN;
    const x = end?.[0]?.[0] ?? Number.NaN;
    const round = paths(svg, 'hole').filter((points) => points.length > 2);
    const found = round.map((points): Point => {
      const mean = (k: 0 | 1): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
      return [Math.abs(mean(0) - x), y - mean(1)];
    });
    const ordered = (all: readonly Point[]) => all.toSorted((a, b) => a[0] - b[0]).flat();
    expect(ordered(found).map((number) => Number(number.toFixed(3)))).toEqual(ordered(holes));
  });
});
