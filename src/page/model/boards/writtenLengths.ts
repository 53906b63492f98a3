import type { Point } from '../../../drawing/drawing.ts';
import type { Polygon } from '../../../stock/polygon.ts';
import type { Place } from '../../../units/complaint.ts';
import { unitOf } from '../../../units/notation.ts';
import { parseLength } from '../../../units/parseLength.ts';
import type { Edit, PlanValue } from '../../text/edit.ts';
import { planNumber, sameLength } from '../planNumber.ts';
import type { Snapshot } from '../snapshot.ts';
import { valueAt, type WrittenPlan } from '../writtenPlan.ts';

/** A length in mm, or lists of them. */
type Lengths = number | readonly Lengths[];

/** Lengths as the plan writes them. */
export const written = (now: Snapshot, value: Lengths): PlanValue =>
  typeof value === 'number'
    ? planNumber(value, unitOf(now.project.units))
    : value.map((each) => written(now, each));

/** Sets lengths; those that are the same stay as they are written. */
export const lengthEdit = (now: Snapshot, at: Place, value: Lengths): Edit => ({
  at,
  value: written(now, value),
  same: sameLength(unitOf(now.project.units)),
});

/** An outline in mm, its corners in the order in which they are written; undefined where there is none. */
export const cornersAt = (now: Snapshot, plan: WrittenPlan, at: Place): Polygon | undefined => {
  const corners = valueAt(plan, at);
  if (!Array.isArray(corners)) return undefined;
  const length = (value: unknown): number => {
    const read =
      typeof value === 'number' || typeof value === 'string'
        ? parseLength(value, unitOf(now.project.units))
        : undefined;
    return read?.ok ? read.value : 0;
  };
  return corners.map((corner: unknown): Point => {
    const [x, y]: unknown[] = Array.isArray(corner) ? corner : [];
    return [length(x), length(y)];
  });
};
