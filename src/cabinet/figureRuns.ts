import { EPSILON } from '../units/epsilon.ts';
import type { CabinetOpening } from './openings.ts';

/**
 * Drawers of a cabinet across whose fronts the figure of the wood may run on, by their names: those of one height side by
 * side, from left to right, or those of one width above each other, from the bottom up. One front by itself is no run.
 */
export const figureRuns = (openings: readonly CabinetOpening[], along: 'rows' | 'stacks'): string[][] => {
  const isRow = along === 'rows';
  const runs: CabinetOpening[][] = [];
  for (const opening of [...openings].sort((one, other) =>
    isRow ? other.y - one.y || one.x - other.x : one.x - other.x || one.y - other.y,
  )) {
    const run = runs.find((each) => {
      const last = each.at(-1);
      return last !== undefined && goesOn(last, opening, isRow) && !isBetween(last, opening, openings);
    });
    if (run === undefined) runs.push([opening]);
    else run.push(opening);
  }
  return runs.filter(({ length }) => length > 1).map((run) => run.map(({ name }) => name));
};

const isSame = (one: number, other: number): boolean => Math.abs(one - other) < EPSILON;

/** Whether the second lies in line with the first, to its right or above it. */
const goesOn = (one: CabinetOpening, other: CabinetOpening, isRow: boolean): boolean =>
  isRow
    ? isSame(one.y, other.y) && isSame(one.height, other.height) && other.x > one.x
    : isSame(one.x, other.x) && isSame(one.width, other.width) && other.y > one.y;

/** Whether another opening parts two that are in line. */
const isBetween = (
  one: CabinetOpening,
  other: CabinetOpening,
  openings: readonly CabinetOpening[],
): boolean => {
  const x = [Math.min(one.x, other.x), Math.max(one.x + one.width, other.x + other.width)] as const;
  const y = [Math.min(one.y, other.y), Math.max(one.y + one.height, other.y + other.height)] as const;
  return openings.some(
    (each) =>
      each !== one &&
      each !== other &&
      each.x < x[1] - EPSILON &&
      each.x + each.width > x[0] + EPSILON &&
      each.y < y[1] - EPSILON &&
      each.y + each.height > y[0] + EPSILON,
  );
};
