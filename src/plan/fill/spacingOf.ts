import type { Spacing } from '../../joint/jointSpec.ts';
import type { WrittenJoint } from '../schema/planSchema.ts';

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
