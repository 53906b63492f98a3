import type { TextMark } from '../drawing/drawing.ts';
import { textWidth } from '../drawing/textWidth.ts';

/** The first of some wordings, longest first, that fits in `room` mm; where none fits, the last one cut with `…`. */
export const fitText = (
  wordings: readonly string[],
  room: number,
  size: number,
  weight: TextMark['weight'],
): string => {
  const fits = (text: string) => textWidth(text, size, weight) <= room;
  const whole = wordings.find(fits);
  if (whole !== undefined) return whole;
  const characters = [...(wordings.at(-1) ?? '')];
  let kept = 0;
  let most = characters.length;
  while (kept < most) {
    const middle = Math.ceil((kept + most) / 2);
    if (fits(shortened(characters, middle))) kept = middle;
    else most = middle - 1;
  }
  return kept === 0 ? '' : shortened(characters, kept);
};

const shortened = (characters: readonly string[], kept: number): string =>
  `${characters.slice(0, kept).join('').trimEnd()}…`;
