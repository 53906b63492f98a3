/**
 * Inches as they are printed, against what the trade knows, from memory: a rule is graduated in 64ths, 32nds or 16ths, each
 * fraction in its lowest terms after the whole inches; ASME Y14.5 writes decimal inches without a zero before the point,
 * every one to the places that are meant. What is printed is read by this file's own reader and rebuilt as solids with
 * manifold-3d (https://github.com/elalish/manifold, Apache-2.0).
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { jointOf } from '../joint/told.ts';
import { cornerSolids, dispose, filled, overlap, startSolids } from './jointSolids.ts';

const INCH = 25.4;

const FRACTIONS = ['64', '32', '16', 'decimal'] as const;
type Fractions = (typeof FRACTIONS)[number];

/** Inches between two marks of the rule that is asked for. */
const MARK: Readonly<Record<Fractions, number>> = { 64: 1 / 64, 32: 1 / 32, 16: 1 / 16, decimal: 0.001 };

/** How a figure of inches may be written. */
const FRACTION = String.raw`(?:\d+ )?\d+\/\d+`;
const DECIMAL = String.raw`\d*\.\d{3}`;
const FIGURE = new RegExp(String.raw`(?<![\d./:])(?:${FRACTION}|${DECIMAL})(?![\d./:])`, 'gu');

const inches = (figure: string): number =>
  figure
    .split(' ')
    .map((part) => {
      const [top = '', bottom = '1'] = part.split('/');
      return Number(top) / Number(bottom);
    })
    .reduce((a, b) => a + b, 0);

const PLAN = (fractions: Fractions): string => `
name: Spice drawers
units: in
fractions: ${fractions}
stock: {front: {thickness: 13/16}, side: {thickness: 7/16}}
drawers:
  - {name: Cloves, opening: {width: 6 1/2, height: 3 1/4, depth: 9}}
  - {name: Ginger, opening: {width: 13 3/8, height: 5 3/16, depth: 9}}
  - {name: Sacks, opening: {width: 20 1/4, height: 7 3/16, depth: 9}, joint: {graded: {ratio: 0.9}}}
`;

const planFile = (fractions: Fractions): string => {
  const file = join(folder(), 'spices.yaml');
  writeFileSync(file, PLAN(fractions));
  return file;
};

const sheetsAsText = (plan: string): string => {
  const out = folder();
  expect(halfpin(['draw', plan, '--paper', 'Letter', '--rods', '--out', out]).status).toBe(0);
  return readdirSync(out)
    .map((file) => execFileSync('pdftotext', ['-layout', join(out, file), '-'], { encoding: 'utf8' }))
    .join('\n');
};

describe.each(FRACTIONS)('a plan whose fractions are %s', (fractions) => {
  const mark = MARK[fractions];

  it('prints no figure between two marks, on no sheet and in no list', { timeout: 60_000 }, () => {
    const plan = planFile(fractions);
    const printed = [
      sheetsAsText(plan),
      ...['lay', 'parts', 'compare'].map((command) => halfpin([command, plan]).out),
    ].join('\n');
    const figures = printed.match(FIGURE) ?? [];
    expect(figures.length).toBeGreaterThan(200);
    for (const figure of figures) {
      const marks = inches(figure) / mark;
      // What is shorter than the first mark is in thousandths.
      if (inches(figure) < mark) expect(figure).toMatch(/^\.\d{3}$/u);
      else expect([figure, Math.abs(marks - Math.round(marks)) < 1e-6]).toEqual([figure, true]);
      const [, top, bottom] = /(\d+)\/(\d+)$/u.exec(figure) ?? [];
      if (top !== undefined) {
        expect(Number(top) % 2).toBe(1);
        expect(Number(top)).toBeLessThan(Number(bottom));
      } else expect(figure).not.toMatch(/^0/u);
    }
    expect(printed).not.toMatch(/[+−]\.\d/u);
    expect(printed).toContain(`inches to ${fractions === 'decimal' ? '.001' : `1/${fractions}`}`);
  });
});

const solids = await startSolids();

/** A corner's tails in inches as `lay` prints them, each row `tail 1  tip from  tip to  base from  base to  width`. */
const printedTails = (options: readonly string[], fractions: Fractions) => {
  const { out } = halfpin(['lay', ...options, '--units', 'in', '--fractions', fractions]);
  const figure = String.raw`(${FRACTION}|${DECIMAL}|\d+)`;
  const row = new RegExp(String.raw`^tail \d+ +${[1, 2, 3, 4, 5].map(() => figure).join(' +')}$`, 'gmu');
  return [...out.matchAll(row)].map(([, ...cells]) => cells.map(inches));
};

describe.each([
  { width: 5.6875, tailBoard: 0.4375, pinBoard: 0.8125, kind: 'lapped', tails: 5 },
  { width: 17, tailBoard: 0.75, pinBoard: 0.75, kind: 'through', tails: 9 },
  { width: 2.28125, tailBoard: 0.375, pinBoard: 0.6875, kind: 'lapped', tails: 3 },
] as const)(
  'a $kind corner $width in wide, marked from what is printed',
  ({ kind, tails: count, ...sizes }) => {
    const [width, tailBoard, pinBoard] = [sizes.width, sizes.tailBoard, sizes.pinBoard].map(
      (size) => size * INCH,
    );
    const options = [
      ...['--kind', kind, '--width', `${sizes.width}`, '--tail-board', `${sizes.tailBoard}`],
      ...['--pin-board', `${sizes.pinBoard}`, '--tails', `${count}`],
    ];
    const exact = jointOf({
      kind,
      width: width ?? 0,
      tailBoard: tailBoard ?? 0,
      pinBoard: pinBoard ?? 0,
      spacing: { kind: 'even', tails: count },
      notation: 'in',
    });

    it.each(FRACTIONS)(
      'in %s misses no line by more than half a mark, and its widths add up',
      (fractions) => {
        const printed = printedTails(options, fractions);
        expect(printed).toHaveLength(count);
        const half = MARK[fractions] / 2 + 1e-9;
        printed.forEach(([from = 0, to = 0, baseFrom = 0, baseTo = 0, tail = 0], i) => {
          const { tip = [0, 0], base = [0, 0] } = exact.tails[i] ?? {};
          expect(Math.abs(from - tip[0] / INCH)).toBeLessThan(half);
          expect(Math.abs(to - tip[1] / INCH)).toBeLessThan(half);
          expect(Math.abs(baseFrom - base[0] / INCH)).toBeLessThan(half);
          expect(Math.abs(baseTo - base[1] / INCH)).toBeLessThan(half);
          expect(tail).toBeCloseTo(to - from, 9);
        });
      },
    );

    it.each(FRACTIONS)(
      'in %s, as solids, gapes and binds by no more than half a mark a side',
      (fractions) => {
        const printed = printedTails(options, fractions);
        const tails = printed.map(([from = 0, to = 0, baseFrom = 0, baseTo = 0]) => ({
          tip: [from * INCH, to * INCH] as const,
          base: [baseFrom * INCH, baseTo * INCH] as const,
        }));
        const side = exact.depth * exact.tailBoard.thickness * (MARK[fractions] / 2) * INCH;
        const right = cornerSolids(solids, exact);
        const rounded = cornerSolids(solids, { ...exact, tails });
        const marked = { ...right, tailBoard: rounded.tailBoard };
        try {
          const bound = 2 * count * side + 1e-6;
          expect(overlap(marked)).toBeLessThan(bound);
          expect(filled(right) - filled(marked)).toBeLessThan(bound);
        } finally {
          dispose(rounded);
          dispose(right);
        }
      },
    );
  },
);
