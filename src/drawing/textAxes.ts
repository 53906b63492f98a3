import type { TextMark } from './drawing.ts';

/** Cosine and sine of each turn: which way a text runs. */
export const TURNS: Readonly<Record<TextMark['turn'], readonly [cosine: number, sine: number]>> = {
  0: [1, 0],
  90: [0, 1],
  180: [-1, 0],
  270: [0, -1],
};

/** The part of a text that lies before its anchor. */
export const BEFORE: Readonly<Record<TextMark['anchor'], number>> = { start: 0, middle: 0.5, end: 1 };
