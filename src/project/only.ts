import type { CornerEnd } from '../drawer/cornerLetters.ts';
import { type Drawer, drawersAndBoxes } from '../drawer/drawer.ts';
import type { JointBoard } from '../joint/joint.ts';
import { closestWord } from '../plan/check/editDistance.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { LONGEST_LIST, listNames } from '../units/listNames.ts';
import { nameKey } from '../units/name.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { shellWord } from '../units/shellWord.ts';
import type { Project, SingleCorner } from './project.ts';

/** The parts of a drawer or box whose ends have templates. */
export const DRAWN_PARTS = ['front', 'side', 'back'] as const;
export type DrawnPart = (typeof DRAWN_PARTS)[number];

/**
 * What is drawn of a project: drawers and single corners by their names, and of each drawer the parts. Bench sheets
 * and comparison show the drawers that are drawn whole.
 */
export type Only = ReadonlyMap<string, ReadonlySet<DrawnPart>>;

const CORNER_BOARDS: readonly JointBoard[] = ['tail', 'pin'];

/**
 * The boards of a corner that are drawn.
 * @param end which of the drawer's corners; none for a single corner
 */
export const boardsDrawn = (only: Only | undefined, name: string, end?: CornerEnd): readonly JointBoard[] => {
  if (only === undefined) return CORNER_BOARDS;
  const parts = only.get(name);
  if (parts === undefined) return [];
  return end === undefined
    ? CORNER_BOARDS
    : CORNER_BOARDS.filter((board) => parts.has(board === 'tail' ? 'side' : end));
};

/** The drawers and boxes that are drawn whole. */
export const wholeDrawers = ({ set, only }: Pick<Project, 'set' | 'only'>): readonly Drawer[] =>
  drawersAndBoxes(set).filter(({ spec }) => only === undefined || isWhole(only.get(spec.name)));

/** The single corners that are drawn. */
export const drawnSingles = ({ joints, only }: Pick<Project, 'joints' | 'only'>): readonly SingleCorner[] =>
  joints.filter(({ name }) => only === undefined || only.has(name));

const isWhole = (parts: ReadonlySet<DrawnPart> | undefined): boolean => parts?.size === DRAWN_PARTS.length;

/** The names of what is drawn, as they are typed. */
export const onlyWords = (only: Only): string =>
  [...only]
    .flatMap(([name, parts]) =>
      parts.size === 0 || isWhole(parts) ? [name] : [...parts].map((part) => `${name}/${part}`),
    )
    .join(', ');

/** What is drawn, as the places of its drawers and then its single corners in the plan: `1-6-side`. No two choices are the same. */
export const onlyNumbers = ({ set, joints }: Pick<Project, 'set' | 'joints'>, only: Only): string =>
  [...drawersAndBoxes(set).map(({ spec }) => spec.name), ...joints.map(({ name }) => name)]
    .flatMap((name, i) => {
      const parts = only.get(name);
      if (parts === undefined) return [];
      return [
        i + 1,
        ...(parts.size === 0 || isWhole(parts) ? [] : DRAWN_PARTS.filter((part) => parts.has(part))),
      ];
    })
    .join('-');

/** A drawer or single corner, and its parts that can be drawn alone. */
interface Item {
  readonly name: string;
  readonly parts: readonly DrawnPart[];
}

interface Chosen {
  readonly item: Item;
  /** All of it, unless given. */
  readonly part?: DrawnPart;
}

/**
 * A project of which only some drawers and single corners are drawn. All else of it, such as the set's tail width and the
 * names of its pieces, is that of the whole.
 * @param typed names between commas, each of a drawer, of a single corner, or `Buttons/side` for one part of a drawer:
 * front, side or back. Capitals and blanks do not matter. A name that holds commas or slashes is found whole: from the
 * left, the longest text that is a name is taken.
 * @returns complaints have an empty place: a name that the project does not have, or a part without templates
 * @example
 * ```ts
 * const buttons = chooseOnly(project, 'Buttons, Cloth/side');
 * if (buttons.ok) console.log(piecesOf(buttons.value).map(({ title }) => title));
 * ```
 */
