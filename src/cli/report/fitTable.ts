import { table } from '../../render/table.ts';

/** The most columns of any line. */
export const COLUMNS = 80;

/**
 * A table no wider than the terminal: what has no room goes under it in a further one, the first columns repeated.
 * @param keys the number of columns that identify a row
 */
export const fitTable = (
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  numeric: readonly boolean[],
  keys: number,
): string[] => {
  const some = (columns: readonly number[]): string[] => {
    const pick = <T>(all: readonly T[]): T[] => all.filter((_, i) => columns.includes(i));
    return table(pick(heading), rows.map(pick), pick(numeric));
  };
  const first = heading.map((_, i) => i).slice(0, keys);
  const groups: number[][] = [[...first]];
  for (let column = keys; column < heading.length; column++) {
    const last = groups.at(-1) ?? [];
    const fits = some([...last, column]).every((line) => [...line].length <= COLUMNS);
    if (fits || last.length === keys) last.push(column);
    else groups.push([...first, column]);
  }
  return groups.flatMap((columns, i) => [...(i === 0 ? [] : ['']), ...some(columns)]);
};
