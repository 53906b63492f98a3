import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import type { PrintPage } from '../drawing/printPage.ts';
import { rectangle, stroke } from '../drawing/shapes.ts';
import { textWidth } from '../drawing/textWidth.ts';
import { accept, type Result } from '../units/complaint.ts';
import { formatLength } from '../units/formatLength.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import { wrapText } from '../units/wrapText.ts';
import { FRAME_EM } from './frame.ts';
import type { Paper } from './paperSizes.ts';
import { DEFAULT_MARGIN, printableBox } from './printable.ts';
import { type Correction, correctPage } from './printerCorrection.ts';
import { type ProofLengths, proofLengths, proofSize } from './proofLengths.ts';
import { VERNIERS, vernierMarks } from './vernier.ts';

/** A proof sheet, and the lengths to measure on it. */
export interface Proof {
  readonly lengths: ProofLengths;
  readonly page: PrintPage;
}

/** Ticks every cm or quarter of an inch, the longer ones every 5 cm or every inch. */
const TICKS: Readonly<Record<Unit, { readonly step: number; readonly longEvery: number }>> = {
  mm: { step: 10, longEvery: 5 },
  in: { step: MM_PER_INCH / 4, longEvery: 4 },
};
/** Lengths of ticks, and of a vernier's marks, mm. */
const TICK = { short: 2, long: 4 };
const MARK = { short: 2.2, long: 3.4 };
/** What is left free of a diagonal's line where it begins, mm: there is the vernier of a side. */
const CORNER = 16;
/** Between a mark and its figures, mm. */
const GAP = 0.6;
/** Height of figures, in ems. */
const FIGURES = 0.73;
const LINE_PITCH = 1.5;
const PARAGRAPH = 0.6;

/** A length to be measured, from the rule's 0 to where it is read. */
interface Measured {
  readonly from: Point;
  readonly to: Point;
  /** On which side of the way the ticks are. */
  readonly ticks: 'left' | 'right';
  readonly isDiagonal: boolean;
}

/** A line from one point to another with ticks, and a vernier at its end. */
const ruled = ({ from: [x0, y0], to: [x1, y1], ticks, isDiagonal }: Measured, unit: Unit) => {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [along, up] = [(x1 - x0) / length, (y1 - y0) / length];
  const side = ticks === 'left' ? 1 : -1;
  /** The point so far along, and so far off to the side. */
  const at = (far: number, off: number): Point => [
    x0 + along * far - side * up * off,
    y0 + up * far + side * along * off,
  ];
  const between = (a: Point, b: Point): Path => ({ points: [a, b] });
  const { step, longEvery } = TICKS[unit];
  const marks = vernierMarks(VERNIERS[unit]);
  const vernier = marks.at(-1) ?? 0;
  const free = isDiagonal ? CORNER : 0;
  const steps = Array.from({ length: Math.round(length / step) }, (_, i) => i + 1).filter(
    (i) => i * step >= free && i * step <= length - vernier - TICK.short,
  );
  const half = VERNIERS[unit].parts / 2;
  return {
    lines: [
      between(at(free, 0), at(length, 0)),
      ...steps.map((i) =>
        between(at(i * step, 0), at(i * step, i % longEvery === 0 ? TICK.long : TICK.short)),
      ),
      // The end of the line is the first mark.
      ...marks.slice(1).map((back, i) => {
        const reach = (i + 1) % half === 0 ? MARK.long : MARK.short;
        // On a diagonal the first ones are shorter, so that they stay inside the corner.
        return between(
          at(length - back, 0),
          at(length - back, isDiagonal ? Math.min(reach, 0.7 * back) : reach),
        );
      }),
    ],
    // Beside a diagonal the first would stand on a side.
    numbers: (isDiagonal ? [2 * half] : [half, 2 * half]).map((k): TextMark => {
      const text = String(k);
      const [width, height] = [textWidth(text, FRAME_EM, 'regular'), FIGURES * FRAME_EM];
      const off = MARK.long + GAP + (Math.abs(up) * width + Math.abs(along) * height) / 2;
      const [x, y] = at(length - (marks[k] ?? 0), off);
      return {
        kind: 'text',
        role: 'scale',
        text,
        at: [x, y - height / 2],
        size: FRAME_EM,
        turn: 0,
        anchor: 'middle',
        weight: 'regular',
      };
    }),
  };
};

/** How a vernier is read. */
const VERNIER_WORDS: Readonly<Record<Unit, readonly string[]>> = {
  mm: [
    'To read to 0.1\u00A0mm, use the vernier, the close marks before the end of each line. Lay the rule’s 0 on the other end. Read the whole mm at the end of the line. Count back along the vernier to the mark that meets a mark of the rule: 0.1\u00A0mm for each.',
    'With 149\u00A0whole\u00A0mm and mark 7, type 149.7; with mark 0, type 149.0.',
  ],
  in: [
    'To read to 1/128", use the vernier, the close marks before the end of each line. Lay the rule’s 0 on the other end. Read the whole inches and sixteenths at the end of the line. Count back along the vernier to the mark that meets a sixteenth of the rule: 1/128" for each.',
    'With 6" and 11 sixteenths and mark 3, type 6-91/128, as 8\u00A0×\u00A011\u00A0+\u00A03 is 91.',
  ],
};

