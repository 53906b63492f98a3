import type { TextMark } from '../drawing/drawing.ts';
import { textWidth } from '../drawing/textWidth.ts';

/** Words set in lines of at most `room` mm; a longer word stands on a line of its own. */
export const wrapText = (text: string, room: number, size: number, weight: TextMark['weight']): string[] => {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer, size, weight) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};
