import { isSeq } from 'yaml';
import { itemsIn } from './items.ts';
import { parsePlan } from './parsePlan.ts';
import { lineEnd, spliced } from './splice.ts';
import { standAlone } from './standAlone.ts';

/** Lets two items of a list change places, each as it is written, with the comment beside it. */
export const swapItems = (given: string, list: string, one: number, other: number): string => {
  const text = [one, other].reduce((made, i) => standAlone(made, [list, i]), given);
  const written = parsePlan(text).get(list);
  if (!isSeq(written)) return text;
  const { items } = itemsIn(written, text);
  const [a, b] = [items[one], items[other]];
  if (a === undefined || b === undefined) return text;
  const endOf = ({ end }: typeof a): number => (written.flow === true ? end : lineEnd(text, end));
  return spliced(text, [
    { from: a.start, to: endOf(a), put: text.slice(b.start, endOf(b)) },
    { from: b.start, to: endOf(b), put: text.slice(a.start, endOf(a)) },
  ]);
};
