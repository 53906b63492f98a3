import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import type { WrittenJoint } from '../schema/planSchema.ts';

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
