import type { Affine } from '../drawing/affine.ts';
import type { TextMark } from '../drawing/drawing.ts';
import { ANCHOR_SHARE, TURNS } from '../drawing/textBox.ts';
import { textWidth } from '../drawing/textWidth.ts';

/** The map of a text's letters to the drawing, from ems, measured from the text's start on its baseline. */
export const textMatrix = ({ text, at: [x, y], size, turn, anchor, weight }: TextMark): Affine => {
  const [cosine, sine] = TURNS[turn];
  const before = anchor === 'start' ? 0 : ANCHOR_SHARE[anchor] * textWidth(text, size, weight);
  return [size * cosine, size * sine, -size * sine, size * cosine, x - before * cosine, y - before * sine];
};
