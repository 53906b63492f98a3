import { EPSILON } from '../units/epsilon.ts';
import type { RowHeights } from './heightRule.ts';

/**
 * Heights rounded to a mark of the rule, in mm, so that their sum stays: by the largest remainder. Each goes down to its
 * mark, then one mark up where most was lost, the lower row first among equals, until the sum is met. What is given is not
 * moved; what the others have to share beyond a mark goes to the lowest of them.
 */
export const roundToSum = ({ heights, given }: RowHeights, mark: number): readonly number[] => {
  const free = heights.map((_, i) => i).filter((i) => given[i] !== true);
  const lowest = free.at(-1);
  if (lowest === undefined) return heights;
  const share = free.reduce((sum, i) => sum + (heights[i] ?? 0), 0) / mark;
  const down = (marks: number): number => Math.floor(marks + EPSILON);
  const lost = (i: number): number => (heights[i] ?? 0) / mark - down((heights[i] ?? 0) / mark);
  const extra = down(share) - free.reduce((sum, i) => sum + down((heights[i] ?? 0) / mark), 0);
  const byLoss = [...free].sort((a, b) => {
    const more = lost(b) - lost(a);
    return Math.abs(more) > EPSILON ? more : b - a;
  });
  const up = new Set(byLoss.slice(0, extra));
  const beyond = (share - down(share)) * mark;
  return heights.map((height, i) =>
    given[i] === true
      ? height
      : (down(height / mark) + (up.has(i) ? 1 : 0)) * mark + (i === lowest && beyond > EPSILON ? beyond : 0),
  );
};
