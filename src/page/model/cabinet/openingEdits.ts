import type { PlannedCabinet } from '../../../cabinet/frameSpec.ts';
import type { CabinetOpening } from '../../../cabinet/openings.ts';
import { unitOf } from '../../../units/notation.ts';
import { parseLength } from '../../../units/parseLength.ts';
import type { Edit, PlanValue } from '../../text/edit.ts';
import { planNumber } from '../planNumber.ts';
import type { Snapshot } from '../snapshot.ts';
import { valueAt, writtenPlan } from '../writtenPlan.ts';

/**
 * The changes of its cabinet that give the openings of a drawer another width, height or depth; undefined where it stands
 * among rows inside a place. All openings are as deep as each other. Other rows stay as high as they are, and the cabinet
 * grows by the difference, unless some share what is left; so it does in width where a drawer has its row for itself, while
 * others beside it share what is left.
 */
export const openingEdits = (
  { text, project: { cabinet, units } }: Snapshot,
  places: readonly CabinetOpening[],
  side: 'width' | 'height' | 'depth',
  value: PlanValue,
): Edit[] | undefined => {
  const unit = unitOf(units);
  const size = parseLength(typeof value === 'number' ? value : String(value), unit);
  if (cabinet === undefined || !size.ok || places.some(({ inner }) => inner)) return undefined;
  const at = ['cabinet', side];
  if (side === 'depth') return [{ at, value }];
  const plan = writtenPlan(text);
  const rows = [...new Set(places.map(({ row }) => row - 1))];
  const grown = (by: number): Edit[] => [{ at, value: planNumber(cabinet[side] + by, unit) }];
  const by = size.value - (places[0]?.[side] ?? 0);
  if (side === 'height') {
    const list = ['cabinet', 'heights'];
    const listed = valueAt(plan, list);
    const heights = Array.isArray(listed)
      ? listed
      : rowHeights(cabinet).map((height) => planNumber(height, unit));
    const made = heights.map((height, i) => (rows.includes(i) ? value : height));
    return [{ at: list, value: made }, ...(made.includes('auto') ? [] : grown(rows.length * by))];
  }
  return rows.flatMap((i) => {
    const row = valueAt(plan, ['cabinet', 'rows', i]);
    const own = places.filter(({ row: each }) => each - 1 === i);
    if (!Array.isArray(row) || row.length === own.length) return grown(own.length * by);
    return own.flatMap(({ name, column }) =>
      Object.entries({ name, width: value }).map(([key, each]) => ({
        at: ['cabinet', 'rows', i, column - 1, key],
        value: each,
      })),
    );
  });
};

/** How high each row of a cabinet is, from the top. */
export const rowHeights = ({ rows, openings }: PlannedCabinet): number[] => {
  const ends = rows.map((): [low: number, high: number] => [Number.POSITIVE_INFINITY, 0]);
  for (const { row, y, height } of openings) {
    const [low, high] = ends[row - 1] ?? [0, 0];
    ends[row - 1] = [Math.min(low, y), Math.max(high, y + height)];
  }
  return ends.map(([low, high]) => high - low);
};