export const chooseOnly = (project: Project, typed: string): Result<Project> => {
  const items: Item[] = [
    ...drawersAndBoxes(project.set).map(({ spec: { name } }) => ({ name, parts: DRAWN_PARTS })),
    ...project.joints.map(({ name }) => ({ name, parts: [] })),
  ];
  const read = readChoices(items, typed);
  if (!read.every((each) => typeof each !== 'string')) return refuse(...complaintsOf(items, read));
  const only = new Map<string, Set<DrawnPart>>();
  for (const { item, part } of read) {
    const parts = part === undefined ? item.parts : [part];
    only.set(item.name, new Set([...(only.get(item.name) ?? []), ...parts]));
  }
  return accept({ ...project, only });
};

/** The text between commas as choices, the longest at each place; what is none stays as it was typed. */
const readChoices = (items: readonly Item[], typed: string): (Chosen | string)[] => {
  const byKey = new Map(items.map((item) => [nameKey(item.name), item]));
  const fields = typed.split(',');
  // What is a choice has no more commas than a name of the project.
  const most = items.reduce((fields, { name }) => Math.max(fields, nameKey(name).split(',').length), 1);
  const read: (Chosen | string)[] = [];
  for (let from = 0; from < fields.length; ) {
    let to = Math.min(fields.length, from + most);
    let found: Chosen | undefined;
    for (; found === undefined && to > from; to--)
      found = readChoice(byKey, fields.slice(from, to).join(','));
    read.push(found ?? (fields[from] ?? '').trim());
    from = found === undefined ? from + 1 : to + 1;
  }
  return read;
};

const readChoice = (byKey: ReadonlyMap<string, Item>, text: string): Chosen | undefined => {
  const whole = byKey.get(nameKey(text));
  if (whole !== undefined) return { item: whole };
  const [name, typedPart] = atSlash(text);
  const item = byKey.get(nameKey(name));
  const part = item?.parts.find((each) => each === nameKey(typedPart));
  return item && part && { item, part };
};

/** A name and the part after its last slash; both empty where there is none. */
const atSlash = (text: string): readonly [name: string, part: string] => {
  const slash = text.lastIndexOf('/');
  return slash < 0 ? ['', ''] : [text.slice(0, slash).trim(), text.slice(slash + 1).trim()];
};

const complaintsOf = (items: readonly Item[], all: readonly (Chosen | string)[]): Complaint[] => {
  // What is typed twice is complained of once.
  const read = [...new Set(all)];
  const meant = read.map((each) => (typeof each === 'string' ? nearest(items, each) : shown(each)));
  // What is suggested replaces the option's whole value, so it is complete or there is none.
  const corrected = shellWord(meant.join(','));
  const isComplete = meant.every((each) => each !== undefined) && corrected.length <= LONGEST_LIST;
  const hint = isComplete ? { hint: say`${corrected}` } : {};
  return read.flatMap((each) =>
    typeof each === 'string' ? [{ at: [], says: says(items, each), ...hint }] : [],
  );
};

const says = (items: readonly Item[], typed: string) => {
  const [name, part] = atSlash(typed);
  const item = items.find((each) => nameKey(each.name) === nameKey(name));
  if (item === undefined)
    return say`${quote(typed)} is no drawer and no single corner of this plan; there are ${listed(items.map((each) => each.name))}`;
  return item.parts.length === 0
    ? say`${item.name} is a single corner, which is drawn whole`
    : say`${item.name} has no templates of a part ${quote(part)}; it has those of ${item.parts.join(', ')}`;
};

const shown = ({ item, part }: Chosen): string => (part === undefined ? item.name : `${item.name}/${part}`);

/** The choice nearest to what was typed. */
const nearest = (items: readonly Item[], typed: string): string | undefined => {
  const names = items.map(({ name }) => name);
  const [typedName, typedPart] = atSlash(typed);
  const name = closestWord(typedName, names);
  const item = items.find((each) => each.name === name);
  const part = item && closestWord(typedPart, item.parts);
  return item && part ? `${item.name}/${part}` : (closestWord(typed, names) ?? item?.name);
};

const listed = (names: readonly string[]): string =>
  listNames(names.map((name) => (name.includes(',') ? `"${name}"` : name)));
