import { EPSILON } from './epsilon.ts';
import { marksPerInch, type Notation, unitOf } from './notation.ts';
import { MM_PER_INCH } from './unit.ts';

/** Thousandths of an inch, in which is told what is too short for any mark of a rule. */
const THOUSANDTHS = 1000;
/** Hundredths of a mm, to which lengths are told. */
const HUNDREDTHS = 100;
/** In inches; longer than any rule, so that no marks are counted. */
const PAST_ALL_RULES = 1e6;

/** The nearest whole number of marks; half-way between two it is the upper one, whatever floats leave behind. */
const wholeMarks = (marks: number): number => Math.round(marks + EPSILON);

/**
 * The mark of the reader's rule nearest to a position, in mm; in mm the position itself. Widths that must add up are
 * told as differences of these: then every line that is marked from the reference edge lies within half a mark of its
 * true place, however many stand below it.
 */
export const nearestMark = (value: number, notation: Notation): number => {
  if (notation === 'mm') return value;
  const marks = marksPerInch(notation);
  return (wholeMarks((value / MM_PER_INCH) * marks) / marks) * MM_PER_INCH;
};

/** The mark of the reader's rule next to a length, above or below it, or at it; all in mm. In mm a mark is a hundredth. */
export const nextMark = (value: number, side: 'above' | 'below', notation: Notation): number => {
  const per = notation === 'mm' ? 1 : MM_PER_INCH;
  const mark = (marks: number): number => {
    const exact = (value / per) * marks;
    // What floats leave behind does not count as past a mark.
    return ((side === 'above' ? Math.ceil(exact - EPSILON) : Math.floor(exact + EPSILON)) / marks) * per;
  };
  if (notation === 'mm') return mark(HUNDREDTHS) || value;
  // Less than the first mark is told in thousandths, and less than the first of those as it is.
  return mark(marksPerInch(notation)) || mark(THOUSANDTHS) || value;
};

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Marks of a rule as a whole number and a fraction in its lowest terms: `5 11/16`. */
const fraction = (count: number, marks: number): string => {
  const whole = Math.floor(count / marks);
  const rest = count % marks;
  const shared = divisor(marks, rest);
  return [whole > 0 ? [`${whole}`] : [], rest > 0 ? [`${rest / shared}/${marks / shared}`] : []]
    .flat()
    .join(' ');
};

/** Three places, and no zero before the point (ASME Y14.5 for inches, from memory): `.797`, `1.250`. */
const decimal = (inches: number): string =>
  (wholeMarks(inches * THOUSANDTHS) / THOUSANDTHS).toFixed(3).replace(/^0(?=\.)/u, '');

/**
 * A length for reading, without its unit: mm to the hundredth; inches as a fraction to the nearest mark (`27/32`), or as a
 * decimal to 0.001 (`.848`). A length under the first mark is a decimal in any case, as no fraction could tell it. Beyond a million inches it is a plain number.
 */
export const formatNumber = (value: number, notation: Notation): string => {
  if (notation === 'mm') return String(Number(value.toFixed(2)) + 0);
  const inches = Math.abs(value) / MM_PER_INCH;
  if (!(inches < PAST_ALL_RULES)) return String(Number((value / MM_PER_INCH).toPrecision(6)));
  const marks = marksPerInch(notation);
  if (Math.round(inches * THOUSANDTHS) === 0) return '0';
  const underFirstMark = Math.round((1 / marks - inches) * THOUSANDTHS) > 0;
  const number =
    underFirstMark || marks === THOUSANDTHS ? decimal(inches) : fraction(wholeMarks(inches * marks), marks);
  return value < 0 ? `−${number}` : number;
};

/**
 * A length for reading, with its unit: `18.5 mm`, `5 11/16"`, `.797"`.
 * @example
 * ```ts
 * console.log(formatLength(144.4625, 'in')); // 5 11/16"
 * ```
 */
export const formatLength = (value: number, notation: Notation): string =>
  `${formatNumber(value, notation)}${notation === 'mm' ? ' mm' : '"'}`;

/** A length as one word, as a command line and a plan read it: `18.5mm`, `5-11/16in`, `.797in`. */
export const typedLength = (value: number, notation: Notation): string =>
  `${formatNumber(value, notation).replace(' ', '-')}${unitOf(notation)}`;

/** A length without its unit as a spreadsheet calculates with it, to 0.0001: inches are decimal too. */
export const decimalLength = (value: number, notation: Notation): string =>
  String(Number((notation === 'mm' ? value : value / MM_PER_INCH).toFixed(4)));

/** What areas are told in beside lengths in a notation. */
export const areaUnit = (notation: Notation): string => (notation === 'mm' ? 'cm²' : 'sq in');

/** An area in mm² for reading, without its unit: `7.5`, or in square inches, as fine as they are larger, `1.16`. */
export const areaNumber = (area: number, notation: Notation): string =>
  notation === 'mm' ? (area / 100).toFixed(1) : (area / MM_PER_INCH ** 2).toFixed(2);

/** An area in mm² for reading, with its unit: `7.5 cm²`, `1.16 sq in`. */
export const formatArea = (area: number, notation: Notation): string =>
  `${areaNumber(area, notation)} ${areaUnit(notation)}`;

/** A volume in mm³ for reading, with its unit: `0.0213 m³`, or in board feet of 144 cubic inches, `9.03 board feet`. */
export const formatVolume = (volume: number, notation: Notation): string =>
  notation === 'mm' ? `${(volume / 1e9).toFixed(4)} m³` : `${(volume / BOARD_FOOT).toFixed(2)} board feet`;

/** In mm³: a square foot of wood an inch thick (the lumber trade's definition). */
const BOARD_FOOT = 144 * MM_PER_INCH ** 3;
