import type { Drawer } from '../drawer/drawer.ts';
import { type Gaps, gapsOf } from '../drawer/gaps.ts';
import type { Mark, PenName, Point } from '../drawing/drawing.ts';
import { rectangle, stroke, textMark } from '../drawing/shapes.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import type { Size } from '../paper/printable.ts';
import { EPSILON } from '../units/epsilon.ts';
import { formatLength, formatNumber } from '../units/formatLength.ts';
import { marksPerInch, type Notation, unitOf } from '../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import { type GapPoint, gapYear } from '../wood/gapYear.ts';
import { widthCoefficient } from '../wood/movement.ts';
import { type Block, picture } from './typeset/block.ts';
import type { TypeSizes } from './typeset/typeSizes.ts';

/** Straight lines in a curve of one year: half a week each, finer than eyes and printers resolve. */
const STEPS = 104;
/** Length of a line in the key, ems. */
const SAMPLE = 3.2;
const TICK = 1.2;
/** Gap between a line and the text beside it, mm. */
const AIR = 0.4;
/** Steps of the scale, mm, by the maker's unit. */
const SCALE_STEPS: Readonly<Record<Unit, readonly number[]>> = {
  mm: [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500],
  in: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10, 20].map((inches) => inches * MM_PER_INCH),
};

const PENS = { front: 'edge', side: 'lap', made: 'fold' } as const satisfies Record<string, PenName>;

/**
 * The gap above a drawer through the year, from driest through dampest to driest again: above its front and above its
 * sides, with the band in which it neither sticks nor shows.
 * @returns undefined for a drawer without an opening, or without a climate
 */
export const gapPicture = (
  { spec, sizes }: Drawer,
  unit: Notation,
  { note: em }: Pick<TypeSizes, 'note'>,
  { width, height }: Size,
): Block | undefined => {
  const gaps = gapsOf(spec, sizes);
  const { movement, space } = spec;
  if (gaps === undefined || movement === undefined || space.kind === 'size') return undefined;
  const year = (part: 'front' | 'side'): GapPoint[] => {
    const { wood, cut } = movement[part];
    const coefficient = widthCoefficient(wood, cut);
    return gapYear(space.opening.height, sizes.height, coefficient, movement.climate, STEPS);
  };

  const leading = (ASCENT + DESCENT) * em;
  const key = keyOf(gaps, unit, em, width);
  const zones = zonesOf(gaps);
  const plot = {
    y0: 3 * leading + TICK + AIR,
    y1: height - key.height,
    x1: width - 0.5 * em - Math.max(...zones.map(({ name }) => textWidth(name, em, 'regular'))),
  };
  const shown = rangeOf(gaps, leading / (plot.y1 - plot.y0));
  const level = (gap: number): number =>
    plot.y0 + ((gap - shown.from) / (shown.to - shown.from)) * (plot.y1 - plot.y0);
  // Numbers at the very ends of the scale would touch the words beyond it.
  const ticks = ticksOf(shown, (leading / (plot.y1 - plot.y0)) * (shown.to - shown.from), unit).filter(
    (gap) => level(gap) > plot.y0 + em / 2 && level(gap) < plot.y1 - em / 2,
  );
  const x0 =
    Math.max(
      ...[...ticks.map((gap) => formatNumber(gap, unit)), 'sides', unitOf(unit)].map((text) =>
        textWidth(text, em, 'regular'),
      ),
    ) +
    TICK +
    0.5 * em;
  const time = (part: number): number => x0 + part * (plot.x1 - x0);
  const curve = (points: readonly GapPoint[]): Point[] =>
    points.map((point) => [time(point.time), level(point.gap)]);
  const across = (gap: number): Point[] => [
    [x0, level(gap)],
    [plot.x1, level(gap)],
  ];
  const middle = (gap: number): number => level(gap) - (CAP_HEIGHT * em) / 2;
  const line = (row: number): number => plot.y0 - TICK - AIR - row * leading + DESCENT * em;
  const { least, most } = gaps.front.band;
  const ends = { from: level(Math.max(least, shown.from)), to: level(Math.min(most, shown.to)) };
  const marks: Mark[] = [
    {
      kind: 'fill',
      role: 'scale',
      tone: 0.88,
      paths: [rectangle(x0, ends.from, plot.x1, ends.to)],
    },
    stroke('scale', 'thin', [
      rectangle(x0, plot.y0, plot.x1, plot.y1),
      ...ticks.map((gap) => ({
        points: [
          [x0 - TICK, level(gap)],
          [x0, level(gap)],
        ] satisfies Point[],
      })),
      ...[0, 0.5, 1].map((part) => ({
        points: [
          [time(part), plot.y0 - TICK],
          [time(part), plot.y0],
        ] satisfies Point[],
      })),
    ]),
    stroke('outline', PENS.made, [{ points: across(gaps.front.gap.making) }]),
    stroke('outline', PENS.side, [{ points: curve(year('side')) }]),
    stroke('outline', PENS.front, [{ points: curve(year('front')) }]),
    ...ticks.map((gap) =>
      textMark(formatNumber(gap, unit), [x0 - TICK - 0.5 * em, middle(gap)], em, { anchor: 'end' }),
    ),
    ...zones
      .filter(
        ({ from, to }) =>
          level(Math.min(to, shown.to)) - level(Math.max(from, shown.from)) >= leading - EPSILON,
      )
      .map(({ name, from, to }) =>
        textMark(
          name,
          [plot.x1 + 0.5 * em, middle((Math.max(from, shown.from) + Math.min(to, shown.to)) / 2)],
          em,
        ),
      ),
    textMark(unitOf(unit), [0, line(1)], em),
    textMark('driest', [x0, line(1)], em),
    textMark('dampest', [time(0.5), line(1)], em, { anchor: 'middle' }),
    textMark('driest', [plot.x1, line(1)], em, { anchor: 'end' }),
    ...(['front', 'side'] as const).flatMap((part, i): Mark[] => [
      textMark(part === 'front' ? 'front' : 'sides', [0, line(i + 2)], em),
      textMark(formatNumber(gaps[part].gap.driest, unit), [x0, line(i + 2)], em),
      textMark(formatNumber(gaps[part].gap.dampest, unit), [time(0.5), line(i + 2)], em, {
        anchor: 'middle',
      }),
    ]),
    ...key.marks(height),
  ];
  return picture({ box: { x0: 0, y0: 0, x1: width, y1: height }, marks });
};

