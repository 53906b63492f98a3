import type { Box, Point, TextMark } from '../drawing/drawing.ts';
import { textBox } from '../drawing/textBox.ts';
import { ASCENT, DESCENT } from '../drawing/textWidth.ts';
import { AIR, SMALL } from './lettering.ts';

/** Left free at both ends of a word between two lines, in mm. */
export const BESIDE = 1;

/** The least room across a word that stands by itself between two lines, in mm. */
export const WORD_ROOM = (ASCENT + DESCENT) * SMALL + 2 * AIR;

/** A word of the small size, in the middle between the lines round it. */
export const wordAt = (text: string, weight: TextMark['weight'], turn: 0 | 90, [x, y]: Point): TextMark => {
  const drop = ((ASCENT - DESCENT) / 2) * SMALL;
  const at: Point = turn === 0 ? [x, y - drop] : [x + drop, y];
  return { kind: 'text', role: 'label', text, at, size: SMALL, turn, anchor: 'middle', weight };
};

/** The space of a word, with a little air, that no hatching may enter. */
export const clearBox = (word: TextMark): Box => {
  const { x0, y0, x1, y1 } = textBox(word);
  const air = 0.4;
  return { x0: x0 - air, y0: y0 - air, x1: x1 + air, y1: y1 + air };
};
