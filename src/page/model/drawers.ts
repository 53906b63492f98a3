import { type Result, refuse } from '../../units/complaint.ts';
import { nameKey } from '../../units/name.ts';
import { say } from '../../units/phrase.ts';
import type { PlanValue } from '../text/edit.ts';
import { copyItem, editPlan } from '../text/editPlan.ts';
import type { EditedCorner } from './editedCorner.ts';
import { type Snapshot, snapshot } from './snapshot.ts';

const listOf = ({ ref }: EditedCorner): 'drawers' | 'joints' => (ref.of === 'drawer' ? 'drawers' : 'joints');

const change = (
  { text }: Snapshot,
  corner: EditedCorner,
  key: string,
  value: PlanValue | undefined,
): Result<Snapshot> => snapshot(editPlan(text, [{ at: [listOf(corner), corner.ref.index, key], value }]));

/** Renames the drawer or single corner. */
export const rename = (now: Snapshot, corner: EditedCorner, name: string): Result<Snapshot> =>
  change(now, corner, 'name', name);

/** Sets the quantity of equal drawers; undefined is one, and as many as there are places in a cabinet. */
export const setCount = (
  now: Snapshot,
  corner: EditedCorner,
  count: PlanValue | undefined,
): Result<Snapshot> => change(now, corner, 'count', count);

/** Copies it, with a name that no other has. */
export const duplicate = ({ text, project }: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const list = listOf(corner);
  const { set, joints } = project;
  const named = list === 'drawers' ? set.drawers.map(({ spec }) => spec) : joints;
  const taken = new Set(named.map(({ name }) => nameKey(name)));
  const stem = corner.name.replace(/ \d+$/u, '');
  let number = 2;
  while (taken.has(nameKey(`${stem} ${number}`))) number++;
  return snapshot(copyItem(text, list, corner.ref.index, `${stem} ${number}`));
};

/** Removes it from the plan; refuses to remove the last drawer or corner. */
export const remove = ({ text, project }: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  if (project.set.drawers.length + project.joints.length === 1)
    return refuse({ at: [], says: say`this is all that the plan holds`, hint: say`New, to begin another` });
  return snapshot(editPlan(text, [{ at: [listOf(corner), corner.ref.index], value: undefined }]));
};
