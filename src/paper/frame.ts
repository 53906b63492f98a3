import type { Box, Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { stroke } from '../drawing/shapes.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Unit } from '../units/unit.ts';
import { fitText } from './fitText.ts';
import type { Correction } from './printerCorrection.ts';

/** The facts in the strip at a page's foot. */
export interface PageFacts {
  readonly planName: string;
  readonly number: number;
  readonly count: number;
  readonly paper: string;
  /** The maker's unit. */
  readonly unit: Unit;
  readonly correction?: Correction;
}

/** Em of all text on the frame, mm: capitals 2.4 mm high. */
export const FRAME_EM = 3.3;

const ROW = 4;
const GAP = 1.6;
const STRIP = 2 * ROW + GAP;
const GUTTER = 3.4 + GAP;

const TICKS_APART = 10;
/** Distance of the bar's end ticks from the printable edge, mm. */
const INSET = 0.1;
const TICK = { short: 1.6, long: 2.6 };

/** The part of a printable box inside the frame. */
export const usableBox = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 + GUTTER, y0: y0 + STRIP, x1, y1 });

/** Height of the printable box whose usable part is `height` high, mm. */
export const printableHeightFor = (height: number): number => height + STRIP;

/** Length of a check bar, mm: 100, or less on the smallest papers, to leave room for a word beside it. */
const barLength = (room: number): number => [100, 50].find((length) => room >= length + 20) ?? 20;

/** The bar's line, from 0 to `length` mm, and its ticks. */
const bar = (length: number, place: (along: number, across: number) => Point): Path[] => {
  const ticks = Array.from({ length: length / TICKS_APART + 1 }, (_, i) => i * TICKS_APART);
  return [
    { points: [place(0, 0), place(length, 0)] },
    ...ticks.map((at) => ({
      points: [place(at, 0), place(at, at % (length / 2) === 0 ? TICK.long : TICK.short)],
    })),
  ];
};

/** A printer's error in one direction, in words. */
const errorText = (factor: number): string =>
  `${Math.abs((factor - 1) * 100).toFixed(2)} % ${factor < 1 ? 'short' : 'long'}`;

/** Wordings of the line at the foot, longest first. */
const footLines = ({ number, count, paper, correction }: PageFacts): string[] => {
  const page = `page ${number} of ${count}`;
  const scale = 'print at 100 %';
  if (correction === undefined)
    return [`${page} · ${paper} · ${scale}`, `${page} · ${scale}`, `${page} · 100 %`];
  const { printer, error } = correction;
  const name = fitText([printer], 40, FRAME_EM, 'regular');
  return [
    `${page} · ${paper} · corrected for ${name}, which prints ${errorText(error.x)} across and ${errorText(error.y)} up · ${scale}`,
    `${page} · ${paper} · corrected for ${name} · ${scale}`,
    `${page} · corrected for ${name} · ${scale}`,
    `${page} · corrected · ${scale}`,
    `${page} · corrected · 100 %`,
  ];
};

/** The strip of text at a page's foot, and a check bar in each direction, inside a page's printable box. */
export const drawFrame = (printable: Box, facts: PageFacts): Drawing => {
  const { x0, y0, x1, y1 } = printable;
  const words = (
    text: string,
    at: Point,
    look: Pick<TextMark, 'role' | 'turn' | 'anchor' | 'weight'>,
  ): TextMark => ({ kind: 'text', text, at, size: FRAME_EM, ...look });

  const level = barLength(x1 - x0);
  const upright = barLength(y1 - y0 - STRIP);
  const base = y0 + DESCENT * FRAME_EM;
  const besideLevel = x0 + INSET + level + GAP;
  const aboveUpright = y0 + STRIP + upright + GAP;

  const name = textWidth(facts.planName, FRAME_EM, 'bold');
  const width = x1 - x0;
  const foot = fitText(footLines(facts), width - GAP - Math.min(name, 0.3 * width), FRAME_EM, 'regular');
  const room = width - GAP - textWidth(foot, FRAME_EM, 'regular');

  const marks: Mark[] = [
    stroke('scale', 'thin', [
      ...bar(level, (along, across) => [x0 + INSET + along, y0 + INSET + across]),
      ...bar(upright, (along, across) => [x0 + INSET + across, y0 + STRIP + along]),
    ]),
    words(fitText([facts.planName], room, FRAME_EM, 'bold'), [x0, base + ROW], {
      role: 'label',
      turn: 0,
      anchor: 'start',
      weight: 'bold',
    }),
    words(foot, [x1, base + ROW], { role: 'label', turn: 0, anchor: 'end', weight: 'regular' }),
    words(
      fitText(
        [
          `lay a steel rule on this bar and the upright one: ${bothBars(level, upright, facts.unit)} exactly, or do not use the page`,
          `measure this bar and the upright one: ${bothBars(level, upright, facts.unit)}`,
          `both bars must measure ${bothBars(level, upright, facts.unit)}`,
          `measure: ${barWords(level, facts.unit)}`,
          `${level} mm`,
        ],
        x1 - besideLevel,
        FRAME_EM,
        'regular',
      ),
      [besideLevel, base],
      { role: 'scale', turn: 0, anchor: 'start', weight: 'regular' },
    ),
    words(
      fitText(
        [
          `measure this bar too, ${barWords(upright, facts.unit)}: a printer may err one way only`,
          `measure this too: ${barWords(upright, facts.unit)}`,
          `${upright} mm`,
        ],
        y1 - aboveUpright,
        FRAME_EM,
        'regular',
      ),
      [x0 + ASCENT * FRAME_EM, aboveUpright],
      { role: 'scale', turn: 90, anchor: 'start', weight: 'regular' },
    ),
  ];
  return { box: printable, marks };
};

/** A bar's length; in inches too for a rule without mm: 100 mm are 3 15/16" within 0.02 mm, and 50 mm are half of it. */
const barWords = (length: number, unit: Unit): string =>
  unit === 'mm' ? `${length} mm` : `${length} mm (${formatLength(length, unit)})`;

const bothBars = (level: number, upright: number, unit: Unit): string =>
  level === upright ? barWords(level, unit) : `${barWords(level, unit)} and ${barWords(upright, unit)}`;
