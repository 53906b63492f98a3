import { type Complaint, type Place, sentence } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Position } from './position.ts';

/** A complaint about a plan, and where in its text it can be put right. */
export interface PlanComplaint extends Position {
  readonly complaint: Complaint;
}

/** What to do where there is no plan yet. */
export const BEGIN_A_PLAN = say`begin with the plan that "halfpin start" writes`;

const PLAIN_KEY = /^[\p{L}_][\p{L}\p{N}_-]{0,39}$/u;

/** `drawers[1].joint.slope`; keys that could be misread are in quotes. */
export const formatPlace = (place: Place): string =>
  place
    .map((key, i) => {
      if (typeof key === 'number') return `[${key}]`;
      if (!PLAIN_KEY.test(key)) return `[${quote(key)}]`;
      return i === 0 ? key : `.${key}`;
    })
    .join('');

/** The complaints from the top of the text down. */
export const fromTheTop = (complaints: readonly PlanComplaint[]): readonly PlanComplaint[] =>
  [...complaints].sort((a, b) => a.line - b.line || a.column - b.column);

/** The most complaints that are listed: whoever corrects a hundred runs the command again before going on. */
const MOST_LISTED = 100;

/** The first hundred complaints from the top of the text down, and after them how many more there are. */
export const firstComplaints = (complaints: readonly PlanComplaint[]): readonly PlanComplaint[] => {
  const sorted = fromTheTop(complaints);
  const next = sorted[MOST_LISTED];
  if (next === undefined) return sorted;
  const rest = sorted.length - MOST_LISTED;
  const says = say`${rest} more ${rest === 1 ? 'fault follows' : 'faults follow'}; correct those above, then run the command again`;
  return [...sorted.slice(0, MOST_LISTED), { ...next, complaint: { at: [], says } }];
};

/**
 * One line for the terminal: `plan.yaml:12:5 drawers[1].joint.slope: "1:0" is …; try 1:7`.
 * @example
 * ```ts
 * const reading = readProject('name: Box\ndrawers: none\n');
 * if (!reading.ok)
 *   for (const each of reading.complaints) console.error(formatPlanComplaint('box.yaml', each, reading.units));
 * ```
 */
export const formatPlanComplaint = (
  fileName: string,
  { line, column, complaint }: PlanComplaint,
  unit: Notation,
): string => {
  const place = complaint.at.length === 0 ? '' : `${formatPlace(complaint.at)}: `;
  return `${fileName}:${line}:${column} ${place}${sentence(complaint, unit)}`;
};
