import { Failure, WRONG_INPUT } from '../files/failure.ts';
import { quote } from '../units/quote.ts';
import type { Unit } from '../units/unit.ts';

/** The unit that `--units` names; nothing where it is not given. Throws a Failure where it is neither mm nor in. */
export const readUnits = (text: string | undefined): Unit | undefined => {
  if (text === undefined || text === 'mm' || text === 'in') return text;
  throw new Failure([`--units: ${quote(text)} is not a unit; it must be mm or in; try mm`], WRONG_INPUT);
};
