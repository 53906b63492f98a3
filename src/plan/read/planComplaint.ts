import { type Complaint, type Place, sentence } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { quote } from '../../units/quote.ts';
import type { Position } from './position.ts';

/** A complaint about a plan, and where in its text it can be put right. */
export interface PlanComplaint extends Position {
  readonly complaint: Complaint;
}

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
