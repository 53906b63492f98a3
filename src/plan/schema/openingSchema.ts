import * as z from 'zod';
import { type OpeningShape, shapeOf } from '../../cabinet/measuredOpening.ts';
import type { Opening } from '../../drawer/drawerSpec.ts';
import type { Unit } from '../../units/unit.ts';
import { complainOfAll, group, lengths, optional } from './leaves.ts';
import * as ranges from './ranges.ts';

/** An opening as planned, or as measured, with the shape that it was found to have. */
export interface WrittenOpening extends Opening {
  readonly shape?: OpeningShape;
}

/** The clear hole that a drawer slides into; one that was measured is rarely square. */
export const openingSchema = (unit: Unit) => {
  const length = lengths(unit);
  const size = length(ranges.SPACE);
  const frontAndBack = group('{front: 280, back: 279.5}', {
    front: size.describe('In front, along the lower edge.'),
    back: size.describe('Behind.'),
  });
  const leftAndRight = group('{left: 76, right: 75.5}', {
    left: size.describe('In front, on the left.'),
    right: size.describe('In front, on the right.'),
    ...optional({ back: size.describe('Behind, if it is less there.') }),
  });
  const diagonal = length(ranges.DIAGONAL);
  return group('{width: 280, height: 76, depth: 420}', {
    width: z
      .union([size, frontAndBack], { error: 'a length, or written {front: 280, back: 279.5}' })
      .describe('From left to right; as measured, in front and behind.'),
    height: z
      .union([size, leftAndRight], { error: 'a length, or written {left: 76, right: 75.5}' })
      .describe('From bottom to top; as measured, on the left and on the right.'),
    depth: size.describe('From front to back.'),
    ...optional({
      diagonals: group('{rising: 290.2, falling: 289.9}', {
        rising: diagonal.describe('From the lower left corner to the upper right.'),
        falling: diagonal.describe('From the upper left corner to the lower right.'),
      }).describe('The diagonals in front, as measured. Square unless given.'),
    }),
  }).transform(({ width, height, depth, diagonals }, sink): WrittenOpening => {
    if (typeof width === 'number' && typeof height === 'number' && diagonals === undefined)
      return { width, height, depth };
    const shape = shapeOf({
      width: typeof width === 'number' ? { front: width, back: width } : width,
      height: typeof height === 'number' ? { left: height, right: height } : height,
      depth,
      ...(diagonals && { diagonals }),
    });
    return shape.ok
      ? { ...shape.value.box, shape: shape.value }
      : complainOfAll(sink, { width, height, diagonals }, shape.complaints);
  });
};
