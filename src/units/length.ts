import { accept, type Result, refuse } from '../complaint.ts';
import { say } from './phrase.ts';

/** The unit a user reads and writes in; every computation is in mm. */
export type Unit = 'mm' | 'in';

/** The international inch, exact since 1959. */
export const MM_PER_INCH = 25.4;

const NUMBER = String.raw`\d+(?:[.,]\d+)?|[.,]\d+`;
const FRACTION_SIGNS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const LENGTH = new RegExp(
  String.raw`^(?<sign>[-−]?)\s*(?:(?<whole>\d+)(?:\s+|\s*[-‐‑–]\s*))?(?:(?<top>\d+)\s*[/⁄]\s*(?<bottom>\d+)|(?<number>${NUMBER}))\s*(?<unit>mm|cm|in\.?|inch|inches|["″”]|''|’’|′′)?$`,
  'iu',
);
/** A comma before three digits parts thousands for some people and decimals for others. */
const TWO_READINGS = /^[1-9]\d{0,2},\d{3}$/u;

/**
 * Reads a length as people write it: `18`, `18mm`, `1.8 cm`, `0.75 in`, `3/4in`, `5 11/16"`, `5-11/16in`, `5½"`.
 * @param unit what a bare number means
 * @returns mm, or a complaint with an empty place; a minus sign is read, for the caller to refuse with a range
 */
export const parseLength = (text: string | number, unit: Unit): Result<number> => {
  if (typeof text === 'number') return finite(text * mmPer(unit), String(text));
  const plain = text.replace(/[¼½¾⅛⅜⅝⅞]/gu, (sign) => ` ${FRACTION_SIGNS[sign]} `).trim();
  const parts = LENGTH.exec(plain)?.groups;
  if (parts === undefined) return noLength(text);
  const { sign, whole, top, bottom, number } = parts;
  if (number !== undefined && TWO_READINGS.test(number)) return twoReadings(text, number);
  // After a whole number only a part of the next belongs: `5 11` and `5 17/16` are slips of the pen.
  if (whole !== undefined && !(Number(top) < Number(bottom))) return noLength(text);
  const size =
    number === undefined
      ? Number(whole ?? 0) + Number(top) / Number(bottom)
      : Number(number.replace(',', '.'));
  return finite((sign === '' ? 1 : -1) * size * mmPer(parts.unit?.toLowerCase() ?? unit), text);
};

const mmPer = (unit: string): number => (unit === 'mm' ? 1 : unit === 'cm' ? 10 : MM_PER_INCH);

const finite = (value: number, text: string): Result<number> =>
  Number.isFinite(value) ? accept(value) : noLength(text);

const twoReadings = (text: string, number: string): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} can be read in two ways`,
    hint: say`${number.replace(',', '')} or ${Number(number.replace(',', '.'))}`,
  });

const noLength = (text: string): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} is not a length`,
    hint: say`18, 18mm, 0.75in, 3/4in or 5-11/16in`,
  });

/** What no line may hold as it is: terminals act on it, or it turns the reading direction of what follows. */
const UNSEEN = /[\p{Cc}\u2028-\u202E\u2066-\u2069]/gu;

/** What the user wrote, in quotes, cut short where it is long and with control characters made visible. */
export const quote = (text: string): string => {
  const shown = JSON.stringify([...text].slice(0, 40).join('')).replace(
    UNSEEN,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return [...text].length > 40 ? `${shown.slice(0, -1)}…"` : shown;
};

/** The finest mark on an inch rule. */
const MARKS_PER_INCH = 64;
/** In inches; longer than any rule, so that no marks are counted. */
const PAST_ALL_RULES = 1e6;

/** The mark of an inch rule next to a length, above or below it, or at it; all in mm. */
export const markInches = (value: number, side: 'above' | 'below'): number => {
  const marks = (value / MM_PER_INCH) * MARKS_PER_INCH;
  // What floats leave behind does not count as past a mark.
  const mark = side === 'above' ? Math.ceil(marks - 1e-6) : Math.floor(marks + 1e-6);
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

/** A length for reading, with its unit: `18.5 mm`, `5 11/16"`, `27/32" +.004`. */
export const formatLength = (value: number, unit: Unit): string => {
  const number = formatNumber(value, unit);
  return unit === 'mm' ? `${number} mm` : number.replace(/^(\S+(?: \d+\/\d+)?)/u, '$1"');
};
