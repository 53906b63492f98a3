import type { Place } from '../../units/complaint.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import type { Edit } from '../text/editPlan.ts';
import { isTail, type TipWidths } from './widths.ts';

/** The step of the arrow keys and of dragging, in mm: a tenth of a millimetre, or 1/64 inch. */
export const stepOf = (unit: Unit): number => (unit === 'mm' ? 0.1 : MM_PER_INCH / 64);

const MARKS = 64;

/** A length as it is written in a plan: a bare number, or inches and a fraction where it is a whole number of 64ths. */
export const planNumber = (value: number, unit: Unit): number | string => {
  if (unit === 'mm') return Number(value.toFixed(4));
  const inches = value / MM_PER_INCH;
  const marks = Math.round(inches * MARKS);
  if (Math.abs(inches * MARKS - marks) > 1e-6 || marks <= 0) return Number(inches.toFixed(6));
  const whole = Math.floor(marks / MARKS);
  let [top, bottom] = [marks % MARKS, MARKS];
  if (top === 0) return whole;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
};

/** The resolution of listed widths, in mm. */
const GRAIN: Readonly<Record<Unit, number>> = { mm: 0.01, in: MM_PER_INCH / 10_000 };

/** Widths rounded such that they still fill the same board: every line moves to the nearest multiple of the resolution. */
export const roundWidths = (widths: TipWidths, unit: Unit): TipWidths => {
  const grain = GRAIN[unit];
  const step = stepOf(unit);
  let line = 0;
  let from = 0;
  return widths.map((width, i) => {
    line += width;
    const marks = line / step;
    const onMark = Math.abs(marks - Math.round(marks)) < 1e-6;
    const to =
      i === widths.length - 1 ? line : onMark ? Math.round(marks) * step : Math.round(line / grain) * grain;
    const rounded = to - from;
    from = to;
    return rounded;
  });
};

/** The values of a plan's keys for a corner with these widths. */
export const listedValues = (widths: TipWidths, unit: Unit) => {
  const values = widths.map((width) => planNumber(width, unit));
  return {
    tails: values.filter((_, i) => isTail(i)),
    pins: values.slice(2, -2).filter((_, i) => i % 2 === 0),
    halfPin: [values[0] ?? 0, values.at(-1) ?? 0],
  };
};

/** The edits that list a corner's widths. */
export const listEdits = (at: Place, widths: TipWidths, unit: Unit): Edit[] => {
  const { tails, pins, halfPin } = listedValues(roundWidths(widths, unit), unit);
  return [
    { at: [...at, 'tails'], value: tails },
    { at: [...at, 'pins'], value: pins.length > 0 ? pins : undefined },
    { at: [...at, 'halfPin'], value: halfPin },
    { at: [...at, 'graded'], value: undefined },
  ];
};
