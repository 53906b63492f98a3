import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import type { Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** How much solid wood may swell across its grain from one season to another, as a share (common practice, from memory). */
const SWELLING = 0.01;
/** A lid's usual part of its box's height, and the most without advice (common practice, from memory). */
const USUAL_LID = { least: 1 / 4, most: 1 / 3 };
const MOST_LID = 1 / 2;

/** Advice on a box that can be made: the proportions of its lid, and room for a bottom of solid wood; places start in its entry. */
export const adviseBox = ({ box, bottom, groove }: DrawerSpec, { height, inside }: Sizes): Complaint[] => {
  if (box === undefined) return [];
  const { lid } = box;
  const deep = inside.depth + 2 * groove.depth;
  const swells = SWELLING * deep;
  return [
    ...(lid !== undefined && lid.height > MOST_LID * height + EPSILON
      ? [
          {
            at: ['lid', 'height'],
            says: say`a lid of ${mm(lid.height)} is more than half of a box ${mm(height)} high; ${mm(USUAL_LID.least * height)} to ${mm(USUAL_LID.most * height)} is usual`,
          },
        ]
      : []),
    ...(bottom.kind === 'solid' && 2 * bottom.slack < swells - EPSILON
      ? [
          {
            at: ['bottom', 'slack'],
            says: say`a solid bottom that is held on all four sides may swell by ${mm(swells)} from front to back, and its slack leaves it ${mm(2 * bottom.slack)}`,
            hint: say`${atLeast(swells / 2)}`,
          },
        ]
      : []),
  ];
};
