import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { type JsonSchema, planJsonSchema } from '../../src/plan/planJsonSchema.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';
import { layOutSingle } from '../../src/project/layOutSingle.ts';
import { complaintsOf } from './complaintsOf.ts';
import { SINGLE_CORNER, STARTER_NOTES, withNote } from './starterNotes.ts';

const keysIn = (schema: JsonSchema): string[] => [
  ...Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => [key, ...keysIn(inner)]),
  ...(schema.items === undefined ? [] : keysIn(schema.items)),
  ...(typeof schema.additionalProperties === 'object' ? keysIn(schema.additionalProperties) : []),
  ...[...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap(keysIn),
];

describe.each(['mm', 'in'] as const)('the starter plan in %s', (unit) => {
  const text = starterPlan(unit);

  it('is a plan of two kinds of drawer, which can be cut without a word of advice', () => {
    const reading = readPlan(text);
    if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
    const { units, drawers, joints } = reading.plan;
    expect(joints).toEqual([]);
    expect(units).toBe(unit);
    expect(drawers.map(({ name, count }) => [name, count])).toEqual([
      ['Pencils', 2],
      ['Letters', 1],
    ]);
    expect(layOutSet(drawers)).toMatchObject({ ok: true, value: { advice: [] } });
  });

  it('shows single corners in a note, which can be cut so too', () => {
    const reading = readPlan(withNote(text, SINGLE_CORNER));
    if (!reading.ok) throw new Error('no plan');
    const corners = reading.plan.joints.map((corner) => [corner.name, layOutSingle(corner, {})]);
    expect(corners).toMatchObject([
      ['Carcase', { ok: true, value: { advice: [] } }],
      ['Top rail', { ok: true, value: { advice: [] } }],
    ]);
  });

  it('has a word on every key that the schema knows', () => {
    const unnamed = [...new Set(keysIn(planJsonSchema()))].filter(
      (key) => !new RegExp(String.raw`(^|[\s{])${key}:`, 'mu').test(text),
    );
    expect(unnamed).toEqual([]);
  });

  it.each(STARTER_NOTES)('stays a plan where the # is taken away from %s', (note) => {
    expect(text).toMatch(note);
    expect(complaintsOf(withNote(text, note))).toEqual([]);
  });
});
