import { packingOf } from '../search/packing.ts';
import { patternsOf } from '../search/patterns.ts';
import type { Choice, Pool } from '../search/pool.ts';
import { areaOf, type BlankType } from '../wood/blankType.ts';
import { groupsOf } from './groups.ts';
import type { Group, Placed } from './sawing.ts';

/** Steps for the patterns that give just what is taken, in each direction. */
const STEPS = 20_000;

/** A group without the blanks that nobody takes; nothing where it has no others. */
const without = (group: Group, left: number[]): Group | undefined => {
  const parts = group.parts.flatMap((part): readonly (Group | Placed)[] => {
    if ('parts' in part) {
      const rest = without(part, left);
      return rest === undefined ? [] : [rest];
    }
    const taken = (left[part.type] ?? 0) > 0;
    // Of a run all pieces are taken or none.
    if (taken && part.piece === undefined) left[part.type] = (left[part.type] ?? 0) - 1;
    return taken ? [part] : [];
  });
  return parts.length === 0 ? undefined : { ...group, parts };
};

/**
 * Ways to cut just what is taken of a choice, each as groups of blanks; the choice itself without the rest is the last.
 * @param taken how many of each type
 */
export const settle = (
  { bin }: Pool,
  choice: Choice,
  types: readonly BlankType[],
  taken: readonly number[],
): Group[] => {
  const packing = packingOf(taken, undefined, (type) => types[type]?.pin?.at !== undefined);
  const prices = types.map(areaOf);
  const exact = bin.ways.flatMap(({ view, stages }) => {
    const search = { prices, packing, stages, breadth: Number.POSITIVE_INFINITY, thorough: true };
    const { patterns } = patternsOf(view, { ...search, most: STEPS });
    return patterns
      .filter(({ counts }) => taken.every((number, type) => packing.countOf(counts, type) === number))
      .map(groupsOf);
  });
  return [
    ...exact,
    ...[without(groupsOf(choice.pattern), [...taken])].filter((group) => group !== undefined),
  ];
};
