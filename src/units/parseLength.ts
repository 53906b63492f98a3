import { accept, type Result, refuse } from './complaint.ts';
import { mm, type Phrase, say } from './phrase.ts';
import { quote } from './quote.ts';
import { shortValue } from './shortValue.ts';
import { MM_PER_INCH, type Unit } from './unit.ts';

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
/** What inch rules are divided into. */
const RULED = [2, 4, 8, 16, 32, 64, 128, 10, 20, 50, 100];

/** A comma before three digits parts thousands for some people and decimals for others. */
const TWO_READINGS = /^[1-9]\d{0,2},\d{3}$/u;

/** What a length is written of, if it is one. */
const partsOf = (text: string) =>
  LENGTH.exec(
    shortValue(text)
      .replace(/[¼½¾⅛⅜⅝⅞]/gu, (sign) => ` ${FRACTION_SIGNS[sign]} `)
      .trim(),
  )?.groups;

/**
 * Reads a length as people write it: `18`, `18mm`, `1.8 cm`, `0.75 in`, `3/4in`, `5 11/16"`, `5-11/16in`, `5½"`.
 * @param unit what a bare number means
 * @returns mm, or a complaint with an empty place; a minus sign is read, for the caller to refuse with a range
 * @example
 * ```ts
 * const length = parseLength('5-11/16"', 'mm');
 * if (length.ok) console.log(length.value.toFixed(2)); // 144.46
 * ```
 */
export const parseLength = (text: string | number, unit: Unit): Result<number> => {
  if (typeof text === 'number') return finite(text * mmPer(unit), String(text));
  const parts = partsOf(text);
  if (parts === undefined) return noLength(text);
  const { sign, whole, top, bottom, number } = parts;
  if (number !== undefined && TWO_READINGS.test(number)) return twoReadings(text, number);
  // After a whole number only a part of the next belongs: `5 11` and `5 17/16` are slips of the pen.
  if (whole !== undefined && !(Number(top) < Number(bottom))) return noLength(text);
  const meant = parts.unit?.toLowerCase() ?? unit;
  const size =
    number === undefined
      ? Number(whole ?? 0) + Number(top) / Number(bottom)
      : Number(number.replace(',', '.'));
  const value = finite((sign === '' ? 1 : -1) * size * mmPer(meant), text);
  const ruled = bottom === undefined || mmPer(meant) !== MM_PER_INCH || RULED.includes(Number(bottom));
  return ruled || !value.ok ? value : notRuled(text, Number(bottom), value.value);
};

/** Whether a length that `parseLength` reads is typed in inches. */
export const isInInches = (text: string | number, unit: Unit): boolean => {
  const typed = typeof text === 'number' ? undefined : partsOf(text)?.unit;
  return mmPer(typed?.toLowerCase() ?? unit) === MM_PER_INCH;
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

const notRuled = (text: string, parts: number, meant: number): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} is in parts of 1/${parts} in, which no rule is marked in`,
    hint: say`${mm(meant)}`,
  });

const noLength = (text: string): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} is not a length`,
    hint: say`18, 18mm, 0.75in, 3/4in or 5-11/16in`,
  });

/** A fraction as an inch rule shows it, without a unit. */
const BARE_FRACTION = /^(?:\d+\s*[-\s]\s*)?(?:\d+\s*[/⁄]\s*\d+|[¼½¾⅛⅜⅝⅞])$|^\d+[¼½¾⅛⅜⅝⅞]$/u;

/** What was most likely meant by a length that is out of range as mm: `7/16in` for a bare 7/16. */
export const inchesMeant = (typed: unknown, unit: Unit): Phrase | undefined =>
  unit === 'mm' && typeof typed === 'string' && BARE_FRACTION.test(shortValue(typed))
    ? say`${typed.trim()}in`
    : undefined;
