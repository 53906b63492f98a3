import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { type JsonSchema, planJsonSchema } from '../../src/plan/planJsonSchema.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';

const schema = planJsonSchema();

const keysOf = (each: JsonSchema, place = ''): [place: string, key: JsonSchema][] => [
  ...Object.entries(each.properties ?? {}).flatMap(([key, inner]): [string, JsonSchema][] => [
    [`${place}.${key}`, inner],
    ...keysOf(inner, `${place}.${key}`),
  ]),
  ...(each.items === undefined ? [] : keysOf(each.items, `${place}[]`)),
  ...(typeof each.additionalProperties === 'object' ? keysOf(each.additionalProperties, `${place}.*`) : []),
  ...(each.anyOf ?? []).flatMap((way) => keysOf(way, place)),
];

describe('the JSON Schema of a plan', () => {
  it('says which draft it is written in', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it('describes every key', () => {
    const keys = keysOf(schema);
    expect(keys.length).toBeGreaterThan(100);
    expect(keys.filter(([, { description }]) => description === undefined).map(([place]) => place)).toEqual(
      [],
    );
  });

  it('knows what must be given, and nothing beyond the keys there are', () => {
    expect(schema).toMatchObject({ type: 'object', additionalProperties: false });
    expect(schema.required).toBeUndefined();
    expect(schema.properties?.drawers?.items).toMatchObject({
      required: ['name'],
      additionalProperties: false,
    });
    expect(schema.properties?.joints?.items?.required).toEqual([
      'name',
      'kind',
      'width',
      'tailBoard',
      'pinBoard',
    ]);
  });

  it('distinguishes numbers, lengths, lists and words', () => {
    const drawer = schema.properties?.drawers?.items?.properties;
    expect(drawer?.count).toMatchObject({ type: 'integer', minimum: 1, maximum: 1000 });
    expect(drawer?.joint?.properties?.pin).toMatchObject({ type: ['number', 'string'] });
    expect(drawer?.joint?.properties?.kind).toMatchObject({
      enum: ['through', 'lapped', 'double-lapped', 'secret-mitred'],
    });
    expect(drawer?.joint?.properties?.tails).toMatchObject({
      anyOf: [{ type: 'integer' }, { type: 'array', minItems: 1 }],
    });
    expect(drawer?.joint?.properties?.graded?.properties?.ratio).toMatchObject({ minimum: 0.5, maximum: 2 });
    expect(drawer?.name).toMatchObject({ type: 'string', minLength: 1, maxLength: 80 });
  });

  // Read back as a schema of its own, which knows nothing of the one that it was made from.
  const reread = z.fromJSONSchema(schema as Parameters<typeof z.fromJSONSchema>[0]);

  it.each([
    ['the chest', readFileSync('examples/haberdashery-chest.yaml', 'utf8')],
    ['the chest through the seasons', readFileSync('examples/haberdashery-chest-seasons.yaml', 'utf8')],
    ['the chest from its cabinet', readFileSync('examples/haberdashery-chest-cabinet.yaml', 'utf8')],
    ['the graduated chest', readFileSync('examples/graduated-chest.yaml', 'utf8')],
    ['the opening out of square', readFileSync('examples/out-of-square.yaml', 'utf8')],
    ['the chest for a router', readFileSync('examples/haberdashery-chest-guided.yaml', 'utf8')],
    ['the box', readFileSync('examples/trinket-box.yaml', 'utf8')],
    ['the starter plan in mm', starterPlan('mm')],
    ['the starter plan in inches', starterPlan('in')],
  ])('holds for %s', (_, text) => expect(reread.safeParse(parse(text)).error).toBeUndefined());

  it.each([
    'grove: {width: 5}',
    'units: cm',
    'climate: {making: 21C/45%}',
    'woods: {Plum: {shrinkage: {radial: 3.7}}}',
    'drawers: [{opening: {width: 280, height: 76, depth: 420}}]',
    'drawers: [{name: A, count: 0}]',
    'joints: [{name: A, kind: through, width: [90], tailBoard: 12, pinBoard: 12}]',
  ])('does not hold for %j', (text) => expect(reread.safeParse(parse(text)).success).toBe(false));
});
