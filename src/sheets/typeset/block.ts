import type { Drawing, Mark, TextMark } from '../../drawing/drawing.ts';
import { PENS } from '../../drawing/pens.ts';
import { line, stroke, textMark } from '../../drawing/shapes.ts';
import { ASCENT, textWidth } from '../../drawing/textWidth.ts';
import { translateMarks } from '../../drawing/transform.ts';

/** A block of a sheet: its height, mm, and its marks with the upper left corner at a place. */
export interface Block {
  readonly height: number;
  marks(left: number, top: number): Mark[];
}

/** Words of one size and weight; a no-break space keeps a measure on one line. */
export interface TextRun {
  readonly text: string;
  readonly size: number;
  readonly weight: TextMark['weight'];
}

/** Distance between baselines, ems. */
const LEADING = 1.25;

export interface ParagraphStyle {
  /** Alignment of the lines; left by default. */
  readonly anchor?: 'start' | 'end';
  /** Least em of the first line's height, mm, to align it with larger text beside it. */
  readonly strut?: number;
}

/** Runs one after the other with spaces between, in lines of at most `width` mm. A longer word is broken anywhere; a single wider letter exceeds the width. */
export const paragraph = (
  runs: readonly TextRun[],
  width: number,
  { anchor = 'start', strut = 0 }: ParagraphStyle = {},
): Block => {
  const lines: TextRun[][] = [];
  let used = 0;
  for (const { text, size, weight } of runs) {
    for (const whole of text.split(' ')) {
      for (const word of broken({ text: whole, size, weight }, width)) {
        const line = lines.at(-1);
        const last = line?.at(-1);
        const length = textWidth(word, size, weight);
        const space = last === undefined ? 0 : textWidth(' ', size, last.weight);
        if (line === undefined || last === undefined || used + space + length > width) {
          lines.push([{ text: word, size, weight }]);
          used = length;
          continue;
        }
        used += space + length;
        if (last.size === size && last.weight === weight)
          line[line.length - 1] = { ...last, text: `${last.text} ${word}` };
        else line.push({ text: word, size, weight });
      }
    }
  }
  const heights = lines.map(
    (line, i) => LEADING * Math.max(i === 0 ? strut : 0, ...line.map(({ size }) => size)),
  );
  return {
    height: heights.reduce((sum, height) => sum + height, 0),
    marks: (left, top) => {
      let y = top;
      return lines.flatMap((line, i) => {
        const size = (heights[i] ?? 0) / LEADING;
        const baseline = y - ASCENT * size;
        y -= heights[i] ?? 0;
        const starts = startsOf(line);
        const shift = anchor === 'end' ? width - (starts.at(-1) ?? 0) : 0;
        return line.map((run, j) =>
          textMark(run.text, [left + shift + (starts[j] ?? 0), baseline], run.size, { weight: run.weight }),
        );
      });
    },
  };
};

/** The start of each run of a line, mm from its left, and the end of the last. */
export const startsOf = (line: readonly TextRun[]): number[] => {
  const starts = [0];
  line.forEach(({ text, size, weight }, i) => {
    const next = line[i + 1];
    const space = next === undefined ? 0 : textWidth(' ', next.size, weight);
    starts.push((starts.at(-1) ?? 0) + textWidth(text, size, weight) + space);
  });
  return starts;
};

/** A word in parts that each fit, divided at no-break spaces first; an accent stays with its letter. */
const broken = ({ text, size, weight }: TextRun, width: number): string[] => {
  const fits = (part: string) => textWidth(part, size, weight) <= width;
  if (fits(text)) return [text];
  return text.split('\u00A0').flatMap((word) => {
    if (fits(word)) return [word];
    const parts: string[] = [];
    for (const [letter] of word.matchAll(/\P{M}\p{M}*|\p{M}+/gu)) {
      const last = parts.at(-1);
      if (last !== undefined && fits(last + letter)) parts[parts.length - 1] = last + letter;
      else parts.push(letter);
    }
    return parts;
  });
};

/** Blocks one below the other, with a gap between each two. */
export const stack = (blocks: readonly Block[], gap = 0): Block => ({
  height: blocks.reduce((sum, { height }) => sum + height + gap, blocks.length > 0 ? -gap : 0),
  marks: (left, top) => {
    let y = top;
    return blocks.flatMap((block) => {
      const marks = block.marks(left, y);
      y -= block.height + gap;
      return marks;
    });
  },
});

/** An empty block, `height` mm high. */
export const space = (height: number): Block => ({ height, marks: () => [] });

/** Blocks side by side, each at its distance from the left, mm, their upper edges level. */
export const beside = (blocks: readonly (readonly [left: number, block: Block])[]): Block => ({
  height: Math.max(0, ...blocks.map(([, { height }]) => height)),
  marks: (left, top) => blocks.flatMap(([at, block]) => block.marks(left + at, top)),
});

const HALF = PENS.thin.width / 2;

/** A thin level line within the width, with `air` mm above and below. */
export const rule = (width: number, air: number): Block => ({
  height: 2 * air,
  marks: (left, top) => [
    stroke('label', 'thin', [line(left + HALF, top - air, left + width - HALF, top - air)]),
  ],
});

/** A drawing as a block the size of its box. */
export const picture = ({ box, marks }: Drawing): Block => ({
  height: box.y1 - box.y0,
  marks: (left, top) => translateMarks(marks, left - box.x0, top - box.y1),
});
