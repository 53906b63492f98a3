import type { CornerEnd } from '../../drawer/cornerLetters.ts';
import type { FingerPair } from '../../router/fingers/fingerSetting.ts';
import type { Notation } from '../../units/notation.ts';
import { groupNames, type ShortName } from '../../units/shortNames.ts';

/** How fingers are set for the tails of a corner, from the tail board's reference edge up. Lengths in mm. */
export interface RodSetting {
  readonly pairs: readonly FingerPair[];
  /** One fewer than the pairs. */
  readonly gaps: readonly number[];
  /** From the reference edge to where the joint starts, and to where it ends. */
  readonly from: number;
  readonly to: number;
  /** Width of a pair pushed together. */
  readonly together: number;
  readonly bush: number;
  readonly cutter: { readonly diameter: number; readonly depth: number };
  /** Whether a half space is cut, where the router has no finger beyond it. */
  readonly supports: boolean;
}

/** The setting of one corner, and its names. */
export interface CornerSetting {
  /** The drawer and its corner, or the single corner. */
  readonly item: string;
  /** Beginning of the rod's name, unique and safe as a file name. */
  readonly stem: string;
  /** The front or back corners of a drawer; a single corner has the letters of front corners. */
  readonly end: CornerEnd;
  /** The edge at the joint's other end. */
  readonly upper: string;
  readonly setting: RodSetting;
}

/** The text of a setting rod. */
export interface SettingTitles extends ShortName {
  readonly stem: string;
  readonly units: Notation;
  /** Ends of the drawer whose corners the setting serves. */
  readonly ends: readonly CornerEnd[];
  readonly upper: string;
}

/** A setting with its text. */
export interface NamedSetting {
  readonly setting: RodSetting;
  readonly titles: SettingTitles;
}

/** Every setting to make; equal ones of several corners are one, named for them all. */
export const settingsToMake = (corners: readonly CornerSetting[], units: Notation): NamedSetting[] => {
  const byShape = new Map<string, { first: CornerSetting; names: string[]; ends: Set<CornerEnd> }>();
  for (const corner of corners) {
    const key = JSON.stringify([corner.setting, corner.upper]);
    const equal = byShape.get(key) ?? { first: corner, names: [], ends: new Set() };
    equal.names.push(corner.item);
    equal.ends.add(corner.end);
    byShape.set(key, equal);
  }
  const made = [...byShape.values()];
  const nameOf = groupNames(
    corners.map(({ item }) => item),
    made.map(({ names }) => names),
    // Not the numbers of templates or guides.
    'setting',
  );
  return made.map(({ first: { setting, stem, upper }, names, ends }) => ({
    setting,
    titles: { ...nameOf(names), stem, units, ends: [...ends], upper },
  }));
};
