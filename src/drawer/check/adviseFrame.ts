import type { PlannedCabinet } from '../../cabinet/frameSpec.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Drawer } from '../drawer.ts';

/** Runners that the sides of a drawer would run off, when it lies against one side of its opening; the worst of them is told. */
export const adviseFrame = (
  { frame: { runners } }: PlannedCabinet,
  drawers: readonly Drawer[],
): Complaint[] => {
  const needs = drawers.flatMap(({ spec: { name, space }, sizes }) =>
    space.kind === 'opening' && space.places !== undefined
      ? [{ name, need: 2 * space.fit.side + Math.max(sizes.wall.left, sizes.wall.right) }]
      : [],
  );
  const [worst] = needs.sort((one, other) => other.need - one.need);
  return worst === undefined || worst.need <= runners.width + EPSILON
    ? []
    : [
        {
          at: ['cabinet', 'runners', 'width'],
          says: say`runners ${mm(runners.width)} wide do not carry the whole side of ${quote(worst.name)}, which needs ${mm(worst.need)} with its clearance on both sides`,
          hint: say`${atLeast(worst.need)}`,
        },
      ];
};
