import { type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { formatSlope } from '../../units/slope.ts';
import { adjust } from './adjust.ts';
import { stepTowards } from './bisect.ts';
import { cornerOf, cornersOf, type EditedCorner } from './editedCorner.ts';
import { makeEven } from './edits.ts';
import { whereWords } from './movedWords.ts';
import { stepOf } from './planNumber.ts';
import type { Quantity } from './quantities.ts';
import type { Scope } from './scope.ts';
import type { Snapshot } from './snapshot.ts';
import { allLocked, widthsOf } from './widths.ts';

/**
 * Sets a measure to a value that is typed, in mm (of a slope, its run). Where it cannot be had, the complaints begin with
 * the value itself and the nearest that can; then come its consequences, and the lists of widths that allow no better.
 */
export const typeMeasure = (
  now: Snapshot,
  corner: EditedCorner,
  quantity: Quantity,
  value: number,
  scope: Scope,
): Result<Snapshot> => {
  const set = (to: number, from = now): Result<Snapshot> => {
    const there = cornerOf(from.project, corner.ref);
    return there === undefined ? refuse() : adjust(from, there, quantity, to, scope);
  };
  const made = set(value);
  if (made.ok) return made;
  const from = quantity.get(corner) ?? value;
  const reach = stepTowards(value - from, stepOf(unitOf(now.project.units)), (part) => {
    const to = from + part;
    const tried = set(to);
    return tried.ok ? { ok: true, value: to } : tried;
  });
  return refuse(
    outOfReach(corner, quantity, value, reach.value),
    ...made.complaints,
    ...listsInTheWay(now, (other) => set(value, other).ok),
  );
};

const outOfReach = (
  corner: EditedCorner,
  { kind, name, shared }: Quantity,
  value: number,
  nearest: number | undefined,
): Complaint => {
  const words = (of: number): Phrase =>
    kind === 'slope' ? say`${formatSlope({ run: of })}` : say`${mm(of)}`;
  const whose = shared ? say`` : say`${quote(corner.name)}: `;
  const instead = nearest === undefined ? say`` : say`, the nearest that does is ${words(nearest)}`;
  return {
    at: [],
    says: say`${whose}${name} ${words(value)} does not work${instead}. With ${words(value)}:`,
  };
};

/** The corners whose listed widths are in the way of what would work if they were even. */
const listsInTheWay = ({ text, project }: Snapshot, works: (now: Snapshot) => boolean): Complaint[] => {
  const listed = cornersOf(project).flatMap((ref) => {
    const corner = cornerOf(project, ref);
    return corner?.listed === true ? [corner] : [];
  });
  const evened = (corners: readonly EditedCorner[]): Snapshot =>
    corners.reduce(
      (now: Snapshot, { ref }) => {
        const corner = cornerOf(now.project, ref);
        const even = corner && makeEven(now, { ...corner, locked: new Set() });
        return even?.ok ? even.value : now;
      },
      { text, project },
    );
  if (listed.length === 0 || !works(evened(listed))) return [];
  return listed.filter((corner) => !works(evened(listed.filter((other) => other !== corner)))).map(isListed);
};

const isListed = (corner: EditedCorner): Complaint => {
  const { joint, locked } = corner;
  const locks = allLocked(widthsOf(joint), locked).map(({ says }) => says);
  const and = locks.flatMap((says) => say`, and ${says}`);
  return {
    at: [],
    says: say`${quote(whereWords(corner))}: its widths are listed one by one${and}`,
    remedy: say`${locked.size > 0 ? 'unlock them and press' : 'press'} Make even there`,
  };
};
