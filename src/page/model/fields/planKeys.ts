import { type JsonSchema, planJsonSchema } from '../../../plan/planJsonSchema.ts';
import type { Place } from '../../../units/complaint.ts';

/** What a value may be. */
export interface ValueForm {
  /** Words that it may be: all that it may be where it is neither a number, nor text, nor a list. */
  readonly words: readonly (string | number)[];
  readonly isNumber: boolean;
  readonly isText: boolean;
  readonly isList: boolean;
  /** Of a list: whether its items may be lists or groups of keys themselves. */
  readonly isNested: boolean;
  /** Of such a list: whether each of its lines is a group of keys. */
  readonly isGroups: boolean;
}

/** A key of a plan: a value, a group of keys, or either. */
export interface PlanKey {
  readonly at: Place;
  /** What it is, in the words of the schema. */
  readonly about: string;
  readonly value?: ValueForm;
  readonly keys: readonly PlanKey[];
  /** The keys without which there is no such group. */
  readonly required: readonly string[];
  /** What is under each name of the user's own. */
  readonly named?: PlanKey;
  /** What each entry of a list is, where that is a group of keys. */
  readonly entry?: PlanKey;
}

/** Stands in a place for a name of the user's own, and for an entry of a list. */
export const ANY = '*';

/** Lists of groups of which a field holds a line for each; those of others are edited one by one. */
const IN_LINES = 'drawers.*.asBuilt';

let root: PlanKey | undefined;

/** Every key of a plan, as the schema has them; made when it is asked for first, as that takes a while. */
export const planKeys = (): PlanKey => {
  root ??= keyOf(planJsonSchema(), []);
  return root;
};

/** The key at a place. */
export const keyAt = (at: Place, from = planKeys()): PlanKey | undefined =>
  at.reduce<PlanKey | undefined>(
    (key, step) =>
      key?.keys.find((inner) => inner.at.at(-1) === step) ??
      key?.named ??
      (typeof step === 'number' || step === ANY ? key?.entry : undefined),
    from,
  );

/** A key and all that are inside it which hold a value. */
export const valuesIn = (key: PlanKey): PlanKey[] => [
  ...(key.value === undefined ? [] : [key]),
  ...[...key.keys, ...(key.named ? [key.named] : []), ...(key.entry ? [key.entry] : [])].flatMap(valuesIn),
];

const keyOf = (schema: JsonSchema, at: Place): PlanKey => {
  const all = ways(schema);
  const groups = all.filter(isGroup);
  const lists = all.filter(({ type }) => type === 'array');
  const entries = lists.flatMap(itemsOf).filter(isGroup);
  const isLines = at.join('.') === IN_LINES;
  const isEntries =
    !isLines && groups.length === 0 && entries.length > 0 && lists.flatMap(itemsOf).every(isGroup);
  const single = isEntries ? [] : all.filter((way) => !isGroup(way));
  const named = groups.map(({ additionalProperties }) => additionalProperties).find(isSchema);
  const order = [...new Set(groups.flatMap(({ properties }) => Object.keys(properties ?? {})))];
  return {
    at,
    about: schema.description ?? '',
    ...(single.length > 0 && { value: { ...formOf(single), isGroups: isLines } }),
    keys: order.map((key) =>
      keyOf(either(groups.map(({ properties }) => properties?.[key]).filter(isSchema)), [...at, key]),
    ),
    required: order.filter((key) =>
      groups.every(({ required }) => isNames(required) && required.includes(key)),
    ),
    ...(named && { named: keyOf(named, [...at, ANY]) }),
    ...(isEntries && { entry: keyOf({ anyOf: entries }, [...at, ANY]) }),
  };
};

/** A key that several groups have: what any of them says. */
const either = (schemas: readonly JsonSchema[]): JsonSchema => {
  const [first = {}] = schemas;
  const words = [...new Set(schemas.map(({ description = '' }) => description))];
  return schemas.length === 1 ? first : { anyOf: schemas, description: words.join(' ') };
};

const formOf = (single: readonly JsonSchema[]): Omit<ValueForm, 'isGroups'> => {
  const lists = single.filter(({ type }) => type === 'array');
  const words = single.flatMap((way) => wordsOf(way));
  const open = single.filter((way) => wordsOf(way).length === 0);
  const has = (type: string): boolean => open.some((way) => [way.type].flat().includes(type));
  return {
    words,
    isNumber: has('number') || has('integer'),
    isText: has('string'),
    isList: lists.length > 0,
    isNested: lists.flatMap(itemsOf).some((item) => item.type === 'array' || isGroup(item)),
  };
};

const wordsOf = ({ enum: words, const: word }: JsonSchema): (string | number)[] =>
  [...(Array.isArray(words) ? words : []), word].filter(
    (each) => typeof each === 'string' || typeof each === 'number',
  );

const isGroup = ({ type }: JsonSchema): boolean => type === 'object';
const isSchema = (schema: JsonSchema | boolean | undefined): schema is JsonSchema =>
  typeof schema === 'object';
const isNames = (names: unknown): names is readonly string[] => Array.isArray(names);
const itemsOf = ({ items, prefixItems }: JsonSchema): JsonSchema[] => [
  ...(isSchema(items) ? ways(items) : []),
  ...(prefixItems?.flatMap(ways) ?? []),
];

const ways = (schema: JsonSchema): readonly JsonSchema[] =>
  (schema.anyOf ?? schema.oneOf)?.flatMap(ways) ?? [schema];