/** A named range of gaps, mm. */
interface Zone {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

const zonesOf = ({ front }: Gaps): Zone[] => {
  const { least, most } = front.band;
  return [
    { name: 'sticks', from: Number.NEGATIVE_INFINITY, to: least },
    { name: 'fits', from: least, to: most },
    ...(Number.isFinite(most) ? [{ name: 'shows', from: most, to: Number.POSITIVE_INFINITY }] : []),
  ];
};

/**
 * The range of gaps on the plot: all gaps and both ends of the band, with room for a line of text above and below.
 * @param text height of a line of text as a share of the plot
 */
const rangeOf = ({ front, side }: Gaps, text: number): { readonly from: number; readonly to: number } => {
  const { least, most } = front.band;
  const all = [front, side].flatMap(({ gap }) => [gap.making, gap.driest, gap.dampest]);
  const from = Math.min(...all, least);
  const to = Math.max(...all, ...(Number.isFinite(most) ? [most] : []));
  const room = ((to - from) * text) / (1 - 2 * text);
  return { from: from - room, to: to + room };
};

/** Even steps of the scale, at least `apart` mm from each other. */
const ticksOf = (
  { from, to }: { readonly from: number; readonly to: number },
  apart: number,
  unit: Notation,
): number[] => {
  const steps = SCALE_STEPS[unitOf(unit)];
  // Nothing is written between two marks of the reader's rule.
  const least = unit === 'mm' ? apart : Math.max(apart, MM_PER_INCH / marksPerInch(unit));
  const step = steps.find((each) => each >= least) ?? steps.at(-1) ?? least;
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
};

/** The key of the lines, in as many rows as needed. */
const keyOf = ({ front }: Gaps, unit: Notation, em: number, width: number) => {
  const leading = 1.25 * em;
  const items = [
    { pen: PENS.front, text: 'front' },
    { pen: PENS.side, text: 'sides' },
    { pen: PENS.made, text: `when made, ${formatLength(front.gap.making, unit)}` },
  ];
  let [x, row] = [0, 0];
  const placed = items.map(({ pen, text }) => {
    const length = (SAMPLE + 0.4) * em + textWidth(text, em, 'regular');
    if (x > 0 && x + length > width) [x, row] = [0, row + 1];
    const left = x;
    x += length + em;
    return { pen, text, left, row };
  });
  return {
    height: (row + 1) * leading + 0.4 * em,
    marks: (top: number): Mark[] =>
      placed.flatMap((item): Mark[] => {
        const baseline = top - item.row * leading - ASCENT * em;
        const y = baseline + (CAP_HEIGHT * em) / 2;
        return [
          stroke('outline', item.pen, [
            {
              points: [
                [item.left + AIR, y],
                [item.left + SAMPLE * em, y],
              ],
            },
          ]),
          textMark(item.text, [item.left + (SAMPLE + 0.4) * em, baseline], em),
        ];
      }),
  };
};
