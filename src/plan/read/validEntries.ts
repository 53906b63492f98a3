import type { Place } from '../../units/complaint.ts';
import { isGroup, type List, LISTS as MADE } from '../check/checkWhole.ts';

/** Of each list's valid entries, their indices in the plan as it was given. */
export type EntryIndices = Readonly<Record<List | 'boards', readonly number[]>>;

/** The part of a plan that no complaint can concern. */
export interface ValidEntries {
  readonly value: unknown;
  readonly indices: EntryIndices;
}

const LISTS = [...MADE, 'boards'] as const;

/** Keys on which no drawer, no corner and no board depends. */
const SAWING_KEYS = ['saw', 'breakout'] as const;

/** @param wrong the places that are complained of */
export const validEntries = (value: unknown, wrong: readonly Place[]): ValidEntries => {
  const given = isGroup(value) ? value : {};
  const validIn = (list: keyof EntryIndices): number[] => {
    const entries = given[list];
    const invalid = new Set(wrong.filter(([key]) => key === list).map(([, index]) => index));
    if (!Array.isArray(entries) || invalid.has(undefined)) return [];
    return entries.flatMap((_, i) => (invalid.has(i) ? [] : [i]));
  };
  // A fault in the plan's own keys may concern every drawer and box, but a single corner only where the unit or the joint is at fault.
  const ofSawing = SAWING_KEYS.filter((key) => wrong.some(([first]) => first === key));
  const general = wrong
    .map(([key]) => key)
    .filter((key) => !LISTS.some((list) => list === key) && !ofSawing.some((each) => each === key));
  const unitless = general.includes(undefined) || general.includes('units');
  const indices = {
    drawers: general.length > 0 ? [] : validIn('drawers'),
    boxes: general.length > 0 ? [] : validIn('boxes'),
    joints: unitless || general.includes('joint') ? [] : validIn('joints'),
    boards: unitless ? [] : validIn('boards'),
  };
  const pick = (list: keyof EntryIndices): unknown[] => {
    const entries = given[list];
    return Array.isArray(entries) ? indices[list].map((i): unknown => entries[i]) : [];
  };
  const { units, boards: _, ...rest } = given;
  return {
    value: {
      ...(units === undefined || unitless ? {} : { units }),
      ...(general.length > 0
        ? {}
        : Object.fromEntries(Object.entries(rest).filter(([key]) => !ofSawing.some((each) => each === key)))),
      drawers: pick('drawers'),
      boxes: pick('boxes'),
      joints: pick('joints'),
      ...(indices.boards.length > 0 && { boards: pick('boards') }),
    },
    indices,
  };
};
