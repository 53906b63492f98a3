import type { Item, Items } from './items.ts';
import {
  afterBlanks,
  beforeBlanks,
  endsLine,
  isBlank,
  lineBreakOf,
  lineEnd,
  lineStart,
  type Splice,
  startsLine,
  withoutLines,
} from './splice.ts';

/**
 * Takes items out of a list or a map in brackets, and puts others after the last that stays, on lines of their own where
 * that one has its own; with the commas that this needs.
 * @param open where the brackets' inside begins
 */
export const changeFlow = (
  text: string,
  written: Items,
  removed: ReadonlySet<number>,
  added: readonly string[],
  open: number,
): Splice[] => {
  const { items, lastComma } = written;
  const [first, last] = [items[0], items.at(-1)];
  const lastKept = items.findLastIndex((_, i) => !removed.has(i));
  const anchor = items[lastKept];
  if (anchor === undefined)
    return [{ from: first?.start ?? open, to: last?.end ?? open, put: added.join(', ') }];
  const out = items.flatMap((item, i): Splice[] => {
    if (!removed.has(i)) return [];
    // One after the last that stays takes the comma before it with it, any other the comma after it.
    const after = items[i + 1]?.comma ?? lastComma;
    return i > lastKept && lastComma === undefined
      ? withCommaBefore(text, item)
      : withCommaAfter(text, item, after ?? item.end);
  });
  const hasComma = lastKept === items.length - 1 && lastComma !== undefined;
  return [...out, ...put(text, anchor, added, hasComma ? lastComma : undefined)];
};

const withCommaAfter = (text: string, { start, end }: Item, comma: number): Splice[] => {
  const next = Math.max(end, comma + 1);
  if (!endsLine(text, next)) return [{ from: start, to: afterBlanks(text, next), put: '' }];
  return [without(text, start, next)];
};

const withCommaBefore = (text: string, { start, end, comma = start }: Item): Splice[] => {
  if (isBlank(text.slice(comma + 1, start))) return [{ from: comma, to: end, put: '' }];
  return [{ from: comma, to: comma + 1, put: '' }, without(text, start, end)];
};

/** Its lines where it has them to itself, else the item and the blanks before it. */
const without = (text: string, start: number, end: number): Splice =>
  startsLine(text, start) && endsLine(text, end)
    ? withoutLines(text, start, end)
    : { from: beforeBlanks(text, start), to: end, put: '' };

/** Puts items after another, or after the comma that follows it. */
const put = (
  text: string,
  { start, end }: Item,
  added: readonly string[],
  comma: number | undefined,
): Splice[] => {
  if (added.length === 0) return [];
  if (!startsLine(text, start)) return [{ from: end, to: end, put: `, ${added.join(', ')}` }];
  const between = lineBreakOf(text) + text.slice(lineStart(text, start), start);
  const items = between + added.join(`,${between}`);
  const next = comma === undefined ? end : comma + 1;
  // A comment beside the item before stays there.
  const at = endsLine(text, next) ? lineEnd(text, next) : next;
  return comma === undefined
    ? [
        { from: end, to: end, put: ',' },
        { from: at, to: at, put: items },
      ]
    : [{ from: at, to: at, put: items }];
};
