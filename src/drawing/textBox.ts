import type { Box, TextMark } from './drawing.ts';
import { BEFORE, TURNS } from './textAxes.ts';
import { ASCENT, DESCENT, textWidth } from './textWidth.ts';

/** The room that a text takes, from its font's lowest descender to its highest accent. */
export const textBox = ({ text, at: [x, y], size, turn, anchor, weight }: TextMark): Box => {
  const width = textWidth(text, size, weight);
  const [cosine, sine] = TURNS[turn];
  const start = -BEFORE[anchor] * width;
  const end = start + width;
  const [low, high] = [-DESCENT * size, ASCENT * size];
  // Two corners that lie across from each other, turned.
  const [ax, ay] = [x + cosine * start - sine * low, y + sine * start + cosine * low];
  const [bx, by] = [x + cosine * end - sine * high, y + sine * end + cosine * high];
  return { x0: Math.min(ax, bx), y0: Math.min(ay, by), x1: Math.max(ax, bx), y1: Math.max(ay, by) };
};
