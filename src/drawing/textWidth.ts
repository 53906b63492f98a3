import { BOLD, REGULAR } from './advances.ts';
import type { TextMark } from './drawing.ts';
import { shownText } from './shownText.ts';

/** Units of the font's grid in one em. */
const UNITS_PER_EM = 2048;

/** Advance of the box drawn for a character that the font lacks, units. */
const BOX_ADVANCE = 1106;

/** Code points from here on have no glyph in the font. */
const END = 0x20000;

/** Heights in both weights, ems: of a capital H, and of a line above and below the baseline. */
export const CAP_HEIGHT = 1493 / UNITS_PER_EM;
export const ASCENT = 1901 / UNITS_PER_EM;
export const DESCENT = 483 / UNITS_PER_EM;

/** A table of `advances.ts` unpacked: the advance of each code point, units. */
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

/** Width of one line of text, mm, set without kerning at an em of `size` mm. */
export const textWidth = (text: string, size: number, weight: TextMark['weight']): number => {
  const advances = advancesOf(weight);
  let units = 0;
  for (const character of shownText(text)) units += advances[character.codePointAt(0) ?? 0] ?? BOX_ADVANCE;
  return (units / UNITS_PER_EM) * size;
};
