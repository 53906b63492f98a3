import { describe, expect, test } from 'vitest';
import { apply } from '../../src/drawing/affine.ts';
import type { Point } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper, parsePaper } from '../../src/paper/paperSizes.ts';
import { inverse } from '../../src/paper/printerCorrection.ts';
import { drawProof, type Proof } from '../../src/paper/proofSheet.ts';
import type { Unit } from '../../src/units/unit.ts';
import { value } from '../value.ts';
import { inkBox, isInside, overlaps } from './ink.ts';

const paperOf = (text: string): Paper => value(parsePaper(text));

const proofOf = (paper: string, unit: Unit = 'mm'): Proof => value(drawProof(paperOf(paper), 6, unit));

const strokesOf = ({ page }: Proof) =>
  page.placed.flatMap(({ drawing, at }) =>
    drawing.marks.flatMap((mark) =>
      mark.kind === 'stroke' ? mark.paths.map(({ points }) => points.map((point) => apply(at, point))) : [],
    ),
  );

const textsOf = ({ page }: Proof) =>
  page.placed.flatMap(({ drawing }) => drawing.marks.filter((mark) => mark.kind === 'text'));

const longest = (proof: Proof): string[] =>
  strokesOf(proof)
    .flatMap(([a, b, ...more]) =>
      a === undefined || b === undefined || more.length > 0 ? [] : [[a, b] as const],
    )
    .map(([a, b]) => Math.hypot(b[0] - a[0], b[1] - a[1]))
    .sort((a, b) => b - a)
    .slice(0, 4)
    .map((length) => length.toFixed(6));

describe('lengths', () => {
  test('are as 3 to 4 to 5, so that all are round, as long as the paper allows', () => {
    expect(proofOf('A4').lengths).toEqual({ x: 180, y: 240, d1: 300, d2: 300 });
    expect(proofOf('A3').lengths).toEqual({ x: 270, y: 360, d1: 450, d2: 450 });
    expect(proofOf('210x148').lengths).toEqual({ x: 160, y: 120, d1: 200, d2: 200 });
  });

  test('are whole half inches in inches', () => {
    const { x, y, d1 } = proofOf('Letter', 'in').lengths;
    expect([x, y, d1].map((length) => length / 25.4)).toEqual([7.5, 10, 12.5]);
  });

  test('are what is drawn', () => {
    expect(longest(proofOf('A4'))).toEqual(['300.000000', '300.000000', '240.000000', '180.000000']);
  });

  test('a roll is cut shorter than it is wide', () => {
    const { lengths, page } = proofOf('610xroll');
    expect(lengths).toEqual({ x: 520, y: 390, d1: 650, d2: 650 });
    expect(page.height).toBeCloseTo(431.3, 1);
  });
});

test('the sheet names what to measure and what to type next', () => {
  const said = textsOf(proofOf('A4'))
    .map(({ text }) => text)
    .join(' ')
    .replaceAll('\u00A0', ' ');
  expect(said).toContain('x: the bar at the foot, end to end, 180 mm');
  expect(said).toContain(
    'halfpin proof --paper A4 --measured-x … --measured-y … --measured-d1 … --measured-d2 … --save NAME',
  );
});

test('the command to type has the margin and unit of the sheet', () => {
  const proof = drawProof(paperOf('Letter'), 12.5, 'in');
  const said = proof.ok ? textsOf(proof.value).map(({ text }) => text) : [];
  expect(said.join(' ')).toContain('halfpin proof --paper Letter --margin 12.5mm --units in --measured-x …');
});

test('a margin outside 5 to 20 mm is refused', () => {
  const proof = drawProof(paperOf('A4'), 2, 'mm');
  expect(proof.ok ? [] : proof.complaints.map(({ at }) => at)).toEqual([['margin']]);
});

test('a paper too small to measure an error is refused', () => {
  const proof = drawProof(paperOf('120x150'), 6, 'mm');
  expect(proof.ok ? [] : proof.complaints.map(({ at }) => at)).toEqual([['paper']]);
});

test('nothing leaves the margins and no words overlap, on any paper, corrected or not', () => {
  const error = { x: 0.981, y: 1.02, skew: 0.01 };
  for (const paper of [
    ...ISO_PAPERS,
    ...ANSI_PAPERS,
    paperOf('133x173'),
    paperOf('133x5000'),
    paperOf('610xroll'),
  ])
    for (const unit of ['mm', 'in'] as const)
      for (const correction of [undefined, { printer: 'workshop', error }]) {
        const proof = drawProof(paper, 6, unit, correction);
        if (!proof.ok) {
          expect(paper.name).toMatch(/^133x/u);
          continue;
        }
        const { page } = proof.value;
        const margins = { x0: 6, y0: 6, x1: page.width - 6, y1: page.height - 6 };
        for (const { drawing, at } of page.placed)
          expect(isInside(inkBox(drawing.marks, at), margins)).toBe(true);
        const boxes = textsOf(proof.value).map(textBox);
        boxes.forEach((box, i) => {
          for (const other of boxes.slice(i + 1)) expect(overlaps(box, other)).toBe(false);
        });
      }
});

test('a corrected proof has its nominal lengths after the printer’s error', () => {
  const error = { x: 1.004, y: 0.997, skew: 0.002 };
  const proof = value(drawProof(paperOf('A4'), 6, 'mm', { printer: 'workshop', error }));
  const upright = Math.sqrt(1 - error.skew ** 2);
  const print = ([x, y]: Point): Point => [error.x * x + error.y * error.skew * y, error.y * upright * y];
  const printed = strokesOf(proof).map((points) => points.map(print));
  const lengths = printed
    .flatMap(([a, b]) => (a === undefined || b === undefined ? [] : [Math.hypot(b[0] - a[0], b[1] - a[1])]))
    .sort((a, b) => b - a)
    .slice(0, 2);
  expect(lengths.map((length) => Number(length.toFixed(6)))).toEqual([300, 300]);
  expect(inverse(error)[1]).toBe(0);
});
