import { apply, compose, mapBox, QUARTER_TURN, translation } from './affine.ts';
import type { Box, TextMark } from './drawing.ts';
import { ASCENT, DESCENT, textWidth } from './textWidth.ts';

const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 };

/** The room that a text takes, from its font's lowest descender to its highest accent. */
export const textBox = ({ text, at, size, turn, anchor, weight }: TextMark): Box => {
  const width = textWidth(text, size, weight);
  const x0 = -SHARE_BEFORE[anchor] * width;
  let map = translation(0, 0);
  for (let degrees = 0; degrees < turn; degrees += 90) map = compose(map, QUARTER_TURN);
  const [x, y] = apply(map, [0, 0]);
  return mapBox(compose(map, translation(at[0] - x, at[1] - y)), {
    x0,
    y0: -DESCENT * size,
    x1: x0 + width,
    y1: ASCENT * size,
  });
};
