import { EPSILON } from '../../units/epsilon.ts';
import type { Drawer } from '../drawer.ts';
import type { Cabinet } from './cabinetFront.ts';

/** How the heights of rows follow each other, from the top down. */
export type Progression =
  /** But for one mark. */
  | { readonly kind: 'equal' }
  /** Each is so much higher than the one above; less than 0: lower. In mm. */
  | { readonly kind: 'arithmetic'; readonly step: number; readonly isRounded: boolean }
  /** Each is so many times as high as the one above. */
  | { readonly kind: 'geometric'; readonly ratio: number; readonly isRounded: boolean }
  | { readonly kind: 'free' };

/**
 * The progression that heights follow, each rounded to a mark of the rule: none may lie further than two marks off that which runs from
 * the first to the last, as both of those are rounded too. Where two do, the nearer one. Two heights follow any.
 * @param mark in mm
 */
export const progressionOf = (heights: readonly number[], mark: number): Progression => {
  const [first = 0] = heights;
  const last = heights.at(-1) ?? first;
  if (Math.max(...heights) - Math.min(...heights) <= mark + EPSILON) return { kind: 'equal' };
  const steps = heights.length - 1;
  if (steps < 2) return { kind: 'free' };
  const step = (last - first) / steps;
  const ratio = (last / first) ** (1 / steps);
  const off = (at: (i: number) => number): number =>
    Math.max(...heights.map((height, i) => Math.abs(height - at(i))));
  const arithmetic = off((i) => first + i * step);
  const geometric = off((i) => first * ratio ** i);
  if (Math.min(arithmetic, geometric) > 2 * mark + EPSILON) return { kind: 'free' };
  return arithmetic <= geometric + EPSILON
    ? { kind: 'arithmetic', step, isRounded: arithmetic > EPSILON }
    : { kind: 'geometric', ratio, isRounded: geometric > EPSILON };
};

/**
 * The heights of a cabinet's rows from the top, in mm: of their openings where the plan places them, rows inside a place together; or else
 * of their fronts.
 */
export const rowHeightsOf = ({ rows, planned }: Cabinet, drawers: readonly Drawer[]): number[] => {
  const places = drawers.flatMap(({ spec: { space } }) =>
    space.kind === 'size' ? [] : (space.places ?? []),
  );
  const numbers = [...new Set(places.map(({ row }) => row))].sort((a, b) => a - b);
  const all = planned ? numbers.map((number) => places.filter(({ row }) => row === number)) : rows;
  return all.map(
    (row) => Math.max(...row.map(({ y, height }) => y + height)) - Math.min(...row.map(({ y }) => y)),
  );
};
