import type { Complaint } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';

/** The two lists of things to make. */
const LISTS = ['drawers', 'joints'] as const;
export type List = (typeof LISTS)[number];

export const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is wrong with a plan as a whole, whatever may be wrong inside its entries. */
export const checkWhole = (value: unknown): Complaint[] => {
  if (!isGroup(value)) return [];
  const lists = LISTS.map((list) => value[list]).filter((list) => list !== undefined);
  if (lists.every((list) => Array.isArray(list) && list.length === 0))
    return [
      {
        at: [],
        says: say`the plan has neither drawers nor joints, so there is nothing to make`,
        hint: say`drawers: or joints:, and a list of them`,
      },
    ];
  return LISTS.flatMap((list) => repeatedNames(list, value[list]));
};

/** Names tell the sheets apart, on paper and as files, so they differ by more than capitals and blanks. */
const sameName = (name: string): string => name.normalize('NFKC').toLowerCase().replace(/\s+/gu, '');

const repeatedNames = (list: List, entries: unknown): Complaint[] => {
  if (!Array.isArray(entries)) return [];
  const first = new Map<string, number>();
  return entries.flatMap((entry: unknown, i): Complaint[] => {
    if (!isGroup(entry) || typeof entry.name !== 'string') return [];
    const name = sameName(entry.name);
    const earlier = first.get(name);
    if (earlier === undefined) {
      first.set(name, i);
      return [];
    }
    return [
      {
        at: [list, i, 'name'],
        says: say`${quote(entry.name)} is the name of ${list}[${earlier}] too; every name must be different`,
        hint: list === 'drawers' ? say`another name, or a count in the first` : say`another name`,
      },
    ];
  });
};
