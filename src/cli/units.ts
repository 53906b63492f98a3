import { refuseOptions } from '../files/failure.ts';
import { accept, type Result, refuse, under } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import type { Unit } from '../units/unit.ts';

/** Reads `mm` or `in`. */
export const parseUnit = (typed: string): Result<Unit> =>
  typed === 'mm' || typed === 'in'
    ? accept(typed)
    : refuse({ at: [], says: say`${quote(typed)} is not a unit; it must be mm or in`, hint: say`mm` });

/** The unit that `--units` names; nothing where it is not given. Throws a Failure where it is neither mm nor in. */
export const readUnits = (typed: string | undefined): Unit | undefined => {
  if (typed === undefined) return undefined;
  const read = parseUnit(typed);
  return read.ok ? read.value : refuseOptions(under(['units'], read.complaints), 'mm');
};
