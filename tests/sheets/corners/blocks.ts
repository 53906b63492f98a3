import { blockBetween, type ConvexBlock } from '../../../src/sheets/corners/convexBlock.ts';
import type { Place } from '../../../src/sheets/corners/space.ts';
import type { Segment } from '../../../src/sheets/corners/trueEdges.ts';

/** A block with upright sides between two opposite corners. */
export const box = ([x0, y0, z0]: Place, [x1, y1, z1]: Place): ConvexBlock => {
  const end = (x: number): Place[] => [
    [x, y0, z0],
    [x, y1, z0],
    [x, y1, z1],
    [x, y0, z1],
  ];
  return blockBetween(end(x0), end(x1));
};

/** Lines whatever their direction and order, to six digits. */
export const written = (segments: readonly Segment[]): string[] =>
  segments
    .map((ends) =>
      ends
        .map((place) => place.map((each) => Number(each.toFixed(6)) + 0).join(' '))
        .sort()
        .join(' - '),
    )
    .sort();
