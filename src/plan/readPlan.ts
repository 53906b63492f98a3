import type { Complaint, Place } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import type { Unit } from '../units/unit.ts';
import { checkWhole, isGroup } from './check/checkWhole.ts';
import { explain } from './check/explain.ts';
import { inOtherUnit } from './check/otherUnit.ts';
import { fillPlan } from './fill/fillPlan.ts';
import type { Plan } from './plan.ts';
import { decode } from './read/decode.ts';
import { parse } from './read/parse.ts';
import type { PlanComplaint } from './read/planComplaint.ts';
import { positionsIn } from './read/position.ts';
import { nearest, trace } from './read/trace.ts';
import { type Kept, soundPart } from './read/validEntries.ts';
import { planSchema } from './schema/planSchema.ts';

/** A plan, or every complaint about it; and the way back from a plan to its text. */
export type PlanReading =
  | { readonly ok: true; readonly plan: Plan; readonly locate: Locate }
  | {
      readonly ok: false;
      /** All complaints, from the top of the text down. */
      readonly complaints: readonly PlanComplaint[];
      /** The entries that none of them touches, for the steps that follow to judge too. */
      readonly sound: Plan;
      readonly locate: Locate;
    };

/**
 * Says where in the plan's text a later step's complaint can be put right. Its place is that of an entry of the plan
 * that was read (`['drawers', 1, 'slope']`); entries that were left out as unsound are counted in again.
 */
export type Locate = (complaint: Complaint) => PlanComplaint;

/** Reads and checks a whole plan, YAML or JSON. */
export const readPlan = (given: Uint8Array | string): PlanReading => {
  const decoded = decode(given);
  if (!decoded.ok) {
    const { text, offset, ok: _, ...complaint } = decoded;
    return unreadable({ ...positionsIn(text)(offset), complaint: { at: [], ...complaint } });
  }
  const { value, find, complaints: slips } = parse(decoded.text);
  if (value === undefined) return unreadable(...slips);

  const unit = unitOf(value);
  const schema = schemaIn(unit);
  const whole = schema.safeParse(value, { reportInput: true });
  const inside = whole.success ? [] : explain(whole.error.issues);
  const wrong = [...(wrongUnit(value, unit, inside) ?? inside), ...checkWhole(value, unit)];
  const places = [...slips.map(({ complaint }) => complaint.at), ...wrong.map(({ at }) => at)];
  const { value: left, kept } = soundPart(value, places);
  const written = whole.success && places.length === 0 ? whole.data : (schema.safeParse(left).data ?? {});
  const filled = fillPlan(written, kept);
  const found = (complaint: Complaint): PlanComplaint => ({
    ...nearest(find, complaint.at),
    complaint,
  });
  const complaints = [...slips, ...wrong.map(found), ...filled.complaints.map(found)];
  const locate: Locate = (complaint) => {
    const at = givenPlace(complaint.at, filled.kept);
    return { ...trace(find, at), complaint: { ...complaint, at } };
  };
  return complaints.length === 0
    ? { ok: true, plan: filled.plan, locate }
    : { ok: false, sound: filled.plan, complaints: told(complaints), locate };
};

/** How many complaints are told one by one: what has more is no plan. */
const MOST_TOLD = 1000;

const told = (complaints: readonly PlanComplaint[]): readonly PlanComplaint[] => {
  const sorted = [...complaints].sort((a, b) => a.line - b.line || a.column - b.column);
  const next = sorted[MOST_TOLD];
  if (next === undefined) return sorted;
  const says = say`from here on there are ${sorted.length - MOST_TOLD} more complaints`;
  return [...sorted.slice(0, MOST_TOLD), { ...next, complaint: { at: [], says } }];
};

const schemas = new Map<Unit, ReturnType<typeof planSchema>>();

/** Making a schema takes longer than reading a small plan, so each unit's is made once. */
const schemaIn = (unit: Unit): ReturnType<typeof planSchema> => {
  const schema = schemas.get(unit) ?? planSchema(unit);
  schemas.set(unit, schema);
  return schema;
};

const TOP = { line: 1, column: 1 };

const unreadable = (...complaints: readonly PlanComplaint[]): PlanReading => ({
  ok: false,
  complaints,
  sound: { name: '', units: 'mm', drawers: [], joints: [] },
  locate: (complaint) => ({ ...TOP, complaint }),
});

/** What bare numbers mean; inches too where the unit is misspelt (inch, IN), so that their ranges fit. */
const unitOf = (value: unknown): Unit =>
  isGroup(value) && typeof value.units === 'string' && /^\s*in/iu.test(value.units) ? 'in' : 'mm';

/** Where the plan's numbers are in the other unit, that alone and what would still be wrong in it. */
const wrongUnit = (value: unknown, unit: Unit, wrong: readonly Complaint[]): Complaint[] | undefined => {
  if (wrong.length === 0 || !isGroup(value)) return undefined;
  const other = unit === 'mm' ? 'in' : 'mm';
  const read = schemaIn(other).safeParse({ ...value, units: other }, { reportInput: true });
  return inOtherUnit(unit, wrong, read.success ? [] : explain(read.error.issues));
};

/** A place in the plan that was read, as one in its text: entries that were left out are counted in again. */
const givenPlace = (place: Place, kept: Kept): Place => {
  const [list, index, ...rest] = place;
  if ((list !== 'drawers' && list !== 'joints') || typeof index !== 'number') return place;
  return [list, kept[list][index] ?? index, ...rest];
};
