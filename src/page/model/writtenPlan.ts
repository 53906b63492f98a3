import type { Place } from '../../units/complaint.ts';
import { parsePlan } from '../text/parsePlan.ts';

/** A plan's keys and values as they are written, aliases in full. */
export type WrittenPlan = unknown;

/** The plan that a text holds. */
export const writtenPlan = (text: string): WrittenPlan => parsePlan(text).toJS();

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
