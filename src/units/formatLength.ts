import { EPSILON } from './epsilon.ts';
import { MM_PER_INCH, type Unit } from './unit.ts';

/** The finest mark on an inch rule. */
const MARKS_PER_INCH = 64;
/** In inches; longer than any rule, so that no marks are counted. */
const PAST_ALL_RULES = 1e6;

/** The mark of an inch rule next to a length, above or below it, or at it; all in mm. */
export const markInches = (value: number, side: 'above' | 'below'): number => {
  const marks = (value / MM_PER_INCH) * MARKS_PER_INCH;
  // What floats leave behind does not count as past a mark.
  const mark = side === 'above' ? Math.ceil(marks - EPSILON) : Math.floor(marks + EPSILON);
  // Less than the first mark can only be told as it is.
  return mark === 0 ? value : (mark / MARKS_PER_INCH) * MM_PER_INCH;
};

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/**
 * A length for reading, without its unit: mm to the hundredth; inches as the nearest 1/64 and what is left over, in
 * thousandths of an inch (`27/32 +.004`). Beyond a million inches it is a plain number.
 */
export const formatNumber = (value: number, unit: Unit): string => {
  if (unit === 'mm') return String(Number(value.toFixed(2)) + 0);
  const inches = Math.abs(value) / MM_PER_INCH;
  if (!(inches < PAST_ALL_RULES)) return String(Number((value / MM_PER_INCH).toPrecision(6)));
  const marks = Math.round(inches * MARKS_PER_INCH);
  const over = Math.round((inches - marks / MARKS_PER_INCH) * 1000);
  // Under zero the mark is counted downward, and so is what is left over.
  const thousandths = value < 0 ? -over : over;
  const whole = Math.floor(marks / MARKS_PER_INCH);
  const rest = marks % MARKS_PER_INCH;
  const shared = divisor(MARKS_PER_INCH, rest);
  const fraction = rest === 0 ? '' : `${rest / shared}/${MARKS_PER_INCH / shared}`;
  const number = [whole === 0 && rest !== 0 ? '' : String(whole), fraction]
    .filter((part) => part !== '')
    .join(' ');
  const remainder =
    over === 0 ? '' : ` ${thousandths < 0 ? '−' : '+'}.${String(Math.abs(thousandths)).padStart(3, '0')}`;
  return `${value < 0 && number !== '0' ? '−' : ''}${number}${remainder}`;
};

/**
 * A length for reading, with its unit: `18.5 mm`, `5 11/16"`, `27/32" +.004`.
 * @example
 * ```ts
 * console.log(formatLength(144.4625, 'in')); // 5 11/16"
 * ```
 */
export const formatLength = (value: number, unit: Unit): string => {
  const number = formatNumber(value, unit);
  return unit === 'mm' ? `${number} mm` : number.replace(/^(\S+(?: \d+\/\d+)?)/u, '$1"');
};
