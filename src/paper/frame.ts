import type { Box, Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { stroke } from '../drawing/shapes.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength } from '../units/formatLength.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import { MM_PER_INCH } from '../units/unit.ts';
import { fitText } from './fitText.ts';
import type { Correction } from './printerCorrection.ts';

/** The facts in the strip at a page's foot. */
export interface PageFacts {
  readonly planName: string;
  readonly number: number;
  readonly count: number;
  /** Which copy of the page it is, of how many. */
  readonly copy?: readonly [number: number, of: number];
  readonly paper: string;
  /** The maker's unit. */
  readonly unit: Notation;
  readonly correction?: Correction;
}

/** Em of all text on the frame, mm: capitals 2.4 mm high. */
export const FRAME_EM = 3.3;

const ROW = 4;
const GAP = 1.6;
const STRIP = 2 * ROW + GAP;
const GUTTER = 3.4 + GAP;

/** Room beside a bar for a word, mm. */
const BESIDE_BAR = 20;
/** Distance of the bar's end ticks from the printable edge, mm. */
const INSET = 0.1;
const TICK = { short: 1.6, long: 2.6 };

/** The part of a printable box inside the frame. */
export const usableBox = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 + GUTTER, y0: y0 + STRIP, x1, y1 });

/** Height of the printable box whose usable part is `height` high, mm. */
export const printableHeightFor = (height: number): number => height + STRIP;

/** A check bar: its number of steps, each ended by a tick, and their length, mm. */
interface Bar {
  readonly steps: number;
  readonly apart: number;
}

/** 100 mm, or 4 in; less on the smallest papers, to leave room for a word beside it. */
const barFor = (room: number, unit: Notation): Bar => {
  const [lengths, apart] = unit === 'mm' ? [[10, 5, 2], 10] : [[8, 4, 2], MM_PER_INCH / 2];
  const steps = lengths.find((each) => room >= each * apart + BESIDE_BAR) ?? lengths.at(-1) ?? 1;
  return { steps, apart };
};

const lengthOf = ({ steps, apart }: Bar): number => steps * apart;

/** The bar's ticks and its line, from 0, 0 along to its length. */
const bar = ({ steps, apart }: Bar, place: (along: number, across: number) => Point): Path[] => [
  { points: [place(0, 0), place(steps * apart, 0)] },
  ...Array.from({ length: steps + 1 }, (_, i) => ({
    points: [place(i * apart, 0), place(i * apart, i % (steps / 2) === 0 ? TICK.long : TICK.short)],
  })),
];

/** A printer's error in one direction, in words. */
const errorText = (factor: number): string =>
  `${Math.abs((factor - 1) * 100).toFixed(2)} % ${factor < 1 ? 'short' : 'long'}`;

/** Wordings of the line at the foot, longest first. */
const footLines = ({
  number,
  count,
  copy: [copy, copies] = [1, 1],
  paper,
  correction,
}: PageFacts): string[] => {
  const page = `page ${number} of ${count}${copies > 1 ? `, copy ${copy} of ${copies}` : ''}`;
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

  const level = barFor(x1 - x0, facts.unit);
  const upright = barFor(y1 - y0 - STRIP, facts.unit);
  const shown = (of: Bar): string => formatLength(lengthOf(of), unitOf(facts.unit));
  const [levelWords, uprightWords] = [shown(level), shown(upright)];
  const both = levelWords === uprightWords ? levelWords : `${levelWords} and ${uprightWords}`;
  const base = y0 + DESCENT * FRAME_EM;
  const besideLevel = x0 + INSET + lengthOf(level) + GAP;
  const aboveUpright = y0 + STRIP + lengthOf(upright) + GAP;

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
          `lay a steel rule on this check bar and the upright one: ${both} exactly, or do not use the sheet`,
          `measure this check bar and the upright one: ${both}`,
          `both check bars must measure ${both}`,
          `measure: ${levelWords}`,
          levelWords,
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
          `measure this check bar too, ${uprightWords}: a printer may be out in one direction only`,
          `measure this too: ${uprightWords}`,
          uprightWords,
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
