import type { Box, TextMark } from './drawing.ts';
import { ASCENT, DESCENT, textWidth } from './textWidth.ts';

/** Cosine and sine of each turn: the direction of the text. */
export const TURNS: Readonly<Record<TextMark['turn'], readonly [cosine: number, sine: number]>> = {
  0: [1, 0],
  90: [0, 1],
  180: [-1, 0],
  270: [0, -1],
};

/** Share of a text's width before its anchor. */
export const ANCHOR_SHARE: Readonly<Record<TextMark['anchor'], number>> = { start: 0, middle: 0.5, end: 1 };

/** The box of a text, mm, from its font's lowest descender to its highest accent. */
export const textBox = ({ text, at: [x, y], size, turn, anchor, weight }: TextMark): Box => {
  const width = textWidth(text, size, weight);
  const [cosine, sine] = TURNS[turn];
  const start = -ANCHOR_SHARE[anchor] * width;
  const end = start + width;
  const [low, high] = [-DESCENT * size, ASCENT * size];
  // Two opposite corners, turned.
  const [ax, ay] = [x + cosine * start - sine * low, y + sine * start + cosine * low];
  const [bx, by] = [x + cosine * end - sine * high, y + sine * end + cosine * high];
  return { x0: Math.min(ax, bx), y0: Math.min(ay, by), x1: Math.max(ax, bx), y1: Math.max(ay, by) };
};
