import { lineBreakOf } from './splice.ts';

/**
 * A text as it was typed over in a field that shows every line break as `\n`: what was not typed over keeps its own.
 * @param typed what the field holds
 */
export const retype = (text: string, typed: string): string => {
  const shown = text.replace(/\r\n?/gu, '\n');
  if (shown === typed) return text;
  let start = 0;
  while (start < shown.length && start < typed.length && shown[start] === typed[start]) start++;
  let tail = 0;
  const most = Math.min(shown.length, typed.length) - start;
  while (tail < most && shown.at(-1 - tail) === typed.at(-1 - tail)) tail++;
  const offsets = offsetsIn(text);
  const middle = typed.slice(start, typed.length - tail).replaceAll('\n', lineBreakOf(text));
  return text.slice(0, offsets[start]) + middle + text.slice(offsets[shown.length - tail]);
};

/** Where in a text each character is of the one in which every line break is `\n`. */
const offsetsIn = (text: string): number[] => {
  const offsets: number[] = [];
  for (let at = 0; at <= text.length; at++) if (text[at] !== '\n' || text[at - 1] !== '\r') offsets.push(at);
  return offsets;
};
