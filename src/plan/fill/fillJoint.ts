import type { Spacing } from '../../joint/jointSpec.ts';
import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import { accept, type Place, type Result, refuse } from '../../units/complaint.ts';
import { contradictions } from '../check/contradictions.ts';
import type { SingleCornerSpec } from '../plan.ts';
import type { WrittenJoint, WrittenSingleCorner } from '../schema/planSchema.ts';

/** A corner that belongs to no drawer; the plan's keys for drawers do not touch it. */
export const fillJoint = (written: WrittenSingleCorner, at: Place): Result<SingleCornerSpec> => {
  const { name, tails, pins, graded, ...sizes } = withoutKind(written);
  const wrong = contradictions(written, at);
  if (wrong.length > 0) return refuse(...wrong);
  return accept({
    name,
    spec: { ...sizes, spacing: spacingOf(written), ...KINDS[written.kind].wish(written) },
  });
};

/**
 * Lays a drawer's own wishes for a corner over its plan's. What would contradict the drawer's gives way: a number of
 * tails takes the place of a list of them, a grade takes the place of a list, and of the lengths that only
 * some kinds have those are left that the drawer's kind has.
 */
export const mergeJoint = (outer: WrittenJoint, inner: WrittenJoint): WrittenJoint => {
  const { kind, tails, pins, graded, ...rest } = outer;
  const respaced = inner.tails !== undefined || (inner.graded !== undefined && Array.isArray(tails));
  return {
    ...(kind === undefined ? {} : { kind }),
    ...(inner.kind === undefined ? rest : { ...withoutKind(rest), ...KINDS[inner.kind].wish(rest) }),
    ...(tails === undefined || respaced ? {} : { tails }),
    ...(pins === undefined || respaced ? {} : { pins }),
    ...(graded === undefined || Array.isArray(inner.tails) ? {} : { graded }),
    ...inner,
  };
};

/** How the tails are to be spaced. */
export const spacingOf = ({
  tails,
  pins,
  graded,
}: Pick<WrittenJoint, 'tails' | 'pins' | 'graded'>): Spacing => {
  if (Array.isArray(tails)) return { kind: 'listed', tails, ...(pins === undefined ? {} : { pins }) };
  const count = tails === undefined ? {} : { tails };
  return graded === undefined
    ? { kind: 'even', ...count }
    : { kind: 'graded', ...count, ratio: graded.ratio, from: graded.from ?? 'edge' };
};
