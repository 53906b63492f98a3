import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import { accept, type Place, type Result, refuse } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { contradictions } from '../check/contradictions.ts';
import type { NamedJoint } from '../plan.ts';
import type { WrittenNamedJoint } from '../schema/planSchema.ts';
import { spacingOf } from './spacingOf.ts';

/** A corner that belongs to no drawer; the plan's keys for drawers do not touch it. */
export const fillJoint = (written: WrittenNamedJoint, at: Place, notation: Notation): Result<NamedJoint> => {
  const { name, tails, pins, graded, ...sizes } = withoutKind(written);
  const wrong = contradictions(written, at);
  if (wrong.length > 0) return refuse(...wrong);
  return accept({
    name,
    spec: { notation, ...sizes, spacing: spacingOf(written), ...KINDS[written.kind].wish(written) },
  });
};
