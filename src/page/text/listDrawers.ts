import type { Place } from '../../units/complaint.ts';
import { nameKey } from '../../units/name.ts';
import type { Edit } from './edit.ts';

/** A name that is written in a plan, and where. */
interface WrittenName {
  readonly at: Place;
  readonly name: string;
}

/**
 * The changes of a plan whose drawers only the rows of its cabinet name: where one changes a drawer, all are listed first,
 * in the order in which they are counted.
 */
export const withDrawersListed = (plan: unknown, edits: readonly Edit[]): readonly Edit[] => {
  const isNeeded = edits.some(({ at }) => at[0] === 'drawers' && at.length > 1);
  if (!isNeeded || innerOf(plan, 'drawers') !== undefined) return edits;
  const names = namesInRows(plan).map(({ name }) => name);
  const first = names.filter((name, i) => names.findIndex((each) => nameKey(each) === nameKey(name)) === i);
  return [...first.map((value, i) => ({ at: ['drawers', i, 'name'], value })), ...edits];
};

/** Every place outside the list of drawers where a plan names one: in rows, in runs of figure, and where it was cut from. */
export const namesElsewhere = (plan: unknown): WrittenName[] => [
  ...namesInRows(plan),
  ...leavesIn(innerOf(innerOf(plan, 'breakout'), 'runThrough'), ['breakout', 'runThrough']).filter(isItem),
  ...leavesIn(innerOf(plan, 'boards'), ['boards']).filter(({ at }) => at.at(-1) === 'drawer'),
];

/** The drawers that the rows of a cabinet name, in rows inside them too. */
export const namesInRows = (plan: unknown): WrittenName[] =>
  leavesIn(innerOf(innerOf(plan, 'cabinet'), 'rows'), ['cabinet', 'rows']).filter(
    (leaf) => !leaf.at.includes('heights') && (isItem(leaf) || leaf.at.at(-1) === 'name'),
  );

const isItem = ({ at }: WrittenName): boolean => typeof at.at(-1) === 'number';

const innerOf = (group: unknown, key: string): unknown =>
  typeof group === 'object' && group !== null ? (group as Record<string, unknown>)[key] : undefined;

const leavesIn = (value: unknown, at: Place): WrittenName[] => {
  if (Array.isArray(value)) return value.flatMap((item, i) => leavesIn(item, [...at, i]));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => leavesIn(inner, [...at, key]));
  return typeof value === 'string' ? [{ at, name: value }] : [];
};
