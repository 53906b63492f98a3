import { BOLD, REGULAR } from './advances.ts';
import type { TextMark } from './drawing.ts';
import { shownText } from './shownText.ts';

/** Units of the font's grid in one em. */
const UNITS_PER_EM = 2048;

/** Advance of the box drawn for a character that the font lacks, units. */
const BOX_ADVANCE = 1106;
/** In the table of advances: the font lacks this character. */
const NONE = 0xffff;

/** Code points from here on have no glyph in the font. */
const END = 0x20000;

/** Heights in both weights, ems: of a capital H, and of a line above and below the baseline. */
export const CAP_HEIGHT = 1493 / UNITS_PER_EM;
export const ASCENT = 1901 / UNITS_PER_EM;
export const DESCENT = 483 / UNITS_PER_EM;

/** A table of `advances.ts` unpacked: the advance of each code point, units. */
const unpack = (packed: string): Uint16Array => {
  const advances = new Uint16Array(END).fill(NONE);
  let at = 0;
  for (const run of packed.split(' ')) {
    if (run.startsWith('.')) {
      at += Number.parseInt(run.slice(1), 36);
      continue;
    }
    const [advance = '', count = '1'] = run.split('*');
    const end = at + Number.parseInt(count, 36);
    advances.fill(Number.parseInt(advance, 36), at, end);
    at = end;
  }
  return advances;
};

const PACKED = { regular: REGULAR, bold: BOLD };
const unpacked = new Map<TextMark['weight'], Uint16Array>();

const advancesOf = (weight: TextMark['weight']): Uint16Array => {
  const known = unpacked.get(weight) ?? unpack(PACKED[weight]);
  unpacked.set(weight, known);
  return known;
};

/** Letters of scripts that run from right to left, most of which are shaped. */
const RIGHT_TO_LEFT = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u;

/**
 * Whether the sheets' own font sets a text as it is, one letter after the other from the left. Other texts are shaped by
 * the rules of a font, and some need another font.
 */
export const isPlain = (text: string, weight: TextMark['weight']): boolean => {
  // Most texts are; to look for each letter would take longer.
  if (/^[ -~\u00A0-\u02FF\u2010-\u2027\u2190-\u2193]*$/u.test(text)) return true;
  if (RIGHT_TO_LEFT.test(text)) return false;
  const advances = advancesOf(weight);
  for (const character of shownText(text))
    if ((advances[character.codePointAt(0) ?? 0] ?? NONE) === NONE) return false;
  return true;
};

/** The width of a text that is not plain, in ems. */
export type MeasureShaped = (text: string, weight: TextMark['weight']) => number;

let measureShaped: MeasureShaped | undefined;

/**
 * Has texts that are not plain measured by what draws them, from now on. That needs fonts, which are large; so whoever
 * has such a text to draw loads them and says so once, before anything is laid out.
 */
export const measureShapedBy = (measure: MeasureShaped | undefined): void => {
  measureShaped = measure;
};

/** Width of one line of text, mm, at an em of `size` mm; plain text is set without kerning. */
export const textWidth = (text: string, size: number, weight: TextMark['weight']): number => {
  if (measureShaped !== undefined && !isPlain(text, weight)) return measureShaped(text, weight) * size;
  const advances = advancesOf(weight);
  let units = 0;
  for (const character of shownText(text)) {
    const advance = advances[character.codePointAt(0) ?? 0] ?? NONE;
    units += advance === NONE ? BOX_ADVANCE : advance;
  }
  return (units / UNITS_PER_EM) * size;
};
