import type { Complaint } from '../src/units/complaint.ts';
import { marksPerInch, type Notation } from '../src/units/notation.ts';
import { parseLength } from '../src/units/parseLength.ts';
import { type LengthWord, mm, speak, typeOut } from '../src/units/phrase.ts';
import { value } from './value.ts';

/** A mark further than a bound as it is shown, on its wrong side. */
export const beyond = (bound: LengthWord, notation: Notation): LengthWord => {
  const shown = value(parseLength(typeOut([bound], notation), 'mm'));
  const mark = notation === 'mm' ? 0.01 : 25.4 / marksPerInch(notation);
  return mm(shown + (bound.right === 'above' ? -mark : mark));
};

/** Ranges of what follows from a value, not of what is typed there. */
const OF_OTHERS = /a finger of|cannot enter its socket/u;

/** The bounds that a complaint says its value must keep. */
export const rangeOf = ({ says }: Complaint): readonly LengthWord[] => {
  const from = says.findIndex((word) => typeof word === 'string' && word.includes('it must be'));
  if (from < 0 || OF_OTHERS.test(speak(says, 'mm'))) return [];
  const to = says.findIndex((word, i) => i > from && typeof word === 'string' && word.includes(','));
  return says
    .slice(from, to < 0 ? undefined : to)
    .flatMap((word) => (typeof word === 'string' || word.right === undefined ? [] : [word]));
};
