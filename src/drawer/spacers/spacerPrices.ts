import type { Joint } from '../../joint/joint.ts';
import { draftDrawer } from '../draftDrawer.ts';
import type { DrawerSet } from '../drawer.ts';
import { familyFronts } from '../familyFronts.ts';
import { familyOf } from '../familyTarget.ts';
import { canSeek, fewSpacers, type SpacerCase } from './fewSpacers.ts';

/** What a set looks like with at most so many different spacers. */
export interface SpacerPrice {
  readonly spacers: number;
  /** The look; absent where the set cannot do with so few. */
  readonly look?: {
    /** The widest tail width by the narrowest. */
    readonly spread: number;
    /** The family sum. */
    readonly sum: number;
    /** The narrowest and the widest half pin at the front corners, in mm. */
    readonly halfPins: readonly [least: number, most: number];
    /** The drawers whose front layout is another than without a limit. */
    readonly changed: readonly string[];
  };
}

/** The prices are told for so many spacers, and for as many as are asked for. */
const TOLD = 3;

/** Widths that differ by less are one, in mm. */
const SAME = 1e-6;

/** The look of a set with 1, 2, 3, … different spacers; none without fingers, or where too many drawers would be sought. */
export const spacerPrices = ({ drawers, asked }: DrawerSet): SpacerPrice[] => {
  if (asked === undefined) return [];
  const drafts = drawers.flatMap(({ spec }) => {
    const draft = draftDrawer(spec);
    return draft.ok ? [draft.value] : [];
  });
  const { target, spacers: wish } = asked;
  const plain = familyFronts(drafts, target);
  if (plain === undefined || !('fronts' in plain)) return [];
  const all: SpacerCase = { drafts, plain, target, wish };
  if (!canSeek(all)) return [];
  return Array.from({ length: Math.max(TOLD, wish.spacers ?? 0) }, (_, i): SpacerPrice => {
    const spacers = i + 1;
    const found = fewSpacers(all, spacers);
    if (found === undefined) return { spacers };
    const { fronts, sum } = found;
    const halfPins = fronts.flatMap(halfPinsOf);
    return {
      spacers,
      look: {
        spread: familyOf(fronts, found.target, plain.pin).spread,
        sum,
        halfPins: [Math.min(...halfPins), Math.max(...halfPins)],
        changed: drawers.flatMap(({ spec }, at) => {
          const [before, after] = [plain.fronts[at], fronts[at]];
          return before && after && isSame(before, after) ? [] : [spec.name];
        }),
      },
    };
  });
};

const halfPinsOf = ({ pins }: Joint): number[] =>
  pins.filter(({ half }) => half).map(({ narrow: [from, to] }) => to - from);

const isSame = (one: Joint, other: Joint): boolean =>
  one.tails.length === other.tails.length &&
  one.tails.every(({ tip }, i) => tip.every((at, j) => Math.abs(at - (other.tails[i]?.tip[j] ?? at)) < SAME));
