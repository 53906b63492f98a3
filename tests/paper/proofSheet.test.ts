import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply } from '../../src/drawing/affine.ts';
import type { Point } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper, parsePaper } from '../../src/paper/paperSizes.ts';
import { inverse } from '../../src/paper/printerCorrection.ts';
import { drawProof, type Proof } from '../../src/paper/proofSheet.ts';
import { readProof } from '../../src/paper/readProof.ts';
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

/** Distances between the outermost points of the ink: across, up, and both diagonals. */
const spans = (proof: Proof): number[] => {
  const points = strokesOf(proof).flat();
  const furthest = (across: number, up: number): Point =>
    points.reduce((a, b) => (across * (b[0] - a[0]) + up * (b[1] - a[1]) > 0 ? b : a));
  const [a, b, c, d] = [furthest(-1, -1), furthest(1, -1), furthest(1, 1), furthest(-1, 1)];
  return [
    [a, b],
    [a, d],
    [a, c],
    [b, d],
  ].map(([from = a, to = a]) => Number(Math.hypot(to[0] - from[0], to[1] - from[1]).toFixed(6)));
};

/** The four lines that are measured: where the rule's 0 is laid, and where it is read. */
const waysOf = (proof: Proof): Record<'x' | 'y' | 'd1' | 'd2', readonly [Point, Point]> => {
  const { x, y } = proof.lengths;
  const { width, height } = proof.page;
  const [x0, x1] = [(width - x) / 2, (width + x) / 2];
  const [y0, y1] = [(height - y) / 2, (height + y) / 2];
  return {
    x: [
      [x0, y0],
      [x1, y0],
    ],
    y: [
      [x0, y1],
      [x0, y0],
    ],
    d1: [
      [x0, y0],
      [x1, y1],
    ],
    d2: [
      [x1, y0],
      [x0, y1],
    ],
  };
};

/** Any paper that a proof may be drawn for. */
const PAPERS = fc.oneof(
  fc.constantFrom(...ISO_PAPERS, ...ANSI_PAPERS, paperOf('610xroll')),
  fc
    .tuple(fc.integer({ min: 90, max: 500 }), fc.integer({ min: 90, max: 500 }))
    .map(([width, height]) => paperOf(`${width}x${height}`)),
);
const MARGINS = fc.double({ min: 5, max: 20, noNaN: true });

const KEYS = ['x', 'y', 'd1', 'd2'] as const;

describe('lengths', () => {
  test('are as 3 to 4 to 5, and end on a rule of 300 mm, however large the paper', () => {
    for (const paper of ['A4', 'A3', 'A0', 'Letter'])
      expect(proofOf(paper).lengths).toEqual({ x: 150, y: 200, d1: 250, d2: 250 });
    expect(proofOf('210x148').lengths).toEqual({ x: 160, y: 120, d1: 200, d2: 200 });
  });

  test('are whole quarters of an inch in inches, and end on a rule of 12 in', () => {
    const inches = (paper: string) => KEYS.slice(0, 3).map((key) => proofOf(paper, 'in').lengths[key] / 25.4);
    expect(inches('Letter')).toEqual([6.75, 9, 11.25]);
    expect(inches('Tabloid')).toEqual([6.75, 9, 11.25]);
    expect(inches('A5')).toEqual([5.25, 7, 8.75]);
  });

  test('are what is drawn', () => {
    expect(spans(proofOf('A4'))).toEqual([150, 200, 250, 250]);
  });

  test('in mm and in inches are further apart than any printer errs, each from all others, on every paper', () => {
    fc.assert(
      fc.property(PAPERS, MARGINS, (paper, margin) => {
        const [metric, inch] = (['mm', 'in'] as const).map((unit) => drawProof(paper, margin, unit));
        if (!metric?.ok || !inch?.ok) return;
        const all = [metric, inch].map(({ value: { lengths } }) => [lengths.x, lengths.y, lengths.d1]);
        const sorted = all.flat().sort((a, b) => a - b);
        expect(sorted.at(-1)).toBeLessThan(300);
        sorted.slice(1).forEach((length, i) => {
          expect(length / (sorted[i] ?? 0)).toBeGreaterThan(1.04);
        });
      }),
    );
  });

  test('are never those of a sheet as long as the paper allows, in steps of 10 mm or half an inch, unless they are the same', () => {
    fc.assert(
      fc.property(PAPERS, MARGINS, fc.constantFrom('mm', 'in'), (paper, margin, unit) => {
        const proof = drawProof(paper, margin, unit);
        if (!proof.ok) return;
        const { lengths, page } = proof.value;
        const step = unit === 'mm' ? 10 : 12.7;
        const [width, height] = [page.width - 2 * margin - 0.2, page.height - 2 * margin - 0.2];
        const longest = (across: number, up: number) =>
          Math.floor(Math.min(width / across, height / up) / step) * step;
        const most = Math.max(longest(3, 4), longest(4, 3));
        const [x, y] = longest(3, 4) === most ? [3 * most, 4 * most] : [4 * most, 3 * most];
        const read = readProof(lengths, { x, y, d1: 5 * most, d2: 5 * most });
        if (read.ok) expect([x, y]).toEqual([expect.closeTo(lengths.x, 6), expect.closeTo(lengths.y, 6)]);
      }),
    );
  });

  test('a roll is cut shorter than it is wide', () => {
    const { lengths, page } = proofOf('610xroll');
    expect(lengths).toEqual({ x: 150, y: 200, d1: 250, d2: 250 });
    expect(page.height).toBeCloseTo(431.3, 1);
  });
});

