/** A position in a text, line and column counted from 1, as in editors. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

const LINE_END = /\r\n|\n|\r/gu;

/** Converts offsets in a text to positions; the lines are found once, at the first call. */
export const positionsIn = (text: string): ((offset: number) => Position) => {
  let starts: number[] | undefined;
  return (offset) => {
    starts ??= [0, ...Array.from(text.matchAll(LINE_END), (end) => end.index + end[0].length)];
    let low = 0;
    let high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
  };
};
