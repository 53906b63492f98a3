import { blankName } from '../../drawer/blanks/blankWords.ts';
import type { Opening } from '../../drawer/drawerSpec.ts';
import { kindFor } from '../../joint/kinds/kinds.ts';
import { type List, LISTS as MADE } from '../../plan/check/checkWhole.ts';
import type { Project } from '../../project/project.ts';
import { type Place, type Result, refuse, under } from '../../units/complaint.ts';
import { nameKey, parseName } from '../../units/name.ts';
import { unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Unit } from '../../units/unit.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import { copyItem, editPlan } from '../text/editPlan.ts';
import { namesElsewhere } from '../text/listDrawers.ts';
import { swapItems } from '../text/swapItems.ts';
import { freedPins, renamedPins } from './boards/pinEdits.ts';
import { withoutPlaces } from './cabinet/withoutPlaces.ts';
import { boxesIn, type EditedCorner, listOf } from './editedCorner.ts';
import { planNumber } from './planNumber.ts';
import { type Snapshot, snapshot } from './snapshot.ts';
import { isWritten, writtenPlan } from './writtenPlan.ts';

const change = (
  { text }: Snapshot,
  corner: EditedCorner,
  key: string,
  value: PlanValue | undefined,
): Result<Snapshot> => snapshot(editPlan(text, [{ at: [listOf(corner.ref), corner.ref.index, key], value }]));

/** Renames the drawer, box or single corner, and a drawer wherever else the plan names it. */
export const rename = (now: Snapshot, corner: EditedCorner, typed: string): Result<Snapshot> => {
  const { text, project } = now;
  const list = listOf(corner.ref);
  const at: Place = [list, corner.ref.index, 'name'];
  const read = parseName(typed);
  if (!read.ok) return refuse(...under(at, read.complaints));
  const name = read.value;
  const isTaken = MADE.some((each) =>
    namesOf(project, each).some(
      (other, i) => !(each === list && i === corner.ref.index) && isSame(other, name),
    ),
  );
  if (isTaken)
    return refuse({
      at,
      says: say`${quote(name)} is the name of another drawer, box or corner; every name must be different`,
    });
  const plan = writtenPlan(text);
  const places = [
    ...(isWritten(plan, [list, corner.ref.index]) ? [at] : []),
    ...(list !== 'joints' ? namesElsewhere(plan).filter((each) => isSame(each.name, corner.name)) : []).map(
      (each) => each.at,
    ),
  ];
  const pins = renamedPins(now, {
    part: (blank) =>
      list !== 'joints' && isSame(blank.drawer, corner.name)
        ? blankName({ ...blank, drawer: name })
        : undefined,
  });
  return snapshot(editPlan(text, [...places.map((place) => ({ at: place, value: name })), ...pins]));
};

const isSame = (one: string, other: string): boolean => nameKey(one) === nameKey(other);

const namesOf = ({ set, joints }: Project, list: List): string[] =>
  list === 'joints'
    ? joints.map(({ name }) => name)
    : (list === 'boxes' ? boxesIn(set) : set.drawers).map(({ spec }) => spec.name);

const allNames = (project: Project): string[] => MADE.flatMap((list) => namesOf(project, list));

/** The plan with a list of its own, as only the rows of a cabinet may name its drawers. */
const withList = ({ text, project }: Snapshot, list: List): string =>
  isWritten(writtenPlan(text), [list])
    ? text
    : editPlan(
        text,
        namesOf(project, list).map((value, i) => ({ at: [list, i, 'name'], value })),
      );

/** Sets the quantity of equal drawers; undefined is one, and as many as there are places in a cabinet. */
export const setCount = (
  now: Snapshot,
  corner: EditedCorner,
  count: PlanValue | undefined,
): Result<Snapshot> => change(now, corner, 'count', count);

const SIDES = ['width', 'height', 'depth'] as const;

/** An opening written as an entry's own. */
const openingOf = (at: Place, opening: Opening, unit: Unit): Edit[] =>
  SIDES.map((key) => ({ at: [...at, 'opening', key], value: planNumber(opening[key], unit) }));

/** Copies it, with a name that no other has. */
export const duplicate = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const list = listOf(corner.ref);
  const taken = new Set(allNames(now.project).map(nameKey));
  const stem = corner.name.replace(/ \d+$/u, '');
  let number = 2;
  while (taken.has(nameKey(`${stem} ${number}`))) number++;
  const copy = copyItem(withList(now, list), list, corner.ref.index, `${stem} ${number}`);
  // A copy has no place in the cabinet, and so an opening of its own.
  const space = corner.drawer?.spec.space;
  const own =
    space?.kind === 'opening' && space.places !== undefined && space.shape === undefined
      ? openingOf([list, corner.ref.index + 1], space.opening, unitOf(now.project.units))
      : [];
  return snapshot(editPlan(copy, own));
};

