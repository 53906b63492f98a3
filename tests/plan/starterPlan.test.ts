import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/joint/layOut.ts';
import { type JsonSchema, planJsonSchema } from '../../src/plan/planJsonSchema.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';

const keysIn = (schema: JsonSchema): string[] => [
  ...Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => [key, ...keysIn(inner)]),
  ...(schema.items === undefined ? [] : keysIn(schema.items)),
  ...(schema.anyOf ?? []).flatMap(keysIn),
];

describe.each(['mm', 'in'] as const)('the starter plan in %s', (unit) => {
  const text = starterPlan(unit);
  const reading = readPlan(text);

  it('is a plan with two kinds of drawer and a corner', () => {
    expect(reading.ok).toBe(true);
    if (!reading.ok) return;
    expect(reading.plan.units).toBe(unit);
    expect(reading.plan.drawers.map(({ name, count }) => [name, count])).toEqual([
      ['Pencils', 2],
      ['Letters', 1],
    ]);
    expect(reading.plan.joints.map(({ spec }) => layOut(spec).ok)).toEqual([true]);
  });

  it('has a word on every key that the schema knows', () => {
    const unnamed = [...new Set(keysIn(planJsonSchema()))].filter(
      (key) => !new RegExp(String.raw`(^|[\s{#])${key}:`, 'mu').test(text),
    );
    expect(unnamed).toEqual([]);
  });

  it('stays a plan when what the notes show is taken up', () => {
    for (const line of [
      ...text.matchAll(/^\s*# (?:- name|graded|slips|front|family|tails: \d|joint: |pins).*$/gmu),
    ].map(([found]) => found)) {
      if (line.includes('- name') || line.includes('pins:')) continue;
      const taken = text.replace(line, line.replace('# ', ''));
      expect(readPlan(taken)).toMatchObject({ ok: true });
    }
  });
});
