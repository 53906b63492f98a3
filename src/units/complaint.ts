import type { Notation } from './notation.ts';
import { type Phrase, speak, typeOut } from './phrase.ts';

/** The keys that lead to a value in what the user gave: `['drawers', 1, 'slope']`, or `['slope']` for an option. */
export type Place = readonly (string | number)[];

/** What is wrong or advised at one place of the input: an error stops the work, advice does not. */
export interface Complaint {
  readonly at: Place;
  /** What is wrong and what is allowed, in the user's words; lengths stay lengths until they are shown. */
  readonly says: Phrase;
  /** What to try instead, ready to be typed. */
  readonly hint?: Phrase;
  /** What to do instead that cannot be typed: a clause that begins with a verb. */
  readonly remedy?: Phrase;
  /** Further places that the same complaint is about. */
  readonly also?: readonly Place[];
}

/** A value, or every reason why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly complaints: readonly Complaint[] };

export const accept = <T>(value: T): Result<T> => ({ ok: true, value });

export const refuse = (...complaints: readonly Complaint[]): Result<never> => ({ ok: false, complaints });

/** The groups of keys that are the whole plan's, whichever of its corners they are complained of for. */
const OF_ALL: Place = ['cutter', 'fingers'];

/** Whether a complaint is of what all corners are cut with. */
export const isOnTools = ({ at: [group = ''] }: Complaint): boolean => OF_ALL.includes(group);

/** The complaints, each with `outer` before its place; one of the tools keeps its place, as they are the whole plan's. */
export const under = (outer: Place, complaints: readonly Complaint[]): Complaint[] =>
  complaints.map((complaint) =>
    isOnTools(complaint) ? complaint : { ...complaint, at: [...outer, ...complaint.at] },
  );

/**
 * What is wrong, what is allowed and what to try or to do, on one line: `…; try 1:7`, `…; remove one of them`.
 * @example
 * ```ts
 * const length = parseLength('18 feet', 'mm');
 * if (!length.ok) for (const complaint of length.complaints) console.error(sentence(complaint, 'mm'));
 * ```
 */
export const sentence = ({ says, hint, remedy }: Complaint, notation: Notation): string => {
  const ways = [hint && `try ${typeOut(hint, notation)}`, remedy && speak(remedy, notation)];
  const to = ways.filter((way) => way !== undefined).join(', or ');
  return `${speak(says, notation)}${to === '' ? '' : `; ${to}`}`;
};
