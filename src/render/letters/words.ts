import { isPlain } from '../../drawing/textWidth.ts';
import type { Place } from '../../units/complaint.ts';

/** Words that the user gives, which sheets show: where they are written, and what they are. */
export interface Word {
  readonly at: Place;
  readonly text: string;
}

/** Every text among a plan's values, and every name that is a key, each with its place. */
export const wordsOf = (value: unknown, at: Place = []): Word[] => {
  if (typeof value === 'string') return [{ at, text: value }];
  if (Array.isArray(value)) return value.flatMap((each, i) => wordsOf(each, [...at, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => {
    const inside = [...at, key];
    return [{ at: inside, text: key }, ...wordsOf(each, inside)];
  });
};

/** Whether both of the sheets' fonts set a text letter by letter; if not, it needs to be set by `setText`. */
export const isPlainWord = (text: string): boolean => isPlain(text, 'regular') && isPlain(text, 'bold');
