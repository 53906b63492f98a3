import { parseDocument } from 'yaml';
import type { Place } from '../../units/complaint.ts';

/** A plan's keys and values as they are written, aliases in full. */
export type WrittenPlan = unknown;

let last: { readonly text: string; readonly plan: WrittenPlan } | undefined;

/** The plan that a text holds. The last one is remembered, as every move of a drag asks for the same. */
export const writtenPlan = (text: string): WrittenPlan => {
  if (last?.text !== text) last = { text, plan: parseDocument(text).toJS() as unknown };
  return last.plan;
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
