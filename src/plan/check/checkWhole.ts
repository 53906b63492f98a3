import type { Complaint } from '../../units/complaint.ts';
import { repeatedNames } from '../../units/name.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';

/** The two lists of things to make. */
const LISTS = ['drawers', 'joints'] as const;
export type List = (typeof LISTS)[number];

export const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Faults of a plan as a whole: no entries, or two of the same name. */
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
  return LISTS.flatMap((list) => sameNames(list, value[list]));
};

const sameNames = (list: List, entries: unknown): Complaint[] => {
  if (!Array.isArray(entries)) return [];
  const names = entries.map((entry: unknown) =>
    isGroup(entry) && typeof entry.name === 'string' ? entry.name : undefined,
  );
  return repeatedNames(names).map(({ name, index, first }) => ({
    at: [list, index, 'name'],
    says: say`${quote(name)} is the name of ${list}[${first}] too; every name must be different`,
    hint: list === 'drawers' ? say`another name, or a count in the first` : say`another name`,
  }));
};
