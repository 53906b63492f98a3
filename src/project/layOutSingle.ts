import type { Joint } from '../joint/joint.ts';
import { adviseRail, checkRail } from '../joint/topRail.ts';
import type { SingleCornerSpec } from '../plan/plan.ts';
import { layOutWith, type Tooling } from '../router/limits/layOutWith.ts';
import { accept, type Result, refuse } from '../units/complaint.ts';

/** A single corner of a plan, set out; where it is that of a rail over the drawers, as one that can be let into the sides. */
export const layOutSingle = (
  { spec, rail }: Pick<SingleCornerSpec, 'spec' | 'rail'>,
  tooling: Tooling,
): Result<Joint> => {
  const laid = layOutWith(spec, tooling);
  if (!laid.ok || rail === undefined) return laid;
  const wrong = checkRail(rail, laid.value, spec);
  if (wrong.length > 0) return refuse(...wrong);
  const { advice } = laid.value;
  return accept({
    ...laid.value,
    // A rail has one tail, however wide it is, and may be thicker than the sides.
    alternatives: [],
    advice: [
      ...advice.filter(({ at: [key] }) => key !== 'tails' && key !== 'pinBoard'),
      ...adviseRail(rail, laid.value),
    ],
  });
};
