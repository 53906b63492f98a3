import { isTail, widthName } from '../../joint/widthName.ts';
import type { Place } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { Slope } from '../../units/slope.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import type { Locked, TipWidths } from './widths.ts';

/** The step of the arrow keys and of dragging, in mm: a tenth of a millimetre, or 1/64 inch. */
export const stepOf = (unit: Unit): number => (unit === 'mm' ? 0.1 : MM_PER_INCH / 64);

const MARKS = 64;

/** Digits after the point of a length in a plan; and of one that, with others, is to fill a board. */
const DIGITS: Readonly<Record<Unit, number>> = { mm: 4, in: 6 };
const ALL_DIGITS = 12;

/** A length as it is written in a plan: a bare number, or inches and a fraction where it is a whole number of 64ths. */
export const planNumber = (value: number, unit: Unit, digits = DIGITS[unit]): number | string => {
  if (unit === 'mm') return Number(value.toFixed(digits));
  const inches = value / MM_PER_INCH;
  const marks = Math.round(inches * MARKS);
  if (Math.abs(inches * MARKS - marks) > 1e-6 || marks <= 0) return Number(inches.toFixed(digits));
  const whole = Math.floor(marks / MARKS);
  let [top, bottom] = [marks % MARKS, MARKS];
  if (top === 0) return whole;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
};

/** A slope as it is written in a plan: `1:7`. */
export const planSlope = ({ run }: Slope): string => `1:${Number(run.toFixed(3))}`;

/** The resolution of listed widths, in mm. */
const GRAIN: Readonly<Record<Unit, number>> = { mm: 0.01, in: MM_PER_INCH / 10_000 };

/**
 * Widths rounded such that they still fill the same board: every line moves to the nearest multiple of the resolution,
 * but widths that are to stay as they are keep all their digits.
 */
export const roundWidths = (widths: TipWidths, unit: Unit, kept: Locked = new Set()): TipWidths => {
  const grain = GRAIN[unit];
  const step = stepOf(unit);
  const last = widths.findLastIndex((_, i) => !kept.has(i));
  let line = 0;
  let from = 0;
  return widths.map((width, i) => {
    line += width;
    const marks = line / step;
    const onMark = Math.abs(marks - Math.round(marks)) < 1e-6;
    const nearest = onMark ? Math.round(marks) * step : Math.round(line / grain) * grain;
    const to = kept.has(i) ? from + width : i === last ? line : nearest;
    const rounded = to - from;
    from = to;
    return rounded;
  });
};

/** Whether every tail that is not locked is as wide as another: rounded, they would not be equal any more. */
const areMatched = (widths: TipWidths, locked: Locked): boolean =>
  widths.every(
    (width, i) =>
      !isTail(i) ||
      locked.has(i) ||
      widths.some((other, j) => isTail(j) && j !== i && Math.abs(other - width) < EPSILON),
  );

/** A width as a plan lists it: in all its digits, but for errors of calculation. */
const listedNumber = (width: number, unit: Unit): number | string => {
  const whole = Number(width.toFixed(DIGITS.mm));
  return planNumber(Math.abs(width - whole) < EPSILON ? whole : width, unit, ALL_DIGITS);
};

/** The values of a plan's keys for a corner with these widths. */
export const listedValues = (widths: TipWidths, unit: Unit) => {
  const values = widths.map((width) => listedNumber(width, unit));
  return {
    tails: values.filter((_, i) => isTail(i)),
    pins: values.slice(2, -2).filter((_, i) => i % 2 === 0),
    halfPin: [values[0] ?? 0, values.at(-1) ?? 0],
  };
};

/** Whether a length that is written, or each of two half pins by one, is the same to the resolution of a plan. */
export const sameLength =
  (unit: Unit) =>
  (written: unknown, value: PlanValue): boolean => {
    if (typeof value === 'object') return value.every((each) => sameLength(unit)(written, each));
    const [a, b] = [written, value].map((each) =>
      typeof each === 'number' || typeof each === 'string' ? parseLength(each, unit) : undefined,
    );
    return a?.ok === true && b?.ok === true && Math.abs(a.value - b.value) < SAME;
  };

/** More than inches lose that are written with six digits, in mm. */
const SAME = 0.2e-4;

/**
 * Widths as a plan lists them.
 * @param before the widths that were listed before: those that are the same stay as they are written
 */
export const listedWidths = (widths: TipWidths, unit: Unit, locked: Locked, before: TipWidths): TipWidths => {
  const sameNumber = widths.length === before.length;
  const matched = areMatched(widths, locked);
  const isKept = (width: number, i: number): boolean =>
    before.length > 0 && (locked.has(i) || (sameNumber && Math.abs(width - (before[i] ?? 0)) < EPSILON));
  return roundWidths(
    widths,
    unit,
    new Set(widths.flatMap((width, i) => (matched || isKept(width, i) ? i : []))),
  );
};

/** The edits that list a corner's widths, and name the locked ones. */
export const listEdits = (
  at: Place,
  widths: TipWidths,
  unit: Unit,
  locked: Locked,
  before: TipWidths,
): Edit[] => {
  const { tails, pins, halfPin } = listedValues(listedWidths(widths, unit, locked, before), unit);
  const names = widths.flatMap((_, i) => (locked.has(i) ? widthName(i, widths.length) : []));
  const same = sameLength(unit);
  // A number of tails is no width.
  const sameItem: Edit['same'] = (written, value) => typeof value !== 'object' && same(written, value);
  return [
    { at: [...at, 'tails'], value: tails, same: sameItem },
    { at: [...at, 'pins'], value: pins.length > 0 ? pins : undefined, same: sameItem },
    { at: [...at, 'halfPin'], value: halfPin, same },
    { at: [...at, 'locked'], value: names.length > 0 ? names : undefined },
    { at: [...at, 'graded'], value: undefined },
  ];
};