/** Lets it change places with the one before it, or after it. */
export const move = (now: Snapshot, corner: EditedCorner, by: -1 | 1): Result<Snapshot> =>
  snapshot(
    swapItems(withList(now, listOf(corner.ref)), listOf(corner.ref), corner.ref.index, corner.ref.index + by),
  );

/** Sizes of a drawer and of a single corner that nothing is known of yet, and of their boards. */
const BLANK = {
  mm: {
    opening: { width: 300, height: 100, depth: 400 },
    front: 20,
    side: 12,
    corner: { width: 300, tailBoard: 20, pinBoard: 20 },
  },
  in: {
    opening: { width: 12, height: 4, depth: 16 },
    front: '3/4',
    side: '1/2',
    corner: { width: 12, tailBoard: '3/4', pinBoard: '3/4' },
  },
} as const;

/** `Drawer 7`: after those that there are, the first number that none of them has. */
const freeName = (word: string, project: Project, list: List): string => {
  const taken = new Set(allNames(project).map(nameKey));
  let number = namesOf(project, list).length + 1;
  while (taken.has(nameKey(`${word} ${number}`))) number++;
  return `${word} ${number}`;
};

/** Adds a single corner after the last, of the usual kind. */
export const addCorner = ({ text, project }: Snapshot): Result<Snapshot> => {
  const at = ['joints', project.joints.length];
  const given = {
    name: freeName('Corner', project, 'joints'),
    kind: kindFor([]),
    ...BLANK[unitOf(project.units)].corner,
  };
  return snapshot(
    editPlan(
      text,
      Object.entries(given).map(([key, value]) => ({ at: [...at, key], value })),
    ),
  );
};

/** Adds a box after the last, with nothing of its own but a size, and a front where the plan gives none. */
export const addBox = ({ text, project }: Snapshot): Result<Snapshot> => {
  const blank = BLANK[unitOf(project.units)];
  const at = ['boxes', boxesIn(project.set).length];
  const front = ['stock', 'front', 'thickness'];
  return snapshot(
    editPlan(text, [
      { at: [...at, 'name'], value: freeName('Box', project, 'boxes') },
      ...SIDES.map((key): Edit => ({ at: [...at, 'size', key], value: blank.opening[key] })),
      ...(isWritten(writtenPlan(text), front) ? [] : [{ at: [...at, ...front], value: blank.side }]),
    ]),
  );
};

/** Adds a drawer after the last, with nothing of its own but an opening: that of the selected one, where it has one. */
export const addDrawer = ({ text, project }: Snapshot, { drawer }: EditedCorner): Result<Snapshot> => {
  const { units, set } = project;
  const plan = writtenPlan(text);
  const blank = BLANK[unitOf(units)];
  const at = ['drawers', set.drawers.length];
  const space = drawer?.spec.space;
  const size = (key: keyof typeof blank.opening): PlanValue =>
    space?.kind === 'opening' ? planNumber(space.opening[key], unitOf(units)) : blank.opening[key];
  const boards = (['front', 'side'] as const).flatMap((part): Edit[] => {
    const place = ['stock', part, 'thickness'];
    return isWritten(plan, place) ? [] : [{ at: place, value: blank[part] }];
  });
  return snapshot(
    editPlan(text, [
      ...boards,
      { at: [...at, 'name'], value: freeName('Drawer', project, 'drawers') },
      ...SIDES.map((key): Edit => ({ at: [...at, 'opening', key], value: size(key) })),
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

/** Removes it from the plan; refuses to remove all that the plan holds. */
export const remove = (now: Snapshot, corner: EditedCorner): Result<Snapshot> => {
  const { text, project } = now;
  if (allNames(project).length === 1)
    return refuse({ at: [], says: say`this is all that the plan holds`, hint: say`New, to begin another` });
  const list = listOf(corner.ref);
  const pins = freedPins(now, ({ drawer }) => list !== 'joints' && isSame(drawer, corner.name));
  const places = list === 'drawers' ? withoutPlaces(now, corner.name) : [];
  const entry = isWritten(writtenPlan(text), [list])
    ? [{ at: [list, corner.ref.index], value: undefined }]
    : [];
  return snapshot(editPlan(text, [...entry, ...places, ...pins]));
};
