import type { Point, TextMark } from './drawing.ts';

/** A line of level text; regular and to the right of `at` unless asked otherwise. */
export const textMark = (
  text: string,
  at: Point,
  size: number,
  { weight = 'regular', anchor = 'start' }: Partial<Pick<TextMark, 'weight' | 'anchor'>> = {},
): TextMark => ({ kind: 'text', role: 'label', text, at, size, turn: 0, anchor, weight });
