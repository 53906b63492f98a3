import { parseDocument } from 'yaml';
import type { Place, Result } from '../complaint.ts';
import { readPlan } from '../plan/readPlan.ts';
import type { Corner } from './corner.ts';
import { editPlan, type PlanValue } from './editPlan.ts';
import { type Moved, walk } from './edits.ts';
import { planNumber, stepOf } from './planNumber.ts';
import type { Quantity } from './quantities.ts';
import { refitEdits } from './refit.ts';
import { type Snapshot, snapshot, type Work } from './snapshot.ts';

/** For whom a shared measure is changed: all drawers that have none of their own, or this one only. */
export type Scope = 'set' | 'drawer';

/** Where a change of a measure is to be written: where it is written now, else where the scope says. */
const placeOf = (text: string, { ref }: Corner, { at, shared }: Quantity, scope: Scope): Place => {
  if (ref.of === 'joint') return ['joints', ref.index, ...at];
  const document = parseDocument(text);
  const own: Place = ['drawers', ref.index, ...at];
  const backs: Place[] =
    ref.end === 'back' && at[0] === 'joint'
      ? [
          ['drawers', ref.index, 'back', ...at],
          ['back', ...at],
        ]
      : [];
  const found = [...backs, own].find((place) => document.hasIn(place));
  return found ?? (shared && scope === 'set' ? at : own);
};

const written = ({ kind }: Quantity, value: number, now: Snapshot): PlanValue =>
  kind === 'slope' ? `1:${Number(value.toFixed(3))}` : planNumber(value, now.project.units);

/** Gives a measure a value in mm (of a slope, its run); tails that are listed fill their boards again. */
export const adjust = (
  now: Snapshot,
  corner: Corner,
  quantity: Quantity,
  value: number,
  scope: Scope,
): Result<Snapshot> => {
  const at = placeOf(now.work.text, corner, quantity, scope);
  return adjustAt(now.work, [{ at, value: written(quantity, value, now) }]);
};

const adjustAt = (work: Work, edits: Parameters<typeof editPlan>[1]): Result<Snapshot> => {
  const changed = { ...work, text: editPlan(work.text, edits) };
  const made = snapshot(changed);
  if (made.ok) return made;
  const reading = readPlan(changed.text);
  const refit = reading.ok ? refitEdits(reading.plan, changed) : [];
  return refit.length === 0 ? made : snapshot({ ...changed, text: editPlan(changed.text, refit) });
};

/** Moves a measure as far towards a value as can be made. */
export const dragQuantity = (
  now: Snapshot,
  corner: Corner,
  quantity: Quantity,
  to: number,
  scope: Scope,
): Moved => {
  const from = quantity.get(corner) ?? to;
  const reach = walk(to - from, stepOf(now.project.units), (part) =>
    adjust(now, corner, quantity, from + part, scope),
  );
  return { snapshot: reach.value ?? now, stop: reach.stop };
};
