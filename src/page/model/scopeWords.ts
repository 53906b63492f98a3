import type { Project } from '../../project/project.ts';
import type { EditedCorner } from './editedCorner.ts';
import { drawersChanged } from './measureEdits.ts';
import type { Quantity } from './quantities.ts';
import type { Scope } from './scope.ts';

const NUMBERS = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** A small number in words. */
const inWords = (count: number): string => NUMBERS[count] ?? String(count);

/** `this drawer`, `all nine drawers`, `eight of nine drawers`: every one to be made counts. */
export const drawersInWords = (project: Project, index: number, changed: readonly number[]): string => {
  const { drawers } = project.set;
  const made = (some: readonly number[]): number =>
    some.reduce((sum, i) => sum + (drawers[i]?.spec.count ?? 0), 0);
  const [count, total] = [made(changed), made(drawers.map((_, i) => i))];
  if (changed.length === 1 && changed[0] === index && drawers.length > 1) return thisDrawer(count);
  if (count < total) return `${inWords(count)} of ${inWords(total)} drawers`;
  return total === 1 ? 'the drawer' : `all ${inWords(total)} drawers`;
};

const thisDrawer = (count: number): string =>
  count === 1 ? 'this drawer' : `these ${inWords(count)} drawers`;

/** Every drawer of the plan: `all nine drawers`. */
export const allDrawers = (project: Project): string =>
  drawersInWords(
    project,
    -1,
    project.set.drawers.map((_, i) => i),
  );

/** The drawers or boxes that the selected entry stands for: `this drawer`, `these two boxes`. */
export const selectedDrawers = ({ drawer, ref }: EditedCorner): string => {
  const count = drawer?.spec.count ?? 1;
  if (ref.of !== 'box') return thisDrawer(count);
  return count === 1 ? 'this box' : `these ${inWords(count)} boxes`;
};

/**
 * What an edit changes, in words: `all nine drawers`, `back corners of this drawer`.
 * @param measure the measure that is edited; undefined for the tails of one corner
 */
export const scopeWords = (
  project: Project,
  corner: EditedCorner,
  measure: Quantity | undefined,
  scope: Scope,
): string => {
  const { ref } = corner;
  if (ref.of === 'joint') return 'this corner';
  if (ref.of === 'box') return selectedDrawers(corner);
  if (measure === undefined) return `${ref.end} corners of ${selectedDrawers(corner)}`;
  const who = drawersInWords(project, ref.index, drawersChanged(project, corner, measure, scope));
  if (measure.ends === 'each' && scope.ends === 'shown') return `${ref.end} corners of ${who}`;
  const isBoth = measure.ends === 'each' || (measure.ends === 'both' && measure.shared);
  return isBoth ? `front and back corners of ${who}` : who;
};
