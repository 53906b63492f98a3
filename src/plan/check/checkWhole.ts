import { lidName } from '../../drawer/drawerSpec.ts';
import type { Complaint, Place } from '../../units/complaint.ts';
import { repeatedNames } from '../../units/name.ts';
import { FRACTIONS } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Unit } from '../../units/unit.ts';
import { BOARDS } from '../schema/ranges.ts';

/** The lists of things to make. */
export const LISTS = ['drawers', 'boxes', 'joints'] as const;
export type List = (typeof LISTS)[number];

type Group = Readonly<Record<string, unknown>>;

export const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The most drawers, boxes and single corners of one plan, `count` not multiplied: setting so many out takes under 250 MB of memory. */
const MOST_ENTRIES = 2000;

const { most: MOST_BOARDS } = BOARDS;

/** A complaint about a plan with more entries than can be set out, at the first of them that is too many. */
export const tooManyEntries = (value: unknown): Complaint | undefined => {
  const given = isGroup(value) ? value : {};
  let before = 0;
  let at: Place | undefined;
  for (const list of LISTS) {
    const entries = given[list];
    const count = Array.isArray(entries) ? entries.length : 0;
    if (at === undefined && before + count > MOST_ENTRIES) at = [list, MOST_ENTRIES - before];
    before += count;
  }
  const { boards } = given;
  if (Array.isArray(boards) && boards.length > MOST_BOARDS)
    return {
      at: ['boards', MOST_BOARDS],
      says: say`the plan lists ${boards.length} boards; there may be up to ${MOST_BOARDS}; list those that are at hand, or divide the plan into several`,
    };
  return (
    at && {
      at,
      says: say`the plan has ${before} drawers, boxes and single corners; it may have up to ${MOST_ENTRIES}, as more would take too much memory; divide the plan into several, one for each cabinet`,
    }
  );
};

/**
 * Faults of a plan as a whole: fractions of mm, no entries, or two of the same name.
 * @param unit what its bare numbers mean
 */
export const checkWhole = (value: unknown, unit: Unit): Complaint[] =>
  isGroup(value) ? [...fractionsOfMm(value, unit), ...inLists(value)] : [];

const fractionsOfMm = ({ fractions }: Group, unit: Unit): Complaint[] =>
  fractions === undefined || unit === 'in'
    ? []
    : [
        {
          at: ['fractions'],
          says: say`fractions are of an inch, and this plan is in mm`,
          ...(FRACTIONS.some((each) => each === fractions) && { hint: say`units: in` }),
          remedy: say`remove the fractions`,
        },
      ];

const inLists = (value: Group): Complaint[] => {
  const given = LISTS.map((list) => value[list]).filter((list) => list !== undefined);
  // The rows of a cabinet may name the drawers.
  if (value.cabinet === undefined && given.every((list) => Array.isArray(list) && list.length === 0))
    return [
      {
        at: [],
        says: say`the plan has no drawers, boxes or joints, so there is nothing to make`,
        remedy: say`list them under drawers:, boxes: or joints:`,
      },
    ];
  return [...sameNames(value, LISTS), ...sameNames(value, ['boards'])];
};

/** The name of an entry, and that of a box's lid which is made apart. */
const namesOf = (entry: unknown): string[] => {
  if (!isGroup(entry) || typeof entry.name !== 'string') return [];
  const isApart = isGroup(entry.lid) && entry.lid.made === 'apart';
  return [entry.name, ...(isApart ? [lidName(entry.name)] : [])];
};

/** Entries of lists in all of which together every entry has a name of its own. */
const sameNames = (value: Group, lists: readonly (List | 'boards')[]): Complaint[] => {
  const entries = lists.flatMap((list) => {
    const given = value[list];
    return Array.isArray(given)
      ? given.flatMap((entry: unknown, index) => namesOf(entry).map((name) => ({ list, index, name })))
      : [];
  });
  const names = entries.map(({ name }) => name);
  return repeatedNames(names).flatMap(({ name, index, first }): Complaint[] => {
    const [again, before] = [entries[index], entries[first]];
    if (again === undefined || before === undefined) return [];
    const mayCount = again.list === before.list && again.list !== 'joints';
    return [
      {
        at: [again.list, again.index, 'name'],
        says: say`${quote(name)} is the name of ${before.list}[${before.index}] too; every name must be different`,
        remedy: mayCount ? say`give it another name, or give the first a count` : say`give it another name`,
      },
    ];
  });
};
