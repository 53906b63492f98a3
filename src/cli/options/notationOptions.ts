import { refuseOptions } from '../../files/failure.ts';
import { accept, type Complaint, type Result, refuse, under } from '../../units/complaint.ts';
import { type Notation, notationOf, parseFractions, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { Unit } from '../../units/unit.ts';

/** The options that say how lengths are read and shown, as typed. */
export interface NotationOptions {
  readonly units?: string;
  readonly fractions?: string;
}

export const FRACTIONS_OPTION = [
  '--fractions <parts>',
  'of an inch: 64, 32 or 16, or decimal (64 unless given)',
] as const;

/** Reads `mm` or `in`. */
const parseUnit = (typed: string): Result<Unit> =>
  typed === 'mm' || typed === 'in'
    ? accept(typed)
    : refuse({ at: [], says: say`${quote(typed)} is not a unit; it must be mm or in`, hint: say`mm` });

/** The unit of bare numbers: inches with `--units in`, else mm; a unit that is neither is complained of where it is read. */
export const bareUnit = ({ units }: NotationOptions): Unit => (units === 'in' ? 'in' : 'mm');

/** The unit that `--units` names; nothing where it is not given. Throws a Failure where it is neither mm nor in. */
export const readUnits = (typed: string | undefined): Unit | undefined => {
  if (typed === undefined) return undefined;
  const read = parseUnit(typed);
  return read.ok ? read.value : refuseOptions(under(['units'], read.complaints), 'mm');
};

/**
 * How lengths are shown, and what is wrong with what is typed of it.
 * @param usual where nothing is typed
 */
export const notationShown = (
  { units, fractions }: NotationOptions,
  usual: Notation,
): { readonly shown: Notation; readonly complaints: readonly Complaint[] } => {
  const unit = units === undefined ? accept(unitOf(usual)) : parseUnit(units);
  if (!unit.ok) return { shown: usual, complaints: under(['units'], unit.complaints) };
  const shown = unit.value === unitOf(usual) ? usual : unit.value;
  if (fractions === undefined) return { shown, complaints: [] };
  const parts = parseFractions(fractions);
  const notation = parts.ok ? notationOf(unit.value, parts.value) : parts;
  return notation.ok
    ? { shown: notation.value, complaints: [] }
    : {
        shown,
        complaints: under(
          ['fractions'],
          notation.complaints.map((each) =>
            unit.value === 'in'
              ? each
              : { ...each, hint: parts.ok ? say`--units in` : say`--units in --fractions 64` },
          ),
        ),
      };
};

/** How lengths are shown. Throws a Failure where what is typed of it is wrong. */
export const readNotation = (options: NotationOptions, usual: Notation): Notation => {
  const { shown, complaints } = notationShown(options, usual);
  return complaints.length > 0 ? refuseOptions(complaints, shown) : shown;
};
