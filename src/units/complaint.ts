import type { Phrase } from './phrase.ts';

/** The keys that lead to a value in what the user gave: `['drawers', 1, 'slope']`, or `['slope']` for an option. */
export type Place = readonly (string | number)[];

/** Something to tell the user about one place in their input: an error that stops the work, or advice that does not. */
export interface Complaint {
  readonly at: Place;
  /** What is wrong and what is allowed, in the user's words; lengths stay lengths until they are shown. */
  readonly says: Phrase;
  /** What to try instead, ready to be typed. */
  readonly hint?: Phrase;
  /** Further places of which the same is said. */
  readonly also?: readonly Place[];
}

/** A value, or every reason why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly complaints: readonly Complaint[] };

export const accept = <T>(value: T): Result<T> => ({ ok: true, value });

export const refuse = (...complaints: readonly Complaint[]): Result<never> => ({ ok: false, complaints });

/** The same complaints, seen from a level further out; what is said of the cutter stays at `cutter`, which is the whole plan's. */
export const under = (outer: Place, complaints: readonly Complaint[]): Complaint[] =>
  complaints.map((complaint) =>
    complaint.at[0] === 'cutter' ? complaint : { ...complaint, at: [...outer, ...complaint.at] },
  );
