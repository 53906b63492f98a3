import type { Joint } from '../../joint/joint.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { repeatedNames } from '../../units/name.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { draftDrawer } from '../draftDrawer.ts';
import { type Drawer, type DrawerSet, madeOf } from '../drawer.ts';
import { familyOf } from '../familyTarget.ts';
import { type DrawerComplaint, mergeComplaints } from '../mergeComplaints.ts';
import { makeDrawers } from './makeDrawers.ts';

/**
 * A set with what is made of its drawers where boards came out other than planned, and the advice on that; the set itself where all are as
 * planned. Its tail width stays; its spread is that of what is made.
 * @param set laid out as planned
 * @returns complaints with their places from the plan's top: `['drawers', 0, 'asBuilt', 1, 'length']`
 */
export const madeSet = (set: DrawerSet): Result<DrawerSet> => {
  const { family } = set;
  if (family === undefined || set.drawers.every(({ spec }) => spec.asBuilt === undefined)) return accept(set);
  const wrong: DrawerComplaint[] = [];
  const said: DrawerComplaint[] = [];
  const drawers = set.drawers.map((planned, i): Drawer => {
    const draft = planned.spec.asBuilt && draftDrawer(planned.spec);
    if (draft === undefined || !draft.ok) return planned;
    const made = makeDrawers(draft.value, planned, family);
    const told = (name: string, complaints: readonly Complaint[]): DrawerComplaint[] =>
      complaints.map((complaint) => ({ name, entry: ['drawers', i], complaint }));
    if (!made.ok) wrong.push(...told(planned.spec.name, made.complaints));
    if (!made.ok || made.value === undefined) return planned;
    const known = new Set(planned.advice.map((each) => JSON.stringify(each)));
    for (const { spec, advice } of made.value)
      said.push(
        ...told(
          spec.name,
          advice.filter((each) => !known.has(JSON.stringify(each))),
        ),
      );
    return { ...planned, made: made.value };
  });
  const sharing = wrong.length > 0 ? [] : sharedNames(drawers);
  if (wrong.length + sharing.length > 0) return refuse(...mergeComplaints(wrong), ...sharing);
  if (drawers.every(({ made }) => made === undefined)) return accept(set);
  return accept({
    ...set,
    drawers,
    family: familyOf(madeFronts(drawers), family.target, family.pin),
    advice: [...set.advice, ...mergeComplaints(said)],
  });
};

/** Every front corner as it is made. */
const madeFronts = (drawers: readonly Drawer[]): Joint[] =>
  madeOf({ drawers }).flatMap(({ front, right }) => (right === undefined ? [front] : [front, right.front]));

/** Names that drawers have by their numbers, and that others are called too. */
const sharedNames = (drawers: readonly Drawer[]): Complaint[] => {
  const names = drawers.flatMap(({ spec, made = [] }, i) =>
    [spec, ...made.map((each) => each.spec)].map(({ name }) => ({ name, of: i })),
  );
  return repeatedNames(names.map(({ name }) => name)).flatMap(({ name, index, first }) => {
    const [entry, other] = [names[index]?.of ?? 0, names[first]?.of ?? 0];
    return entry === other
      ? []
      : [
          {
            at: ['drawers', drawers[entry]?.made === undefined ? entry : other, 'name'],
            says: say`${quote(name)} is the name of one of several equal drawers, by its number`,
            remedy: say`give this drawer another name`,
          },
        ];
  });
};
