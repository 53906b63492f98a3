import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { halfMark, type Notation } from '../units/notation.ts';
import { atLeast, mm, type Phrase, say } from '../units/phrase.ts';
import type { ResolvedSpec } from './defaults.ts';
import { groupedPins } from './groupedSpacing.ts';
import { keptBeside } from './houndsTooth.ts';
import type { TailCount } from './joint.ts';
import * as limits from './jointLimits.ts';
import type { GroupedSpacing, ListedSpacing, SharedSpacing } from './jointSpec.ts';
import { chooseTails, jointWidth, leastTip, meanTip, mostTails, shares, tailRoom } from './spacing.ts';

/** How far listed widths may always miss the board's width, in mm. */
const LIST_TOLERANCE = 0.05;

/** Every figure of `count` may be half a mark off. */
const listTolerance = (notation: Notation, count: number): number =>
  Math.max(LIST_TOLERANCE, count * halfMark(notation));

/** The widths at the tip level, from the reference edge up. */
export interface TailWidths {
  readonly tips: readonly number[];
  /** The whole pins between the tails. */
  readonly pins: readonly number[];
  readonly alternatives: readonly TailCount[];
}

/** Width of each tail and each whole pin, for a spacing that `checkSpacing` accepts. */
export const tailWidths = (spec: ResolvedSpec): Result<TailWidths> =>
  spec.spacing.kind === 'listed' ? listedWidths(spec, spec.spacing) : sharedWidths(spec, spec.spacing);

const sharedWidths = (spec: ResolvedSpec, spacing: SharedSpacing): Result<TailWidths> => {
  const most = mostTails(spec, spacing);
  const { tails } = spacing;
  if (spacing.kind === 'grouped' && spacing.tails > most) return refuse(tooManyInGroups(spec, spacing));
  if (most === 0) return refuse(noRoom(spec));
  if (tails !== undefined && tails > most) return refuse(tooMany(spec, tails, most));
  const count = tails ?? chooseTails(spec, most);
  const room = tailRoom(spec, count);
  return accept({
    tips: shares(spacing, count).map((share) => share * room),
    pins:
      spacing.kind === 'grouped'
        ? groupedPins(spacing, spec.pin)
        : new Array<number>(count - 1).fill(spec.pin),
    // The groups say how many there are.
    alternatives: (spacing.kind === 'grouped' ? [] : [count - 1, count + 1])
      .filter((other) => other >= 1 && other <= most)
      .map((other) => ({ tails: other, tip: meanTip(spec, other) })),
  });
};

const noRoom = (spec: ResolvedSpec): Complaint => {
  const { width, halfPin } = spec;
  const { lower, upper } = spec.shape.shoulder;
  const shoulders = lower + upper > 0 ? say` and shoulders of ${mm(lower)} and ${mm(upper)}` : [];
  return {
    at: ['width'],
    says: say`half pins of ${mm(halfPin.lower)} and ${mm(halfPin.upper)}${shoulders} leave ${mm(Math.max(0, tailRoom(spec, 1)))} of ${mm(width)}; one tail needs ${mm(leastTip(spec))} for ${keptBeside(spec) ?? say`a base of ${mm(limits.LEAST_BASE)}`}`,
    remedy: say`use narrower half pins, a gentler slope or a wider board`,
  };
};

const tooMany = (spec: ResolvedSpec, tails: number, most: number): Complaint => ({
  at: ['tails'],
  says: say`${tails} tails are too many for ${mm(spec.width)}: ${eachMust(spec)}, so there may be ${most === 1 ? 'only one' : `1 to ${most}`}`,
  hint: say`${chooseTails(spec, most)}`,
});

/** What is asked of each of many tails. */
const eachMust = (spec: ResolvedSpec): Phrase => {
  const kept = keptBeside(spec);
  return kept === undefined
    ? say`each base must be at least ${atLeast(limits.LEAST_BASE)}`
    : say`each must keep ${kept}`;
};

const tooManyInGroups = (spec: ResolvedSpec, { tails, groups }: GroupedSpacing): Complaint => ({
  at: ['groups'],
  says: say`${tails} tails in ${groups.length} groups are too many for ${mm(spec.width)}: the pins leave ${mm(Math.max(0, meanTip(spec, tails)))} for each, and ${eachMust(spec)}`,
  remedy: say`use fewer tails, narrower pins between groups or a wider board`,
});

const listedWidths = (spec: ResolvedSpec, spacing: ListedSpacing): Result<TailWidths> => {
  const { tails, pins: given, notation = spec.notation } = spacing;
  const pins = given ?? new Array<number>(tails.length - 1).fill(spec.pin);
  const { halfPin } = spec;
  const width = jointWidth(spec);
  const sum = [...tails, ...pins, halfPin.lower, halfPin.upper].reduce((a, b) => a + b, 0);
  const over = sum - width;
  // Half pins that would take up the difference, where some can.
  const fitting = (halfPin.lower + halfPin.upper - over) / 2;
  if (Math.abs(over) > listTolerance(notation, tails.length + pins.length + 2) + EPSILON)
    return refuse({
      at: ['tails'],
      says: say`tails, pins and half pins together are ${mm(sum)}, ${mm(Math.abs(over))} ${over > 0 ? 'more' : 'less'} than the ${width < spec.width ? say`${mm(width)} between the shoulders` : say`board's ${mm(width)}`}`,
      remedy:
        fitting >= limits.LEAST_PIN
          ? say`make the half pins ${mm(fitting)}, or list widths that fill it`
          : say`list widths that fill it`,
    });
  // What was rounded off in inches is shared by the tails, so that the pins stay as they are listed.
  const tips = notation === 'mm' ? tails : tails.map((tip) => tip - over / tails.length);
  return accept({ tips, pins, alternatives: [] });
};
