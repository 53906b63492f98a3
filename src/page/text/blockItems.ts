import type { Item, Items } from './items.ts';
import {
  beforeBlanks,
  lineBreakOf,
  lineEnd,
  lineStart,
  type Splice,
  startsLine,
  withoutLines,
} from './splice.ts';

/**
 * Takes items out of a list or a map that has a line for each, and puts others after the last that stays. All other
 * lines stay as they are.
 */
export const changeBlock = (
  text: string,
  { items }: Items,
  removed: ReadonlySet<number>,
  added: readonly string[],
): Splice[] => {
  const lastKept = items.findLastIndex((_, i) => !removed.has(i));
  const [first] = items;
  const anchor = items[lastKept] ?? first;
  if (anchor === undefined || first === undefined) return [];
  const between = lineBreakOf(text) + ' '.repeat(first.start - lineStart(text, first.start));
  const put = added.join(between);
  const out = items.flatMap((item, i) => (removed.has(i) ? item : []));
  if (added.length === 0) return out.map((item) => without(text, item));
  if (lastKept >= 0) {
    const end = lineEnd(text, anchor.end);
    return [{ from: end, to: end, put: between + put }, ...out.map((item) => without(text, item))];
  }
  const [, ...others] = out;
  return [
    { from: first.start, to: lineEnd(text, first.end), put },
    ...others.map((item) => without(text, item)),
  ];
};

/** Its lines, and the comment beside it; the dash of a list stays that stands before a map's first key. */
const without = (text: string, { start, end }: Item): Splice =>
  startsLine(text, start)
    ? withoutLines(text, start, end)
    : { from: beforeBlanks(text, start), to: lineEnd(text, end), put: '' };