test('the sheet names what to measure and what to type next', () => {
  const said = textsOf(proofOf('A4'))
    .map(({ text }) => text)
    .join(' ')
    .replaceAll('\u00A0', ' ');
  expect(said).toContain('x: the bar at the foot, left to right, 150 mm');
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
    paperOf('173x133'),
    paperOf('128x165'),
    paperOf('165x128'),
    paperOf('610xroll'),
  ])
    for (const unit of ['mm', 'in'] as const)
      for (const correction of [undefined, { printer: 'workshop', error }]) {
        const proof = drawProof(paper, 6, unit, correction);
        if (!proof.ok) {
          expect(paper.name).toMatch(/^(?:1[23].x|1..x1[23])/u);
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

describe('the vernier of each line, read back from its ink', () => {
  test.each([
    ['A4', 'mm', 1, 10],
    ['A5', 'in', 25.4 / 16, 8],
    ['210x148', 'mm', 1, 10],
    ['A3', 'in', 25.4 / 16, 8],
  ] as const)('tells any length to one part: %s in %s', (paper, unit, mark, parts) => {
    const proof = proofOf(paper, unit);
    for (const key of KEYS) {
      const [from, to] = waysOf(proof)[key];
      const length = proof.lengths[key];
      const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
      // Ticks begin on the line and stand square to it.
      const marks = strokesOf(proof)
        .flatMap(([a, b, ...more]) => {
          if (a === undefined || b === undefined || more.length > 0) return [];
          const off = (a[0] - from[0]) * along[1] - (a[1] - from[1]) * along[0];
          const slant = (b[0] - a[0]) * along[0] + (b[1] - a[1]) * along[1];
          const far = (a[0] - from[0]) * along[0] + (a[1] - from[1]) * along[1];
          return Math.abs(off) < 1e-6 && Math.abs(slant) < 1e-6 ? [length - far] : [];
        })
        .filter((back) => back > 1e-6 && back < mark * (parts + 1) + 0.01)
        .sort((a, b) => a - b);
      expect(marks).toHaveLength(parts);
      // What a person does who lays a rule along the line, as printed this much too long.
      for (let i = -37; i <= 37; i++) {
        const truly = length + (i / 37) * mark;
        const offMark = (back: number): number => {
          const place = (truly - back) / mark;
          return Math.abs(place - Math.round(place));
        };
        const backs = [0, ...marks];
        const meets = backs.indexOf(backs.reduce((a, b) => (offMark(b) < offMark(a) ? b : a)));
        const whole = Math.floor(truly / mark + 1 / (2 * parts) - 1e-9);
        const read = (whole + (meets % parts) / parts) * mark;
        expect(Math.abs(read - truly)).toBeLessThanOrEqual(mark / parts / 2 + 1e-6);
      }
    }
  });
});

test('a corrected proof has its nominal lengths after the printer’s error', () => {
  const error = { x: 1.004, y: 0.997, skew: 0.002 };
  const proof = value(drawProof(paperOf('A4'), 6, 'mm', { printer: 'workshop', error }));
  const upright = Math.sqrt(1 - error.skew ** 2);
  const print = ([x, y]: Point): Point => [error.x * x + error.y * error.skew * y, error.y * upright * y];
  const drawn = strokesOf(proof).flat().map(print);
  const furthest = (across: number, up: number): Point =>
    drawn.reduce((a, b) => (across * (b[0] - a[0]) + up * (b[1] - a[1]) > 0 ? b : a));
  const apart = (a: Point, b: Point) => Number(Math.hypot(b[0] - a[0], b[1] - a[1]).toFixed(6));
  expect(apart(furthest(-1, -1), furthest(1, 1))).toBe(250);
  expect(apart(furthest(1, -1), furthest(-1, 1))).toBe(250);
  expect(inverse(error)[1]).toBe(0);
});
