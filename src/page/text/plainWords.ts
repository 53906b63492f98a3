import { BEGIN_A_PLAN, type PlanComplaint } from '../../plan/read/planComplaint.ts';
import type { Project } from '../../project/project.ts';
import { type Complaint, type Place, sentence } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { CornerRef } from '../model/editedCorner.ts';
import { fieldWords, inWords } from '../model/fields/keyWords.ts';

/** The lists of a plan whose entries have names, and what one of them is. */
const LISTS = { drawers: 'drawer', boxes: 'box', joints: 'corner', boards: 'board' } as const;
type List = keyof typeof LISTS;
const isList = (key: Place[number] | undefined): key is List => key !== undefined && key in LISTS;

/** What an entry of a plan's lists is called: a drawer, a single corner, or a board. */
type NameOf = (list: List, index: number) => string;

const NUMBERED: NameOf = (list, index) => `${LISTS[list]} ${index + 1}`;

/** One of a list of widths. */
const ITEMS: Readonly<Record<string, (i: number) => string>> = {
  tails: (i) => `tail ${i + 1}`,
  pins: (i) => `pin ${i + 1}`,
  halfPin: (i) => `${i === 0 ? 'lower' : 'upper'} half pin`,
};

/** A place in a plan as a list of words, those of its field where it has one: `Buttons`, `opening`, `height`. */
const placeWords = (place: Place, nameOf: NameOf): string[] => {
  const [list, index, ...at] = place;
  return isList(list) && typeof index === 'number'
    ? [
        nameOf(list, index),
        ...keyWords(at, list === 'joints' ? 'joint' : list === 'boxes' ? 'box' : 'drawer'),
      ]
    : keyWords(place, 'drawer');
};

const keyWords = (at: Place, of: CornerRef['of']): string[] => {
  if (at[0] === 'back' && at[1] === 'joint' && at.length > 2) return ['back', ...keyWords(at.slice(1), of)];
  const called = at.map((_, i) => fieldWords(at.slice(0, i + 1), of));
  const from = called.findLastIndex((words) => words !== undefined);
  const rest = at.flatMap((key, i): string[] => {
    if (i <= from) return [];
    const next = at[i + 1];
    if (typeof key === 'number') return [ITEMS[String(at[i - 1])]?.(key) ?? String(key + 1)];
    // A list's own word goes into that of its item; a joint's is clear from what it has.
    const isTold = typeof next === 'number' ? key in ITEMS : key === 'joint' && next !== undefined;
    return isTold ? [] : [inWords(key)];
  });
  return [...(called[from] ?? []), ...rest];
};

/** Advice, or a complaint, as the page tells it: without a plan's keys, and what to press in place of a command. */
export const adviceWords = (complaint: Complaint, notation: Notation): string =>
  sentence(
    complaint.remedy === BEGIN_A_PLAN
      ? { ...complaint, remedy: say`press New for a plan to begin with` }
      : complaint,
    notation,
  )
    .replace(/^\S+(?= has no effect: )/u, placeWords(complaint.at, NUMBERED).join(', '))
    .replace(/\b(drawers|boxes|joints|boards)\[(\d+)\]/gu, (_, list: List, index) =>
      NUMBERED(list, Number(index)),
    )
    .replace(/ \([a-z]\w*(?:\.\w+)+\)/giu, '');

/** A complaint about an edit, which says what of the plan it is about: `Ribbon, tail 1: 2.43 mm is out of range; …`. */
export const complaintWords = (complaint: Complaint, { set, joints, work, units }: Project): string => {
  const told = adviceWords(complaint, units);
  const names = {
    drawers: set.drawers.map(({ spec }) => spec.name),
    boxes: (set.boxes ?? []).map(({ spec }) => spec.name),
    joints: joints.map(({ name }) => name),
    boards: (work?.planks ?? []).filter(({ copy }) => copy === 1).map(({ name }) => name),
  };
  if ([...names.drawers, ...names.boxes, ...names.joints].some((name) => told.startsWith(quote(name))))
    return told;
  const place = placeWords(complaint.at, (list, i) => names[list][i] ?? NUMBERED(list, i));
  const untold = place.filter((word) => !told.includes(word));
  return untold.length === 0 ? told : `${untold.join(', ')}: ${told}`;
};

/** A fault in a plan's text, and where it is: `Line 12: joint, lap: 500 mm is out of range; …`. */
export const faultWords = ({ line, complaint }: PlanComplaint, notation: Notation): string =>
  `Line ${line}: ${unplaced(complaint, notation)}`;

/**
 * The same of a file, which the page does not show: what its line says, from where the fault is if that is far on:
 * `drawer 3, opening, height: 2 mm is out of range; …, in "- {name: Ribbon, …"`.
 * @param text the file's
 */
export const fileFaultWords = (
  { line, column, complaint }: PlanComplaint,
  notation: Notation,
  text: string,
): string => {
  const told = unplaced(complaint, notation);
  const whole = text.split(/\r\n|\n|\r/u)[line - 1] ?? '';
  const shown = column > FAR ? `…${whole.slice(column - 1)}` : whole.trim();
  // What is wrong with all of it is in no line.
  const isOfAll = complaint.at.length === 0 && line === 1 && column === 1;
  return isOfAll || shown === '' ? told : `${told}, in ${quote(shown)}`;
};

/** So many letters of a line are shown from its start. */
const FAR = 30;

const unplaced = (complaint: Complaint, notation: Notation): string =>
  [placeWords(complaint.at, NUMBERED).join(', '), adviceWords(complaint, notation)]
    .filter((words) => words !== '')
    .join(': ');
