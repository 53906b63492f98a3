import type { Affine } from '../drawing/affine.ts';
import type { TextMark } from '../drawing/drawing.ts';
import { textWidth } from '../drawing/textWidth.ts';

/** Cosine and sine of each turn. */
const TURNS: Readonly<Record<TextMark['turn'], readonly [number, number]>> = {
  0: [1, 0],
  90: [0, 1],
  180: [-1, 0],
  270: [0, -1],
};

/** The part of a text that lies before its anchor. */
const BEFORE: Readonly<Record<TextMark['anchor'], number>> = { start: 0, middle: 0.5, end: 1 };

/** Where a text's letters go: the map from ems, counted from the text's start on its baseline, to the drawing. */
export const lettersMap = ({ text, at: [x, y], size, turn, anchor, weight }: TextMark): Affine => {
  const [cosine, sine] = TURNS[turn];
  const before = anchor === 'start' ? 0 : BEFORE[anchor] * textWidth(text, size, weight);
  return [size * cosine, size * sine, -size * sine, size * cosine, x - before * cosine, y - before * sine];
};
