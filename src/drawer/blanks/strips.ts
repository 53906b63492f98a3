import { EPSILON } from '../../units/epsilon.ts';

/** Where a part is glued up: from and to, in mm of its finished width from the reference edge. */
export type Strip = readonly [from: number, to: number];

/** A glue line stays so far from a groove, in mm. */
const CLEAR_OF_GROOVE = 5;
/** The widest strip of a part by its narrowest, at most: they look alike, and move alike. */
const MOST_UNEVEN = 1.15;

/**
 * A part's finished width in so many strips, from the reference edge up: equal ones, or such that no glue line is in the way
 * of a groove. Undefined where that cannot be.
 * @param groove from and to, in mm from the reference edge
 */
export const stripsOf = (
  width: number,
  count: number,
  groove: readonly [number, number] | undefined,
): readonly Strip[] | undefined => {
  const even = (from: number, to: number, strips: number): number[] =>
    Array.from({ length: strips }, (_, i) => from + ((to - from) * (i + 1)) / strips);
  const equal = even(0, width, count);
  const [low, high] = groove ?? [0, 0];
  const around = [low - CLEAR_OF_GROOVE, high + CLEAR_OF_GROOVE];
  const inWay = (line: number) =>
    groove !== undefined && line > (around[0] ?? 0) + EPSILON && line < (around[1] ?? 0) - EPSILON;
  // A line that is in the way moves to either side, and the strips below and above it share what they have.
  const moved = Array.from({ length: count - 1 }, (_, i) =>
    around.map((at) => [...even(0, at, i + 1), ...even(at, width, count - i - 1)]),
  ).flat();
  const chosen = [equal, ...moved]
    .map((lines) => lines.map((to, i): Strip => [lines[i - 1] ?? 0, to]))
    .filter((strips) => strips.every(([from, to], i) => to > from && (i === count - 1 || !inWay(to))))
    .map((strips) => ({ strips, uneven: unevenness(strips) }))
    .filter(({ uneven }) => uneven <= MOST_UNEVEN + EPSILON)
    .sort((a, b) => a.uneven - b.uneven)[0];
  return chosen?.strips;
};

const unevenness = (strips: readonly Strip[]): number => {
  const widths = strips.map(([from, to]) => to - from);
  return Math.max(...widths) / Math.min(...widths);
};
