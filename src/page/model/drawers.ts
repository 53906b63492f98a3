import { type Result, refuse } from '../../units/complaint.ts';
import { nameKey } from '../../units/name.ts';
import { unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import { copyItem, editPlan } from '../text/editPlan.ts';
import { swapItems } from '../text/swapItems.ts';
import type { EditedCorner } from './editedCorner.ts';
import { planNumber } from './planNumber.ts';
import { type Snapshot, snapshot } from './snapshot.ts';
import { isWritten, writtenPlan } from './writtenPlan.ts';

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

/** Lets it change places with the one before it, or after it. */
export const move = ({ text }: Snapshot, corner: EditedCorner, by: -1 | 1): Result<Snapshot> =>
  snapshot(swapItems(text, listOf(corner), corner.ref.index, corner.ref.index + by));

/** Sizes of a drawer that nothing is known of yet, and of its boards. */
const BLANK = {
  mm: { opening: { width: 300, height: 100, depth: 400 }, front: 20, side: 12 },
  in: { opening: { width: 12, height: 4, depth: 16 }, front: '3/4', side: '1/2' },
} as const;

/** Adds a drawer after the last, with nothing of its own but an opening: that of the selected one, where it has one. */
export const addDrawer = ({ text, project }: Snapshot, { drawer }: EditedCorner): Result<Snapshot> => {
  const { units, set } = project;
  const plan = writtenPlan(text);
  const blank = BLANK[unitOf(units)];
  const taken = new Set(set.drawers.map(({ spec }) => nameKey(spec.name)));
  let number = set.drawers.length + 1;
  while (taken.has(nameKey(`Drawer ${number}`))) number++;
  const at = ['drawers', set.drawers.length];
  const space = drawer?.spec.space;
  const size = (key: keyof typeof blank.opening): PlanValue =>
    space?.kind === 'opening' ? planNumber(space.opening[key], unitOf(units)) : blank.opening[key];
  const listed = isWritten(plan, ['drawers'])
    ? []
    : set.drawers.map(({ spec }, i): Edit => ({ at: ['drawers', i, 'name'], value: spec.name }));
  const boards = (['front', 'side'] as const).flatMap((part): Edit[] => {
    const place = ['stock', part, 'thickness'];
    return isWritten(plan, place) ? [] : [{ at: place, value: blank[part] }];
  });
  return snapshot(
    editPlan(text, [
      ...boards,
      ...listed,
      { at: [...at, 'name'], value: `Drawer ${number}` },
      ...(['width', 'height', 'depth'] as const).map(
        (key): Edit => ({ at: [...at, 'opening', key], value: size(key) }),
      ),
    ]),
  );
};

/** A plan of one drawer, with what no drawer can be without. */
export const blankPlan = (unit: Unit): string => {
  const { opening, front, side } = BLANK[unit];
  const { width, height, depth } = opening;
  return `name: New plan
units: ${unit}
stock:
  front: {thickness: ${front}}
  side: {thickness: ${side}}
drawers:
  - {name: Drawer 1, opening: {width: ${width}, height: ${height}, depth: ${depth}}}
`;
};

/** Removes it from the plan; refuses to remove the last drawer or corner. */
export const remove = ({ text, project }: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  if (project.set.drawers.length + project.joints.length === 1)
    return refuse({ at: [], says: say`this is all that the plan holds`, hint: say`New, to begin another` });
  return snapshot(editPlan(text, [{ at: [listOf(corner), corner.ref.index], value: undefined }]));
};
