import { nameKey } from '../../../units/name.ts';
import { unitOf } from '../../../units/notation.ts';
import type { Edit } from '../../text/edit.ts';
import { namesInRows } from '../../text/listDrawers.ts';
import { planNumber } from '../planNumber.ts';
import type { Snapshot } from '../snapshot.ts';
import { valueAt, writtenPlan } from '../writtenPlan.ts';
import { rowHeights } from './openingEdits.ts';

/**
 * The changes of a cabinet that a drawer goes out of: its rows go, and the cabinet is as much lower; those beside it in a row
 * share its width. Of rows inside a place, the place stays as high as it is.
 */
export const withoutPlaces = ({ text, project: { cabinet, units } }: Snapshot, name: string): Edit[] => {
  if (cabinet === undefined) return [];
  const plan = writtenPlan(text);
  const names = namesInRows(plan);
  const gone = (at: readonly (string | number)[]): boolean =>
    names.every(
      (each) => nameKey(each.name) === nameKey(name) || !at.every((step, i) => each.at[i] === step),
    );
  // The outermost that names no other: a place, a row, or rows inside a place.
  const out = names.flatMap(({ at }) => {
    if (!gone(at)) return [];
    const least = at.findIndex((_, i) => gone(at.slice(0, i + 1)));
    return [at.slice(0, least + 1)];
  });
  if (gone(['cabinet'])) return [{ at: ['cabinet'], value: undefined }];
  const places = [...new Map(out.map((at) => [at.join('.'), at])).values()];
  const rows = places.flatMap((at) => (at.length === 3 ? [Number(at[2])] : []));
  const heights = rowHeights(cabinet);
  const lower = rows.reduce((sum, i) => sum + (heights[i] ?? 0) + cabinet.rail, 0);
  const isListed = Array.isArray(valueAt(plan, ['cabinet', 'heights']));
  return [
    ...places.map((at) => ({ at, value: undefined })),
    ...(isListed ? rows.map((i) => ({ at: ['cabinet', 'heights', i], value: undefined })) : []),
    ...(lower > 0
      ? [{ at: ['cabinet', 'height'], value: planNumber(cabinet.height - lower, unitOf(units)) }]
      : []),
  ];
};
