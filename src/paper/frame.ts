import type { Box, Drawing, Mark, Path, Point, TextMark } from '../drawing/drawing.ts';
import { ASCENT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { fitText } from './fitText.ts';
import type { Correction } from './printerCorrection.ts';

/** What the strip at a page's foot says. */
export interface PageFacts {
  readonly planName: string;
  readonly number: number;
  readonly count: number;
  readonly paper: string;
  /** What the maker reads in. */
  readonly unit: Notation;
  readonly correction?: Correction;
}

/** The em of all words on the frame: capitals 2.4 mm high. */
export const WORDS = 3.3;

const ROW = 4;
const GAP = 1.6;
const STRIP = 2 * ROW + GAP;
const GUTTER = 3.4 + GAP;

const TICKS_APART = 10;
/** Where the bar's end ticks stand clear of the printable edge. */
const INSET = 0.1;
const TICK = { short: 1.6, long: 2.6 };

/** What the frame leaves of a printable box. */
export const usableBox = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 + GUTTER, y0: y0 + STRIP, x1, y1 });

/** The height of the printable box whose usable part is `height` high. */
export const printableHeightFor = (height: number): number => height + STRIP;

/** 100 mm; less on the smallest papers, so that a word still stands beside it. */
const barLength = (room: number): number => [100, 50].find((length) => room >= length + 20) ?? 20;

/** The bar's ticks and its line, from 0, 0 along to `length`. */
const bar = (length: number, place: (along: number, across: number) => Point): Path[] => {
  const ticks = Array.from({ length: length / TICKS_APART + 1 }, (_, i) => i * TICKS_APART);
  return [
    { points: [place(0, 0), place(length, 0)] },
    ...ticks.map((at) => ({
      points: [place(at, 0), place(at, at % (length / 2) === 0 ? TICK.long : TICK.short)],
    })),
  ];
};

/** How a printer errs one way, in words. */
const errs = (factor: number): string =>
  `${Math.abs((factor - 1) * 100).toFixed(2)} % ${factor < 1 ? 'short' : 'long'}`;

/** The line at the foot in several lengths, long to short. */
const footLines = ({ number, count, paper, correction }: PageFacts): string[] => {
  const page = `page ${number} of ${count}`;
  const scale = 'print at 100 %';
  if (correction === undefined)
    return [`${page} · ${paper} · ${scale}`, `${page} · ${scale}`, `${page} · 100 %`];
  const { printer, error } = correction;
  const name = fitText([printer], 40, WORDS, 'regular');
  return [
    `${page} · ${paper} · corrected for ${name}, which prints ${errs(error.x)} across and ${errs(error.y)} up · ${scale}`,
    `${page} · ${paper} · corrected for ${name} · ${scale}`,
    `${page} · corrected for ${name} · ${scale}`,
    `${page} · corrected · ${scale}`,
    `${page} · corrected · 100 %`,
  ];
};

/** The quiet strip at a page's foot, and a check bar each way, drawn inside a page's printable box. */
export const drawFrame = (printable: Box, facts: PageFacts): Drawing => {
  const { x0, y0, x1, y1 } = printable;
  const words = (
    text: string,
    at: Point,
    look: Pick<TextMark, 'role' | 'turn' | 'anchor' | 'weight'>,
  ): TextMark => ({ kind: 'text', text, at, size: WORDS, ...look });

  const level = barLength(x1 - x0);
  const upright = barLength(y1 - y0 - STRIP);
  const base = y0 + DESCENT * WORDS;
  const besideLevel = x0 + INSET + level + GAP;
  const aboveUpright = y0 + STRIP + upright + GAP;

  const name = textWidth(facts.planName, WORDS, 'bold');
  const width = x1 - x0;
  const foot = fitText(footLines(facts), width - GAP - Math.min(name, 0.3 * width), WORDS, 'regular');
  const room = width - GAP - textWidth(foot, WORDS, 'regular');

  const marks: Mark[] = [
    {
      kind: 'stroke',
      role: 'scale',
      pen: 'thin',
      paths: [
        ...bar(level, (along, across) => [x0 + INSET + along, y0 + INSET + across]),
        ...bar(upright, (along, across) => [x0 + INSET + across, y0 + STRIP + along]),
      ],
    },
    words(fitText([facts.planName], room, WORDS, 'bold'), [x0, base + ROW], {
      role: 'label',
      turn: 0,
      anchor: 'start',
      weight: 'bold',
    }),
    words(foot, [x1, base + ROW], { role: 'label', turn: 0, anchor: 'end', weight: 'regular' }),
    words(
      fitText(
        [
          `lay a steel rule on this bar and the upright one: ${both(level, upright, facts.unit)} exactly, or do not use the page`,
          `measure this bar and the upright one: ${both(level, upright, facts.unit)}`,
          `both bars must measure ${both(level, upright, facts.unit)}`,
          `measure: ${barWords(level, facts.unit)}`,
          `${level} mm`,
        ],
        x1 - besideLevel,
        WORDS,
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
        WORDS,
        'regular',
      ),
      [x0 + ASCENT * WORDS, aboveUpright],
      { role: 'scale', turn: 90, anchor: 'start', weight: 'regular' },
    ),
  ];
  return { box: printable, marks };
};

/** A bar's length; in inches too for those whose rule has no mm: 100 mm are 3 15/16" within 0.02 mm, and 50 mm half of it. */
const barWords = (length: number, unit: Notation): string =>
  unit === 'mm' ? `${length} mm` : `${length} mm (${formatLength(length, unit)})`;

const both = (level: number, upright: number, unit: Notation): string =>
  level === upright ? barWords(level, unit) : `${barWords(level, unit)} and ${barWords(upright, unit)}`;
