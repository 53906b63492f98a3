import type { Place } from '../../units/complaint.ts';
import { isGroup, type List } from '../check/checkWhole.ts';

/** Which entries are left, by their places in the plan as it was given. */
export type Kept = Readonly<Record<List, readonly number[]>>;

/** What is left of a plan when everything is taken out that a complaint may touch. */
export interface ValidEntries {
  readonly value: unknown;
  readonly kept: Kept;
}

/** @param wrong the places that are complained of */
export const validEntries = (value: unknown, wrong: readonly Place[]): ValidEntries => {
  const given = isGroup(value) ? value : {};
  const indices = (list: List): number[] => {
    const entries = given[list];
    const spoiled = new Set(wrong.filter(([key]) => key === list).map(([, index]) => index));
    if (!Array.isArray(entries) || spoiled.has(undefined)) return [];
    return entries.flatMap((_, i) => (spoiled.has(i) ? [] : [i]));
  };
  // A slip in the plan's own keys may touch every drawer, but a corner of its own only where it is about the unit.
  const general = wrong.map(([key]) => key).filter((key) => key !== 'drawers' && key !== 'joints');
  const unitless = general.includes(undefined) || general.includes('units');
  const kept = {
    drawers: general.length > 0 ? [] : indices('drawers'),
    joints: unitless ? [] : indices('joints'),
  };
  const pick = (list: List): unknown[] => {
    const entries = given[list];
    return Array.isArray(entries) ? kept[list].map((i): unknown => entries[i]) : [];
  };
  const { units, ...rest } = given;
  return {
    value: {
      ...(units === undefined || unitless ? {} : { units }),
      ...(general.length > 0 ? {} : rest),
      drawers: pick('drawers'),
      joints: pick('joints'),
    },
    kept,
  };
};
