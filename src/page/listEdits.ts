import type { Place } from '../complaint.ts';
import type { Unit } from '../units/unit.ts';
import type { Edit } from './editPlan.ts';
import { listedValues, roundWidths } from './planNumber.ts';
import type { Widths } from './widths.ts';

/** Writes a corner's widths, one by one, where its tails are written. */
export const listEdits = (at: Place, widths: Widths, unit: Unit): Edit[] => {
  const { tails, pins, halfPin } = listedValues(roundWidths(widths, unit), unit);
  return [
    { at: [...at, 'tails'], value: tails },
    { at: [...at, 'pins'], value: pins.length > 0 ? pins : undefined },
    { at: [...at, 'halfPin'], value: halfPin },
    { at: [...at, 'graded'], value: undefined },
  ];
};
