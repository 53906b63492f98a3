import type { WrittenJoint } from './schema/plan.ts';

/**
 * Lays a drawer's own wishes for a corner over its plan's. What would contradict the drawer's gives way: a number of
 * tails takes the place of a list of them, a grade takes the place of a list, and a through joint has no lap.
 */
export const mergeJoint = (outer: WrittenJoint, inner: WrittenJoint): WrittenJoint => {
  const { lap, tails, pins, graded, ...rest } = outer;
  const respaced = inner.tails !== undefined || (inner.graded !== undefined && Array.isArray(tails));
  return {
    ...rest,
    ...(lap === undefined || inner.kind === 'through' ? {} : { lap }),
    ...(tails === undefined || respaced ? {} : { tails }),
    ...(pins === undefined || respaced ? {} : { pins }),
    ...(graded === undefined || Array.isArray(inner.tails) ? {} : { graded }),
    ...inner,
  };
};
