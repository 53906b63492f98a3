import type { Joint } from '../../joint/joint.ts';
import { draftDrawer } from '../draftDrawer.ts';
import type { DrawerSet } from '../drawer.ts';
import { familyFronts } from '../familyFronts.ts';
import { familyOf } from '../familyTarget.ts';
import { canSeek, type FewSpacers, fewSpacers, type SpacerCase } from './fewSpacers.ts';
import { spacerList } from './spacerList.ts';

/** What a set looks like with at most so many different spacers. */
export interface SpacerPrice {
  readonly spacers: number;
  /** Absent where the set cannot do with so few. */
  readonly look?: SetLook & {
    /** The family sum. */
    readonly sum: number;
  };
}

/** How alike the front corners of a set look. */
export interface SetLook {
  /** The widest tail width by the narrowest. */
  readonly spread: number;
  /** The narrowest and the widest half pin at the front corners, in mm. */
  readonly halfPins: readonly [least: number, most: number];
  /** The drawers whose front layout is another than without a limit. */
  readonly changed: readonly string[];
}

/** The prices are told for so many spacers, and for as many as are asked for. */
const TOLD = 3;

/** Widths that differ by less are one, in mm. */
const SAME = 1e-6;

/** The look of a set with 1, 2, 3, … different spacers; none without fingers, or where too many drawers would be sought. */
export const spacerPrices = (set: DrawerSet): SpacerPrice[] => {
  const all = caseOf(set);
  if (all === undefined || !canSeek(all)) return [];
  return Array.from({ length: Math.max(TOLD, all.wish.spacers ?? 0) }, (_, i): SpacerPrice => {
    const spacers = i + 1;
    const found = fewSpacers(all, spacers);
    return { spacers, ...(found && { look: { ...lookOf(all, found), sum: found.sum } }) };
  });
};

/** The look of a set without a limit, and how many spacers its front corners then need, as told; undefined without fingers. */
export const priceWithoutLimit = (
  set: DrawerSet,
): { readonly spacers: number; readonly look: SetLook } | undefined => {
  const all = caseOf(set);
  if (all === undefined) return undefined;
  const { fronts } = all.plain;
  // As planned: what came out otherwise is no matter of a choice.
  const drawers = set.drawers.map(({ made: _, ...drawer }, i) => ({
    ...drawer,
    front: fronts[i] ?? drawer.front,
  }));
  const spacers = spacerList({ ...set, drawers }).filter(({ corner }) => corner === 'front').length;
  return { spacers, look: lookOf(all, all.plain) };
};

const caseOf = ({ drawers, asked }: DrawerSet): SpacerCase | undefined => {
  if (asked === undefined) return undefined;
  const drafts = drawers.flatMap(({ spec }) => {
    const draft = draftDrawer(spec);
    return draft.ok ? [draft.value] : [];
  });
  const { target, spacers: wish } = asked;
  const plain = familyFronts(drafts, target);
  return plain === undefined || !('fronts' in plain) ? undefined : { drafts, plain, target, wish };
};

const lookOf = (
  { drafts, plain }: SpacerCase,
  { fronts, target }: Pick<FewSpacers, 'fronts' | 'target'>,
): SetLook => {
  const halfPins = fronts.flatMap(halfPinsOf);
  return {
    spread: familyOf(fronts, target, plain.pin).spread,
    halfPins: [Math.min(...halfPins), Math.max(...halfPins)],
    changed: drafts.flatMap(({ spec }, at) => {
      const [before, after] = [plain.fronts[at], fronts[at]];
      return before && after && isSame(before, after) ? [] : [spec.name];
    }),
  };
};

const halfPinsOf = ({ pins }: Joint): number[] =>
  pins.filter(({ half }) => half).map(({ narrow: [from, to] }) => to - from);

const isSame = (one: Joint, other: Joint): boolean =>
  one.tails.length === other.tails.length &&
  one.tails.every(({ tip }, i) => tip.every((at, j) => Math.abs(at - (other.tails[i]?.tip[j] ?? at)) < SAME));
