import * as z from 'zod';
import { planSchema } from './schema/planSchema.ts';

/** A JSON Schema, as far as plans need it. */
export interface JsonSchema {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly items?: JsonSchema;
  /** The items of a list that has a number of them. */
  readonly prefixItems?: readonly JsonSchema[];
  /** Under names that are not keys; `false` where there must be none. */
  readonly additionalProperties?: JsonSchema | boolean;
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly [keyword: string]: unknown;
}

/**
 * The JSON Schema (draft 2020-12) of a plan, for editors that complete and explain keys while one types.
 * @example
 * ```ts
 * writeFileSync('plan.schema.json', JSON.stringify(planJsonSchema()));
 * ```
 */
export const planJsonSchema = (): JsonSchema => ({
  title: 'A plan of dovetailed drawers and corners',
  ...(z.toJSONSchema(planSchema('mm'), { target: 'draft-2020-12', io: 'input' }) as JsonSchema),
});
