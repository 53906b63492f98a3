import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import type { PrintPage } from '../drawing/printPage.ts';
import { line, rectangle, stroke } from '../drawing/shapes.ts';
import { textWidth } from '../drawing/textWidth.ts';
import { accept, type Result } from '../units/complaint.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Unit } from '../units/unit.ts';
import { wrapText } from '../units/wrapText.ts';
import { FRAME_EM } from './frame.ts';
import type { Paper } from './paperSizes.ts';
import { DEFAULT_MARGIN, printableBox } from './printable.ts';
import { type Correction, correctPage } from './printerCorrection.ts';
import { type ProofLengths, proofLengths, proofSize, proofStep } from './proofLengths.ts';

/** A proof sheet, and the lengths to measure on it. */
export interface Proof {
  readonly lengths: ProofLengths;
  readonly page: PrintPage;
}

const TICK = { short: 2, long: 4 };
const LINE_PITCH = 1.5;
const PARAGRAPH = 0.6;

/** A line from one point to another with a tick at every step on its left, every fifth tick longer. */
const ruled = ([x0, y0]: Point, [x1, y1]: Point, step: number): Path[] => {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [along, up] = [(x1 - x0) / length, (y1 - y0) / length];
  const between = Array.from({ length: Math.round(length / step) - 1 }, (_, i) => i + 1);
  return [
    line(x0, y0, x1, y1),
    ...between.map((i): Path => {
      const [x, y] = [x0 + along * i * step, y0 + up * i * step];
      const reach = i % 5 === 0 ? TICK.long : TICK.short;
      return line(x, y, x - up * reach, y + along * reach);
    }),
  ];
};

/** The instructions on the sheet, by paragraph. */
const instructions = (
  { x, y, d1, d2 }: ProofLengths,
  paper: string,
  margin: number,
  unit: Unit,
  correction: Correction | undefined,
): { readonly text: string; readonly weight: TextMark['weight'] }[] => {
  // A number and its unit stay on one line.
  const show = (length: number) => formatLength(length, unit).replaceAll(' ', '\u00A0');
  // The options that the lengths depend on.
  const options = [
    `--paper ${paper}`,
    ...(margin === DEFAULT_MARGIN ? [] : [`--margin ${Number(margin.toFixed(4))}mm`]),
    ...(unit === 'in' ? ['--units in'] : []),
  ].join(' ');
  const regular = [
    ...(correction === undefined
      ? []
      : [`Corrected for ${correction.printer}: the lengths must be right now.`]),
    'Measure with a steel rule, from the middle of one line to the middle of the other:',
    `x: the bar at the foot, end to end, ${show(x)}`,
    `y: the bar at the left, end to end, ${show(y)}`,
    `d1: from the bottom left corner to the top right, ${show(d1)}`,
    `d2: from the top left corner to the bottom right, ${show(d2)}`,
    'Then type what you read, and a name for the printer:',
    `halfpin proof ${options} --measured-x … --measured-y … --measured-d1 … --measured-d2 … --save NAME`,
  ];
  return [
    { text: `Proof sheet for ${paper}: print at 100 %`, weight: 'bold' },
    ...regular.map((text) => ({ text, weight: 'regular' as const })),
  ];
};

/** Paragraphs centred on a point, on a white ground. */
const block = (
  paragraphs: ReturnType<typeof instructions>,
  [middleX, middleY]: Point,
  room: number,
  size: number,
): Mark[] => {
  let y = 0;
  const lines = paragraphs.flatMap(({ text, weight }, i) => {
    y -= i === 0 ? 0 : PARAGRAPH * size;
    return wrapText(text, (line) => textWidth(line, size, weight) <= room).map((line) => {
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
 * A proof sheet, which shows a printer's error: a bar in each direction and both diagonals, as long as the paper allows,
 * with ticks for a steel rule and instructions.
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
  const step = proofStep(unit);
  const em = FRAME_EM * Math.max(1, Math.min(x, y) / 160);
  const name = (text: string, at: Point): TextMark => ({
    kind: 'text',
    role: 'scale',
    text,
    at,
    size: 1.5 * em,
    turn: 0,
    anchor: 'middle',
    weight: 'bold',
  });
  const drawing: Drawing = {
    box: printable,
    marks: [
      stroke('scale', 'thin', [
        ...ruled([x0, y0], [x1, y0], step),
        ...ruled([x0, y1], [x0, y0], step),
        ...ruled([x0, y0], [x1, y1], step),
        ...ruled([x0, y1], [x1, y0], step),
        // The other two sides, so that the far corners have edges to measure to.
        {
          points: [
            [x1, y0],
            [x1, y1],
            [x0, y1],
          ],
        },
      ]),
      ...block(instructions(lengths.value, paper.name, margin, unit, correction), middle, 0.66 * x, em),
      name('x', [x1 - x / 4, y0 + 2 * em]),
      name('y', [x0 + 2.5 * em, y1 - y / 4]),
      name('d1', [x1 - 5 * em, y1 - 2 * em]),
      name('d2', [x0 + 5 * em, y1 - 2 * em]),
    ],
  };
  const page: PrintPage = { ...size, placed: [{ drawing, at: IDENTITY }] };
  return accept({
    lengths: lengths.value,
    page: correction === undefined ? page : correctPage(page, correction.error),
  });
};
