import type { Place } from '../../units/complaint.ts';
import type { JsonSchema } from '../planJsonSchema.ts';

/** The schemas of a place: several where a value has alternatives. */
export const schemasAt = (schema: JsonSchema, place: Place): readonly JsonSchema[] => {
  let found = ways(schema);
  for (const key of place)
    found = found.flatMap((each) => {
      const next =
        typeof key === 'number'
          ? (each.prefixItems?.[key] ?? each.items)
          : (each.properties?.[key] ?? groupOf(each.additionalProperties));
      return typeof next === 'object' ? ways(next) : [];
    });
  return found;
};

/** The schema of a map's values; undefined where a group has only keys of its own. */
const groupOf = (schema: JsonSchema | boolean | undefined): JsonSchema | undefined =>
  typeof schema === 'object' ? schema : undefined;

const ways = (schema: JsonSchema): readonly JsonSchema[] =>
  (schema.anyOf ?? schema.oneOf)?.flatMap(ways) ?? [schema];

export const keysOf = (schemas: readonly JsonSchema[]): string[] => [
  ...new Set(schemas.flatMap((schema) => Object.keys(schema.properties ?? {}))),
];

/** The keys that lead to the first of the given name, in the order in which a plan is written; undefined where there is none. */
export const firstPathTo = (name: string, schemas: readonly JsonSchema[]): string[] | undefined => {
  if (keysOf(schemas).includes(name)) return [name];
  for (const [key, inner] of schemas.flatMap(({ properties = {} }) => Object.entries(properties))) {
    const deeper = firstPathTo(name, ways(inner));
    if (deeper !== undefined) return [key, ...deeper];
  }
  return undefined;
};