/** The instructions on the sheet: paragraphs, each of texts that begin a line. */
const instructions = (
  { x, y, d1, d2 }: ProofLengths,
  paper: string,
  margin: number,
  unit: Unit,
  correction: Correction | undefined,
): { readonly texts: readonly string[]; readonly weight: TextMark['weight'] }[] => {
  // A number and its unit stay on one line.
  const show = (length: number) => formatLength(length, unit).replaceAll(' ', '\u00A0');
  // The options that the lengths depend on.
  const options = [
    `--paper ${paper}`,
    ...(margin === DEFAULT_MARGIN ? [] : [`--margin ${Number(margin.toFixed(4))}mm`]),
    ...(unit === 'in' ? ['--units in'] : []),
  ].join(' ');
  const measure = [
    ['Measure with a steel rule, from the middle of one line to the middle of the other:'],
    [
      `x: the bar at the foot, left to right, ${show(x)}`,
      `y: the bar at the left, top to bottom, ${show(y)}`,
      `d1: from the lower left corner to the upper right, ${show(d1)}`,
      `d2: from the lower right corner to the upper left, ${show(d2)}`,
    ],
    VERNIER_WORDS[unit],
  ];
  const regular =
    correction === undefined
      ? [
          ...measure,
          ['Then type what you read, and a name for the printer:'],
          [
            `halfpin proof ${options} --measured-x … --measured-y … --measured-d1 … --measured-d2 … --save NAME`,
          ],
        ]
      : [
          [`Corrected for ${correction.printer}: the lengths must be right now.`],
          ...measure,
          [`If one is wrong, print and measure a sheet that is not corrected: halfpin proof ${options}`],
        ];
  return [
    { texts: [`Proof sheet for ${paper}: print at 100 %`], weight: 'bold' },
    ...regular.map((texts) => ({ texts, weight: 'regular' as const })),
  ];
};

/** Paragraphs centred on a point, on a white ground. */
const block = (
  paragraphs: ReturnType<typeof instructions>,
  [middleX, middleY]: Point,
  room: number,
): Mark[] => {
  const size = FRAME_EM;
  let y = 0;
  const lines = paragraphs.flatMap(({ texts, weight }, i) => {
    y -= i === 0 ? 0 : PARAGRAPH * size;
    return texts
      .flatMap((text) => wrapText(text, (line) => textWidth(line, size, weight) <= room))
      .map((line) => {
        y -= LINE_PITCH * size;
        return { line, y, weight };
      });
  });
  const left = middleX - room / 2;
  const top = middleY - y / 2;
  const pad = size;
  const [x0, y0, x1, y1] = [left - pad, middleY + y / 2 - pad, left + room + pad, top + pad];
  return [
    { kind: 'fill', role: 'label', tone: 1, paths: [rectangle(x0, y0, x1, y1)] },
    ...lines.map(
      ({ line, y: down, weight }): TextMark => ({
        kind: 'text',
        role: 'label',
        text: line,
        at: [left, top + down],
        size,
        turn: 0,
        anchor: 'start',
        weight,
      }),
    ),
  ];
};

/**
 * A proof sheet, which shows a printer's error: a bar in each direction and both diagonals, as long as the paper allows
 * and an ordinary steel rule measures, with ticks, a vernier at the end of each, and instructions.
 * @param correction of a measured printer, to prove that its corrected sheets are true
 * @returns a complaint at `margin` where it is out of range, or at `paper` where it is too small
 * @example
 * ```ts
 * const proof = drawProof(paper, 6, 'mm');
 * if (proof.ok) await renderPdf([proof.value.page], { title: 'Proof sheet', fonts }, sink);
 * ```
 */
export const drawProof = (
  paper: Paper,
  margin: number,
  unit: Unit,
  correction?: Correction,
): Result<Proof> => {
  const lengths = proofLengths(paper, margin, unit, correction?.error);
  if (!lengths.ok) return lengths;
  const { x, y } = lengths.value;
  const size = proofSize(paper);
  const printable = printableBox(size, margin, correction?.error);
  const middle: Point = [size.width / 2, size.height / 2];
  const [x0, x1] = [middle[0] - x / 2, middle[0] + x / 2];
  const [y0, y1] = [middle[1] - y / 2, middle[1] + y / 2];
  // Each is read at a corner of its own.
  const measured: readonly Measured[] = [
    { from: [x0, y0], to: [x1, y0], ticks: 'left', isDiagonal: false },
    { from: [x0, y1], to: [x0, y0], ticks: 'left', isDiagonal: false },
    { from: [x0, y0], to: [x1, y1], ticks: 'left', isDiagonal: true },
    { from: [x1, y0], to: [x0, y1], ticks: 'right', isDiagonal: true },
  ];
  const scales = measured.map((each) => ruled(each, unit));
  const name = (text: string, at: Point): TextMark => ({
    kind: 'text',
    role: 'scale',
    text,
    at,
    size: 1.5 * FRAME_EM,
    turn: 0,
    anchor: 'middle',
    weight: 'bold',
  });
  const drawing: Drawing = {
    box: printable,
    marks: [
      stroke('scale', 'thin', [
        ...scales.flatMap(({ lines }) => lines),
        // The other two sides, so that the far corners have edges to measure to.
        {
          points: [
            [x1, y0],
            [x1, y1],
            [x0, y1],
          ],
        },
      ]),
      ...scales.flatMap(({ numbers }) => numbers),
      ...block(instructions(lengths.value, paper.name, margin, unit, correction), middle, 0.7 * x),
      name('x', [x1 - x / 4, y0 + 2 * FRAME_EM]),
      name('y', [x0 + 2.5 * FRAME_EM, y1 - y / 4]),
      name('d1', [x1 - 8 * FRAME_EM, y1 - 2 * FRAME_EM]),
      name('d2', [x0 + 8 * FRAME_EM, y1 - 2 * FRAME_EM]),
    ],
  };
  const page: PrintPage = { ...size, placed: [{ drawing, at: IDENTITY }] };
  return accept({
    lengths: lengths.value,
    page: correction === undefined ? page : correctPage(page, correction.error),
  });
};
