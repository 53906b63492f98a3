import { USUAL_SAWING } from '../stock/usualSawing.ts';
import type { Complaint } from '../units/complaint.ts';
import type { Unit } from '../units/unit.ts';
import { checkWhole, isGroup, tooManyEntries } from './check/checkWhole.ts';
import { explainIssues } from './check/explainIssues.ts';
import { inOtherUnit } from './check/otherUnit.ts';
import { unusedKeys } from './check/unusedKeys.ts';
import { fillPlan } from './fill/fillPlan.ts';
import type { Plan } from './plan.ts';
import { decode } from './read/decode.ts';
import { locate, nearest } from './read/locate.ts';
import { type Parsed, parse } from './read/parse.ts';
import { fromTheTop, type PlanComplaint } from './read/planComplaint.ts';
import { positionsIn } from './read/position.ts';
import { validEntries } from './read/validEntries.ts';
import { planSchema } from './schema/planSchema.ts';

/** A plan, or every complaint about it; and how to locate a later complaint in the plan's text. */
export type PlanReading =
  | {
      readonly ok: true;
      readonly plan: Plan;
      /** On keys that have no effect. */
      readonly advice: readonly Complaint[];
      readonly locate: Locate;
    }
  | {
      readonly ok: false;
      /** All complaints, from the top of the text down. */
      readonly complaints: readonly PlanComplaint[];
      /** The entries that none of them concerns, so that later steps can check those too. */
      readonly valid: Plan;
      readonly locate: Locate;
    };

/**
 * Locates a later step's complaint in the plan's text. Its place is given by the valid entries
 * (`['drawers', 1, 'slope']`) and is converted to the entries as they are written.
 */
export type Locate = (complaint: Complaint) => PlanComplaint;

/** Reads and checks a whole plan, YAML or JSON. */
export const readPlan = (given: Uint8Array | string): PlanReading => {
  const decoded = decode(given);
  if (!decoded.ok) {
    const { text, offset, ok: _, ...complaint } = decoded;
    return unreadable({ ...positionsIn(text)(offset), complaint: { at: [], ...complaint } });
  }
  return checkPlan(parse(decoded.text));
};

/** Checks the values of a plan, and fills in every default. */
export const checkPlan = ({ value, find, complaints: slips }: Parsed): PlanReading => {
  if (value === undefined) return unreadable(...slips);
  const tooMany = tooManyEntries(value);
  if (tooMany !== undefined) return unreadable({ ...nearest(find, tooMany.at), complaint: tooMany });

  const unit = unitOf(value);
  const schema = schemaIn(unit);
  const whole = schema.safeParse(value, { reportInput: true });
  const inside = whole.success ? [] : explainIssues(whole.error.issues, value);
  const wrong = [...(wrongUnit(value, unit, inside) ?? inside), ...checkWhole(value, unit)];
  const places = [...slips.map(({ complaint }) => complaint.at), ...wrong.map(({ at }) => at)];
  const { value: left, indices } = validEntries(value, places);
  const written = whole.success && places.length === 0 ? whole.data : (schema.safeParse(left).data ?? {});
  const filled = fillPlan(written, indices);
  const found = (complaint: Complaint): PlanComplaint => ({
    ...nearest(find, complaint.at),
    complaint,
  });
  const complaints = [...slips, ...wrong.map(found), ...filled.complaints.map(found)];
  const later: Locate = (complaint) => locate(find, filled.indices, complaint);
  return complaints.length === 0
    ? {
        ok: true,
        plan: filled.plan,
        get advice() {
          return unusedKeys(written);
        },
        locate: later,
      }
    : { ok: false, valid: filled.plan, complaints: fromTheTop(complaints), locate: later };
};

const schemas = new Map<Unit, ReturnType<typeof planSchema>>();

/** Each unit's schema is made once: that takes longer than reading a small plan. */
const schemaIn = (unit: Unit): ReturnType<typeof planSchema> => {
  const schema = schemas.get(unit) ?? planSchema(unit);
  schemas.set(unit, schema);
  return schema;
};

const TOP = { line: 1, column: 1 };

const unreadable = (...complaints: readonly PlanComplaint[]): PlanReading => ({
  ok: false,
  complaints,
  valid: { name: '', units: 'mm', drawers: [], boxes: [], joints: [], sawing: USUAL_SAWING.mm },
  locate: (complaint) => ({ ...TOP, complaint }),
});

/** The unit of bare numbers; inches also where it is misspelt (inch, IN), so that the ranges fit. */
const unitOf = (value: unknown): Unit =>
  isGroup(value) && typeof value.units === 'string' && /^\s*in/iu.test(value.units) ? 'in' : 'mm';

/** Where the plan's numbers seem to be in the other unit: one complaint of that, and those that would remain. */
const wrongUnit = (value: unknown, unit: Unit, wrong: readonly Complaint[]): Complaint[] | undefined => {
  if (wrong.length === 0 || !isGroup(value)) return undefined;
  const other = unit === 'mm' ? 'in' : 'mm';
  const read = schemaIn(other).safeParse({ ...value, units: other }, { reportInput: true });
  return inOtherUnit(unit, wrong, read.success ? [] : explainIssues(read.error.issues, value));
};
