import { BEGIN_A_PLAN, type PlanComplaint } from '../../plan/read/planComplaint.ts';
import type { Project } from '../../project/project.ts';
import { type Complaint, type Place, sentence } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';

/** What an entry of a plan's lists is called: a drawer, or a single corner. */
type NameOf = (list: 'drawers' | 'joints', index: number) => string;

const NUMBERED: NameOf = (list, index) => `${list === 'drawers' ? 'drawer' : 'corner'} ${index + 1}`;

/** One of a list of widths. */
const ITEMS: Readonly<Record<string, (i: number) => string>> = {
  tails: (i) => `tail ${i + 1}`,
  pins: (i) => `pin ${i + 1}`,
  halfPin: (i) => `${i === 0 ? 'lower' : 'upper'} half pin`,
};

/** `sizeWidth` as `size width`; what is in a key and is no word, as it is. */
const inWords = (key: string | number): string =>
  String(key).replace(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);

/** A place in a plan as a list of words: `Buttons`, `opening`, `height`. */
const placeWords = (place: Place, nameOf: NameOf): string[] =>
  place.flatMap((key, i): string[] => {
    const next = place[i + 1];
    const before = place[i - 1];
    if (typeof key === 'number') {
      if (before === 'drawers' || before === 'joints') return [nameOf(before, key)];
      return [ITEMS[String(before)]?.(key) ?? inWords(key + 1)];
    }
    // A list's own word goes into that of its item; a joint's is clear from what it has.
    if (typeof next === 'number' && (i === 0 || key in ITEMS)) return [];
    return key === 'joint' && next !== undefined ? [] : [inWords(key)];
  });

/** Advice, or a complaint, as the page tells it: without a plan's keys, and what to press in place of a command. */
export const adviceWords = (complaint: Complaint, notation: Notation): string =>
  sentence(
    complaint.remedy === BEGIN_A_PLAN
      ? { ...complaint, remedy: say`press New for a plan to begin with` }
      : complaint,
    notation,
  )
    .replace(/^\S+(?= has no effect: )/u, placeWords(complaint.at, NUMBERED).join(', '))
    .replace(/ \([a-z]\w*(?:\.\w+)+\)/giu, '');

/** A complaint about an edit, which says what of the plan it is about: `Ribbon, tail 1: 2.43 mm is out of range; …`. */
export const complaintWords = (complaint: Complaint, { set, joints, units }: Project): string => {
  const told = adviceWords(complaint, units);
  const names = { drawers: set.drawers.map(({ spec }) => spec.name), joints: joints.map(({ name }) => name) };
  if ([...names.drawers, ...names.joints].some((name) => told.startsWith(quote(name)))) return told;
  const place = placeWords(complaint.at, (list, i) => names[list][i] ?? NUMBERED(list, i));
  const untold = place.filter((word) => !told.includes(word));
  return untold.length === 0 ? told : `${untold.join(', ')}: ${told}`;
};

/** A fault in a plan's text, and where it is: `Line 12: joint, lap: 500 mm is out of range; …`. */
export const faultWords = ({ line, complaint }: PlanComplaint, notation: Notation): string =>
  `Line ${line}: ${unplaced(complaint, notation)}`;

/** The same of a file, which the user looks up elsewhere: `Line 12, column 9: …`. */
export const fileFaultWords = ({ line, column, complaint }: PlanComplaint, notation: Notation): string =>
  `Line ${line}, column ${column}: ${unplaced(complaint, notation)}`;

const unplaced = (complaint: Complaint, notation: Notation): string =>
  [placeWords(complaint.at, NUMBERED).join(', '), adviceWords(complaint, notation)]
    .filter((words) => words !== '')
    .join(': ');
