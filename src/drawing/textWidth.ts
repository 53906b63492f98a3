import { BOLD, REGULAR } from './advances.ts';
import type { TextMark } from './drawing.ts';
import { shownText } from './shownText.ts';

/** The font's grid: this many units to the em. */
const UNITS_PER_EM = 2048;

/** What a character takes that the font lacks: the width of the box drawn in its place, in units. */
const BOX_ADVANCE = 1106;

/** The font has no glyph from here on. */
const END = 0x20000;

/** Heights in ems, the same in both weights: of a capital H, and of the line above and below the baseline. */
export const CAP_HEIGHT = 1493 / UNITS_PER_EM;
export const ASCENT = 1901 / UNITS_PER_EM;
export const DESCENT = 483 / UNITS_PER_EM;

/** Reads a table of `advances.ts`: by code point, each one's advance in units. */
const unpack = (packed: string): Uint16Array => {
  const advances = new Uint16Array(END).fill(BOX_ADVANCE);
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

/** How far one line of text runs, in mm, set without kerning at an em of `size` mm. */
export const textWidth = (text: string, size: number, weight: TextMark['weight']): number => {
  const advances = advancesOf(weight);
  let units = 0;
  for (const character of shownText(text)) units += advances[character.codePointAt(0) ?? 0] ?? BOX_ADVANCE;
  return (units / UNITS_PER_EM) * size;
};
