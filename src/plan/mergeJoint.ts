import type { Complaint, Place } from '../complaint.ts';
import type { Spacing } from '../joint/spec.ts';
import { say } from '../units/phrase.ts';
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

/** What the wishes for one corner contradict each other in. */
export const contradictions = ({ kind, lap, tails, pins, graded }: WrittenJoint, at: Place): Complaint[] => {
  const found: Complaint[] = [];
  if (kind === 'through' && lap !== undefined)
    found.push({
      at: [...at, 'lap'],
      says: say`a through joint has no lap`,
      hint: say`kind: lapped, or leaving the lap out`,
    });
  if (Array.isArray(tails) && graded !== undefined)
    found.push({
      at: [...at, 'graded'],
      says: say`the tails are listed width by width, so they cannot be graded too`,
      hint: say`a number of tails, or leaving the grade out`,
    });
  if (!Array.isArray(tails) && pins !== undefined)
    found.push({
      at: [...at, 'pins'],
      says: say`pins are listed, but the tails between them are not`,
      hint: say`listing the tails too, or one width for all pins (pin)`,
    });
  return found;
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
