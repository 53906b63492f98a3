import type { Place } from '../../units/complaint.ts';
import { isGroup, type List } from '../check/checkWhole.ts';

/** Of each list's valid entries, their indices in the plan as it was given. */
export type EntryIndices = Readonly<Record<List, readonly number[]>>;

/** The part of a plan that no complaint can concern. */
export interface ValidEntries {
  readonly value: unknown;
  readonly indices: EntryIndices;
}

/** Keys on which no drawer and no corner depends. */
const BOARD_KEYS = ['saw', 'boards', 'breakout'] as const;

/** @param wrong the places that are complained of */
export const validEntries = (value: unknown, wrong: readonly Place[]): ValidEntries => {
  const given = isGroup(value) ? value : {};
  const validIn = (list: List): number[] => {
    const entries = given[list];
    const invalid = new Set(wrong.filter(([key]) => key === list).map(([, index]) => index));
    if (!Array.isArray(entries) || invalid.has(undefined)) return [];
    return entries.flatMap((_, i) => (invalid.has(i) ? [] : [i]));
  };
  // A fault in the plan's own keys may concern every drawer, but a single corner only where the unit or the joint is at fault.
  const ofBoards = BOARD_KEYS.filter((key) => wrong.some(([first]) => first === key));
  const general = wrong
    .map(([key]) => key)
    .filter((key) => key !== 'drawers' && key !== 'joints' && !ofBoards.some((each) => each === key));
  const unitless = general.includes(undefined) || general.includes('units');
  const indices = {
    drawers: general.length > 0 ? [] : validIn('drawers'),
    joints: unitless || general.includes('joint') ? [] : validIn('joints'),
  };
  const pick = (list: List): unknown[] => {
    const entries = given[list];
    return Array.isArray(entries) ? indices[list].map((i): unknown => entries[i]) : [];
  };
  const { units, ...rest } = given;
  return {
    value: {
      ...(units === undefined || unitless ? {} : { units }),
      ...(general.length > 0
        ? {}
        : Object.fromEntries(Object.entries(rest).filter(([key]) => !ofBoards.some((each) => each === key)))),
      drawers: pick('drawers'),
      joints: pick('joints'),
    },
    indices,
  };
};
