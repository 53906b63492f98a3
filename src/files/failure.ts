import { type Complaint, type Place, sentence } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';

/** The input is wrong. */
export const WRONG_INPUT = 2;
/** Not every part could be made: what was found is printed all the same. */
export const PARTS_MISSING = 3;
/** The disk or a device failed. */
export const DEVICE_FAILED = 1;

/** An error that ends the run: one line a complaint for stderr, and the exit status. */
export class Failure extends Error {
  readonly lines: readonly string[];
  readonly status: number;

  constructor(lines: readonly string[], status: number) {
    // Several drawers may be at fault in the same words.
    const once = [...new Set(lines)];
    super(once.join('\n'));
    this.lines = once;
    this.status = status;
  }
}

/** A place in the options as they are typed: `halfPin` as `--half-pin`. */
export const optionName = (at: Place): string =>
  `--${String(at[0] ?? '').replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}`;

/** Refuses options, each complaint by the option's name. */
export const refuseOptions = (complaints: readonly Complaint[], unit: Notation): never => {
  throw new Failure(
    complaints.map((complaint) => `${optionName(complaint.at)}: ${sentence(complaint, unit)}`),
    WRONG_INPUT,
  );
};

/** Throws an error again; a Failure with the lines of a further check's added. */
export const failWith = (error: unknown, check: () => unknown): never => {
  if (!(error instanceof Failure)) throw error;
  try {
    check();
  } catch (more) {
    if (more instanceof Failure) throw new Failure([...error.lines, ...more.lines], error.status);
    throw more;
  }
  throw error;
};
