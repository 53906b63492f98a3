import { decode } from '../../plan/read/decode.ts';
import { type Parsed, parse } from '../../plan/read/parse.ts';
import type { Place } from '../../units/complaint.ts';
import type { Edit } from '../text/edit.ts';
import { editValues } from '../text/editValues.ts';

/** A plan's keys and values as they are written, aliases in full. */
export type WrittenPlan = unknown;

let last: { readonly text: string; readonly parsed: Parsed } | undefined;

/** The last are remembered, as every move of a drag changes the same ones. */
const valuesIn = (text: string): Parsed => {
  if (last?.text !== text) {
    const decoded = decode(text);
    last = { text, parsed: parse(decoded.text) };
  }
  return last.parsed;
};

/** The plan that a text holds. */
export const writtenPlan = (text: string): WrittenPlan => valuesIn(text).value;

/** The values that a plan's text would hold after some changes; their places are those in the text before. */
export const editedValues = (text: string, edits: readonly Edit[]): Parsed => {
  const parsed = valuesIn(text);
  return { ...parsed, value: editValues(parsed.value, edits) };
};

/** The value at a place; undefined where there is none. */
export const valueAt = (plan: WrittenPlan, at: Place): unknown =>
  at.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string | number, unknown>)[key]
        : undefined,
    plan,
  );

export const isWritten = (plan: WrittenPlan, at: Place): boolean => valueAt(plan, at) !== undefined;
