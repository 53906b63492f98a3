import type { Drawer } from '../drawer.ts';
import { copyNumbers } from './builtCopies.ts';

/**
 * Names of drawers in fewer words, where they are of one entry of the plan: `Buttons 1-2`, and `Buttons` for all that there
 * are; other names stay.
 * @param planned the drawers of the plan
 */
export const joinedNames = (planned: readonly Drawer[]): ((names: readonly string[]) => string[]) => {
  const entries = new Map(
    planned.flatMap(({ spec: { count }, made = [] }) =>
      made.flatMap(({ spec: { name, made: of } }) =>
        of === undefined || name === of.name
          ? []
          : [[name, { name: of.name, copies: of.copies, count }] as const],
      ),
    ),
  );
  return (names) => {
    const joined = new Map<string, { copies: readonly number[]; count: number } | undefined>();
    for (const each of names) {
      const entry = entries.get(each);
      const before = entry && joined.get(entry.name);
      joined.set(
        entry?.name ?? each,
        entry && { count: entry.count, copies: [...(before?.copies ?? []), ...entry.copies] },
      );
    }
    return [...joined].map(([name, several]) =>
      several === undefined || several.copies.length === several.count
        ? name
        : `${name} ${copyNumbers(several.copies.toSorted((a, b) => a - b))}`,
    );
  };
};
