import { lowerHalfPinUnder } from '../../../drawer/groove/hidingChoices.ts';
import { isSought } from '../../../drawer/spacers/fewSpacers.ts';
import { toldWith } from '../../../drawer/spacers/spacerList.ts';
import { LEAST_PIN } from '../../../joint/jointLimits.ts';
import type { Project } from '../../../project/project.ts';
import { accept, type Result, refuse } from '../../../units/complaint.ts';
import { unitOf } from '../../../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../../../units/unit.ts';
import { ofCorner } from '../adjust.ts';
import { stepTowards } from '../bisect.ts';
import { type CornerRef, cornerOf, type EditedCorner } from '../editedCorner.ts';
import { judgedUnder, type Moved } from '../edits.ts';
import { type Listing, listCorners } from '../listCorner.ts';
import { stepOf } from '../planNumber.ts';
import { preview, type Snapshot } from '../snapshot.ts';
import { lockedAt, type TipWidths, total, widthsOf } from '../widths.ts';
import { writtenPlan } from '../writtenPlan.ts';

/** Whether the tails of all drawers share spacers: where a plan says how many different ones there may be. */
export const sharesSpacers = ({ set }: Project, ref: CornerRef): boolean =>
  ref.of === 'drawer' && set.asked?.spacers.spacers !== undefined;

/** A corner, and which of its tails a spacer gives: their places among its pairs. */
interface Served {
  readonly corner: EditedCorner;
  readonly pairs: readonly number[];
}

const cornersLike = (project: Project, ref: CornerRef): EditedCorner[] =>
  ref.of !== 'drawer'
    ? []
    : project.set.drawers.flatMap((_, index) => cornerOf(project, { ...ref, index }) ?? []);

/** The corners of all drawers, front or back as the one that is meant, whose tails a spacer gives. */
export const servedBy = (project: Project, ref: CornerRef, spacer: number): Served[] => {
  if (ref.of !== 'drawer') return [];
  const isLike = toldWith(project.set, ref.end, spacer);
  return cornersLike(project, ref).flatMap((corner) => {
    const pairs = (corner.fingers?.setting.pairs ?? []).flatMap((pair, i) =>
      isLike(pair.spacer) ? [i] : [],
    );
    return pairs.length > 0 ? [{ corner, pairs }] : [];
  });
};

/** A length in few digits, as fine as spacers that are told apart. */
const inDigits = (value: number, unit: Unit): number =>
  unit === 'mm' ? Number(value.toFixed(4)) : Number((value / MM_PER_INCH).toFixed(6)) * MM_PER_INCH;

/** A corner's widths in few digits, but the locked ones; a half pin fills the board. */
const filledInDigits = ({ joint, locked }: EditedCorner, widths: TipWidths, unit: Unit): TipWidths => {
  const last = widths.length - 1;
  const filling = locked.has(last) ? 0 : last;
  const short = widths.map((width, i) => (locked.has(i) ? width : inDigits(width, unit)));
  const left = joint.width - total(short);
  return short.map((width, i) => (i === filling ? width + left : width));
};

/**
 * The widths of a corner with some tails as a spacer gives them. Pins and the other tails stay; both half pins give as much
 * of what that takes, as far as the groove stays hidden.
 */
const widthsWith = ({ corner, pairs }: Served, spacer: number, unit: Unit): Result<TipWidths> => {
  const { joint, fingers, groove, locked } = corner;
  const before = widthsOf(joint);
  const last = before.length - 1;
  const held = pairs.map((i) => 2 * i + 1).find((i) => locked.has(i));
  if (held !== undefined) return refuse(lockedAt(before, held));
  const widths = before.map((width, i) => {
    const pair = pairs.includes((i - 1) / 2) ? fingers?.setting.pairs[(i - 1) / 2] : undefined;
    const grown = pair === undefined ? 0 : (fingers?.together ?? 0) + spacer - (pair.to - pair.from);
    return width + grown;
  });
  if (locked.has(0) && locked.has(last)) return refuse(lockedAt(before, 0), lockedAt(before, last));
  const both = joint.width - total(widths.slice(1, -1));
  const [lower = 0, upper = 0] = [before[0], before[last]];
  const hides =
    groove === undefined
      ? { least: LEAST_PIN, most: Number.POSITIVE_INFINITY }
      : lowerHalfPinUnder(joint, groove, widths[1] ?? 0);
  const shared = Math.min(
    hides.most,
    both - LEAST_PIN,
    Math.max(LEAST_PIN, hides.least, (lower + both - upper) / 2),
  );
  const half = locked.has(0) ? lower : locked.has(last) ? both - upper : shared;
  return accept(filledInDigits(corner, [half, ...widths.slice(1, -1), both - half], unit));
};

/** What is made of every corner, or what is wrong with the first that will not do. */
const eachOf = <T>(served: readonly Served[], make: (each: Served) => Result<T>): Result<T[]> => {
  const made: T[] = [];
  for (const each of served) {
    const result = make(each);
    if (!result.ok) return refuse(...ofCorner(each.corner.name, result.complaints));
    made.push(result.value);
  }
  return accept(made);
};

/**
 * Moves the spacer of pair `i` of a corner towards a width in mm, as far as all corners can be cut that it serves: a
 * spacer is one number, and every tail that uses it takes the width that it gives. The fronts that were sought for few
 * spacers are listed as they are, so that no other spacer changes.
 */
export const dragSharedSpacer = (now: Snapshot, corner: EditedCorner, i: number, to: number): Moved => {
  const { project } = now;
  const { ref } = corner;
  const from = corner.fingers?.setting.pairs[i]?.spacer ?? to;
  const unit = unitOf(project.units);
  const served = servedBy(project, ref, from);
  const specs = project.set.drawers.map(({ spec }) => spec);

  const widthsAt = (part: number): Result<TipWidths[]> =>
    eachOf(served, (each) => {
      const judged = judgedUnder(each.corner, (locked) =>
        widthsWith({ ...each, corner: { ...each.corner, locked } }, from + part, unit),
      );
      return judged.ok ? accept(judged.value.widths) : judged;
    });
  const write = (moved: readonly TipWidths[]): Result<Snapshot> => {
    const listings = cornersLike(project, ref).flatMap((each): (Listing & { ref: CornerRef })[] => {
      const place = served.findIndex(({ corner: { name } }) => name === each.name);
      const widths =
        moved[place] ??
        (isKept(each, project) ? undefined : filledInDigits(each, widthsOf(each.joint), unit));
      return widths === undefined ? [] : [{ ref: each.ref, widths, locked: each.locked, before: widths }];
    });
    return preview(now, listCorners(listings, specs, writtenPlan(now.text), unit));
  };

  const step = stepOf(unit);
  const { value, stop } = stepTowards(to - from, step, widthsAt);
  if (value === undefined) return { snapshot: now, stop };
  const next = write(value);
  if (next.ok) return { snapshot: next.value, stop };
  // What is wrong with the set as a whole.
  const reach = stepTowards(to - from, step, (part) => {
    const widths = widthsAt(part);
    return widths.ok ? write(widths.value) : widths;
  });
  return { snapshot: reach.value ?? now, stop: reach.stop };
};

/** Whether a corner keeps its layout when another's spacer changes. */
const isKept = ({ ref, drawer }: EditedCorner, { set }: Project): boolean =>
  ref.of !== 'drawer' ||
  ref.end === 'back' ||
  drawer === undefined ||
  !isSought(drawer.spec, set.asked?.target);
