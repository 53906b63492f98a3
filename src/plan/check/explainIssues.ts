import type * as z from 'zod';
import type { Complaint, Place } from '../../units/complaint.ts';
import { type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { type JsonSchema, planJsonSchema } from '../planJsonSchema.ts';
import { isGroup } from './checkWhole.ts';
import { closestWord } from './editDistance.ts';
import { firstPathTo, keysOf, schemasAt } from './schemaPaths.ts';

type Issue = z.core.$ZodIssue;

/** What is said of a value that is not there. */
const MISSING = 'this is missing';

/** The most unknown keys of one group that are listed: a group with more is no part of a plan. */
const MOST_LISTED = 20;

/** Zod's issues as complaints. Every schema's message is the end of the sentence "it must be …". */
export const explainIssues = (issues: readonly Issue[], plan?: unknown): Complaint[] =>
  issues.flatMap((issue) => explainOne(issue, [])).map((complaint) => named(complaint, plan));

/** What a drawer or a single corner lacks, said of it by its name. */
const named = (complaint: Complaint, plan: unknown): Complaint => {
  const [list, index, key, ...deeper] = complaint.at;
  const { says } = complaint;
  if (key === undefined || deeper.length > 0 || says[0] !== MISSING) return complaint;
  const entries = isGroup(plan) ? plan[String(list)] : undefined;
  const entry: unknown = Array.isArray(entries) ? entries[Number(index)] : undefined;
  const name = isGroup(entry) ? entry.name : undefined;
  return typeof name !== 'string' || name === ''
    ? complaint
    : { ...complaint, says: say`${quote(name)} has no ${String(key)}${says.slice(1)}` };
};

const explainOne = (issue: Issue, outer: Place): Complaint[] => {
  const at = [...outer, ...issue.path.map((key) => (typeof key === 'number' ? key : String(key)))];
  switch (issue.code) {
    case 'custom':
      return [{ at, ...(issue.params as Omit<Complaint, 'at'>) }];
    case 'unrecognized_keys': {
      const known = schemasAt(allKeys(), at);
      const told = issue.keys.slice(0, MOST_LISTED).map((key) => ({
        at: [...at, key],
        ...(cutByComma(key, issue.input) ?? unknownKey(key, known, issue.input)),
      }));
      const rest = issue.keys.length - told.length;
      return rest === 0
        ? told
        : [...told, { at, says: say`there are ${rest} more keys here that are not known` }];
    }
    case 'invalid_union': {
      // The alternative that was meant is the one that fails on something inside it.
      const meant = issue.errors.find((errors) => !errors.some(isAnotherType));
      if (meant === undefined) break;
      const told = meant.flatMap((inner) => explainOne(inner, at));
      // An alternative that is a word is unknown to the schema that failed.
      const word =
        typeof issue.input === 'string' ? closestWord(issue.input, wordsOf(issue.errors)) : undefined;
      return word === undefined ? told : told.map((complaint) => ({ ...complaint, hint: say`${word}` }));
    }
  }
  const given = givenIn(issue);
  return [
    {
      at,
      says:
        given === undefined
          ? [MISSING, `; it must be ${issue.message}`]
          : say`this is ${shown(given)}; it must be ${issue.message}`,
    },
  ];
};

/** What was given; where one key tells the alternatives apart, zod keeps the group that it is in. */
const givenIn = ({ input, ...issue }: Issue): unknown =>
  'discriminator' in issue && isGroup(input) ? input[String(issue.discriminator)] : input;

let schema: JsonSchema | undefined;

/** Made at the first unknown key: few plans have one, and it is slow. */
const allKeys = (): JsonSchema => {
  schema ??= planJsonSchema();
  return schema;
};

const isAnotherType = ({ code, path }: Issue): boolean =>
  path.length === 0 && (code === 'invalid_type' || code === 'invalid_union' || code === 'invalid_value');

const wordsOf = (errors: readonly (readonly Issue[])[]): string[] =>
  errors.flat().flatMap((issue) => (issue.code === 'invalid_value' ? issue.values.map(String) : []));

const shown = (value: unknown): string => {
  if (typeof value === 'string') return quote(value);
  if (value === null) return 'empty';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === 'object' ? 'a group of keys' : String(value);
};

/**
 * Inside braces a comma ends a value that is not in quotes: `{species: Cherry, black}` has a key `black` without a value.
 */
const cutByComma = (key: string, group: unknown): { says: Phrase; hint: Phrase } | undefined => {
  if (typeof group !== 'object' || group === null) return undefined;
  const entries = Object.entries(group);
  const index = entries.findIndex(([name]) => name === key);
  const [before, value] = entries[index - 1] ?? [];
  return entries[index]?.[1] === null && before !== undefined && typeof value === 'string'
    ? {
        says: say`a comma between braces ends a value that is not in quotes`,
        hint: say`${before}: ${quote(`${value}, ${key}`)}`,
      }
    : undefined;
};

const unknownKey = (key: string, known: readonly JsonSchema[], group: unknown): Omit<Complaint, 'at'> => {
  const says = say`there is no such key here`;
  const keys = keysOf(known);
  const [, glued, value] = /^(\w+):([\w.:/ -]+)$/u.exec(key) ?? [];
  if (glued !== undefined && closestWord(glued, keys) !== undefined)
    return { says, hint: say`${glued}: ${value ?? ''}` };
  if (/^\d+$/u.test(key))
    return { says, remedy: say`write a point in place of a decimal comma, or put the number in quotes` };
  const given = isGroup(group) ? Object.keys(group) : [];
  const meant = closestWord(
    key,
    keys.filter((each) => !given.includes(each)),
  );
  if (meant !== undefined) return { says, hint: say`${meant}` };
  const way = firstPathTo(key, known);
  // Such a key goes with another alternative than the one that is written here.
  if (way?.length === 1)
    return { says: say`this does not go with the other keys here`, remedy: say`remove it` };
  if (way !== undefined)
    return { says, remedy: say`write it as ${way.join(': {')}: …${'}'.repeat(way.length - 1)}` };
  return { says: say`there is no such key here; the keys are ${keys.join(', ')}` };
};
