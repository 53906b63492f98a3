import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Mark, Point } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { textMark } from '../../src/drawing/shapes.ts';
import { Failure } from '../../src/files/failure.ts';
import { pdfBytes } from '../render/pdfBytes.ts';
import { anyPlan } from './anyPlan.ts';
import { line } from './line.ts';
import { pageFaults } from './pageFaults.ts';
import { paintedByPoppler, type Raster } from './raster.ts';
import { sheetsOfPlan, type Wish } from './sheetsOfPlan.ts';

const folder = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Coarse, to take less time: what is drawn is judged to 0.005 mm, and this finds what a painter adds to it. */
const DOTS_PER_INCH = 72;

/** How many dots have ink more than a dot inside the margins: poppler moves a line to whole dots. */
const inkInMargins = (raster: Raster, { width, height }: PrintPage, margin: number): number => {
  const dots = (length: number) => (length / 25.4) * DOTS_PER_INCH;
  const outside = (at: number, size: number) => at + 2 <= dots(margin) || at - 1 >= dots(size - margin);
  const columns = Array.from({ length: raster.width }, (_, x) => x);
  const sides = columns.filter((x) => outside(x, width));
  let count = 0;
  for (let y = 0; y < raster.height; y++)
    for (const x of outside(y, height) ? columns : sides) if (raster.ink(x, y) > 0) count += 1;
  return count;
};

/** Pages as poppler paints them. */
const painted = async (pages: readonly PrintPage[]): Promise<Raster[]> => {
  const file = join(folder, 'pages.pdf');
  writeFileSync(file, await pdfBytes(pages));
  return paintedByPoppler(file, DOTS_PER_INCH);
};

/** Every page with ink in its margins as poppler paints it, or with none at all. */
const paintedFaults = async (pages: readonly PrintPage[], margin: number): Promise<string[]> => {
  const rasters = await painted(pages);
  expect(rasters).toHaveLength(pages.length);
  return pages.flatMap((page, i) => {
    const raster = rasters[i];
    const count = raster === undefined ? Number.NaN : inkInMargins(raster, page, margin);
    return count === 0 ? [] : [`page ${i + 1}: ${count} dots of ink in the margins`];
  });
};

describe('the judges of pages', () => {
  const pageOf = (...marks: Mark[]): PrintPage => ({
    width: 100,
    height: 150,
    placed: [{ at: IDENTITY, drawing: { box: { x0: 0, y0: 0, x1: 100, y1: 150 }, marks } }],
  });

  it('find labels over one another and over lines, but not on a white ground', () => {
    const [buttons, thread] = [textMark('Buttons', [20, 50], 5), textMark('Thread', [30, 52], 5)];
    const ruled = line([10, 51], [90, 51]);
    const corners: readonly Point[] = [
      [15, 45],
      [60, 45],
      [60, 60],
      [15, 60],
    ];
    const ground: Mark = { kind: 'fill', role: 'label', tone: 1, paths: [{ points: corners, closed: true }] };
    expect(pageFaults(pageOf(buttons, textMark('Cloth', [20, 80], 5)), 6)).toEqual([]);
    expect(pageFaults(pageOf(buttons, thread), 6)).toEqual(['"Buttons" lies over "Thread"']);
    expect(pageFaults(pageOf(ruled, buttons), 6)).toEqual(['"Buttons" lies over a line of square']);
    expect(pageFaults(pageOf(ruled, ground, buttons), 6)).toEqual([]);
    expect(pageFaults(pageOf(ground, buttons, ruled), 6)).toEqual(['"Buttons" lies over a line of square']);
  });

  it('find ink in the margins, drawn and painted', async () => {
    const right = pageOf(line([6.1, 20], [6.1, 100]), line([10, 6.1], [93.9, 6.1]));
    expect(pageFaults(right, 6)).toEqual([]);
    expect(await paintedFaults([right], 6)).toEqual([]);
    for (const wrong of [
      line([5, 20], [5, 100]),
      line([10, 50], [97, 50]),
      line([10, 146], [30, 146]),
      textMark('y', [20, 3], 5),
    ]) {
      expect(pageFaults(pageOf(wrong), 6)).toHaveLength(1);
      expect(await paintedFaults([pageOf(wrong)], 6)).toHaveLength(1);
    }
  });
});

const PLAIN: Omit<Wish, 'paper' | 'units'> = { margin: 6, flat: false, rods: true };

describe.each(readdirSync('examples').filter((file) => file.endsWith('.yaml')))(
  'every page of examples/%s',
  (example) => {
    it.each([
      ['A4', 'mm'],
      ['Letter', 'in'],
      ['A3', 'mm'],
      ['610xroll', 'mm'],
    ] as const)('on %s keeps its margins white, and its labels apart', async (paper, units) => {
      const pages = await sheetsOfPlan(join('examples', example), { ...PLAIN, paper, units });
      expect(pages.flatMap((page) => pageFaults(page, PLAIN.margin))).toEqual([]);
      expect(await paintedFaults(pages, PLAIN.margin)).toEqual([]);
    });
  },
);

const tenth = (most: number) => fc.integer({ min: -most * 10, max: most * 10 }).map((value) => value / 1e4);

const anyWish: fc.Arbitrary<Wish> = fc.record(
  {
    paper: fc.constantFrom('A5', 'A4', 'A3', 'Letter', 'Tabloid', '297x210', '610xroll'),
    margin: fc.integer({ min: 5, max: 15 }),
    units: fc.constantFrom('mm' as const, 'in' as const),
    flat: fc.boolean(),
    rods: fc.boolean(),
    // Up to 1.5 % long or short, and 1 mm askew in 100.
    error: fc.record({ x: tenth(15).map((by) => 1 + by), y: tenth(15).map((by) => 1 + by), skew: tenth(10) }),
  },
  { requiredKeys: ['paper', 'margin', 'units', 'flat', 'rods'] },
);

/** Plans that can be made, the same ones always, and what is printed of each. */
const plansThatCanBeMade = async (count: number) => {
  const plans: { readonly text: string; readonly wish: Wish; readonly pages: readonly PrintPage[] }[] = [];
  for (const [text, wish] of fc.sample(fc.tuple(anyPlan, anyWish), { seed: 4, numRuns: 2 * count })) {
    if (plans.length === count) break;
    const file = join(folder, 'plan.json');
    writeFileSync(file, text);
    try {
      plans.push({ text, wish, pages: await sheetsOfPlan(file, wish) });
    } catch (error) {
      // Not every plan can be made; that its pages cannot be laid is no excuse.
      if (!(error instanceof Failure)) throw error;
    }
  }
  return plans;
};

describe('every page of 50 random plans', () => {
  it('keeps its margins white, and its labels apart', async () => {
    const plans = await plansThatCanBeMade(50);
    expect(plans).toHaveLength(50);
    for (const { text, wish, pages } of plans) {
      const faults = pages.flatMap((page) => pageFaults(page, wish.margin, wish.error));
      expect([text, wish, faults]).toEqual([text, wish, []]);
    }
    // Painting takes longer, so it is done of some.
    const some = plans.filter((_, i) => i % 10 === 0);
    for (const { text, wish, pages } of some)
      expect([text, wish, await paintedFaults(pages, wish.margin)]).toEqual([text, wish, []]);
  });
});
