import type { Place } from '../../units/complaint.ts';
import type { JsonSchema } from '../planJsonSchema.ts';

/** The schemas that may stand at a place: more than one where a value may be written in more ways than one. */
export const schemasAt = (schema: JsonSchema, place: Place): readonly JsonSchema[] => {
  let found = ways(schema);
  for (const key of place)
    found = found.flatMap((each) => {
      const next =
        typeof key === 'number' ? each.items : (each.properties?.[key] ?? groupOf(each.additionalProperties));
      return next === undefined ? [] : ways(next);
    });
  return found;
};

/** What stands under every name of a map; `false` where a group has no keys but its own. */
const groupOf = (schema: JsonSchema | boolean | undefined): JsonSchema | undefined =>
  typeof schema === 'object' ? schema : undefined;

const ways = (schema: JsonSchema): readonly JsonSchema[] => schema.anyOf ?? [schema];

export const keysOf = (schemas: readonly JsonSchema[]): string[] =>
  schemas.flatMap((schema) => Object.keys(schema.properties ?? {}));

/** The keys that lead down to one of the given name, by the shortest way; undefined where there is none. */
export const shortestPathTo = (name: string, schemas: readonly JsonSchema[]): string[] | undefined => {
  let level = schemas.map((schema): { schema: JsonSchema; way: string[] } => ({ schema, way: [] }));
  while (level.length > 0) {
    const next = level.flatMap(({ schema, way }) =>
      Object.entries(schema.properties ?? {}).flatMap(([key, inner]) =>
        ways(inner).map((each) => ({ schema: each, way: [...way, key] })),
      ),
    );
    const found = next.find(({ way }) => way.at(-1) === name);
    if (found !== undefined) return found.way;
    level = next;
  }
  return undefined;
};
