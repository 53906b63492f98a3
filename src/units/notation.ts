import { accept, type Result, refuse } from './complaint.ts';
import { say } from './phrase.ts';
import { quote } from './quote.ts';
import { MM_PER_INCH, type Unit } from './unit.ts';

/**
 * How lengths are written: in mm to the hundredth, or in inches to the nearest mark of a rule. `in` alone is to 1/64;
 * `in/1000` is written as decimals (`.797`), the others as fractions.
 */
export type Notation = Unit | 'in/32' | 'in/16' | 'in/1000';

/** A notation in inches. */
export type InchNotation = Exclude<Notation, 'mm'>;

const MARKS_PER_INCH: Readonly<Record<InchNotation, number>> = {
  in: 64,
  'in/32': 32,
  'in/16': 16,
  'in/1000': 1000,
};

/** How many marks an inch has in a notation. */
export const marksPerInch = (notation: InchNotation): number => MARKS_PER_INCH[notation];

/** The most that a figure may miss the length that it stands for, in mm. */
export const halfMark = (notation: Notation): number =>
  notation === 'mm' ? 0.005 : MM_PER_INCH / MARKS_PER_INCH[notation] / 2;

/** What a bare number means to those who read in this notation. */
export const unitOf = (notation: Notation): Unit => (notation === 'mm' ? 'mm' : 'in');

/** How a correction is written that may be finer than a mark of the reader's rule: in thousandths of an inch. */
export const finest = (notation: Notation): Notation => (notation === 'mm' ? 'mm' : 'in/1000');

/** The unit, and to what the figures below such a heading are rounded: `mm`, `inches to 1/64`, `inches to .001`. */
export const unitWords = (notation: Notation): string =>
  notation === 'mm' ? 'mm' : `inches to ${notation === 'in/1000' ? '.001' : `1/${MARKS_PER_INCH[notation]}`}`;

/** What a plan's `fractions` may say, beside `units: in`. */
export const FRACTIONS = [64, 32, 16, 'decimal'] as const;
export const FRACTIONS_IN_WORDS = '64, 32, 16 or decimal';
export type Fractions = (typeof FRACTIONS)[number];

const NOTATION: Readonly<Record<Fractions, InchNotation>> = {
  64: 'in',
  32: 'in/32',
  16: 'in/16',
  decimal: 'in/1000',
};

/**
 * The notation of a unit and the fractions that are asked for beside it.
 * @returns a complaint with an empty place where there is nothing for the fractions to be of
 */
export const notationOf = (unit: Unit, fractions: Fractions | undefined): Result<Notation> => {
  if (fractions === undefined) return accept(unit);
  if (unit === 'in') return accept(NOTATION[fractions]);
  return refuse({ at: [], says: say`fractions are of an inch, and lengths are shown in mm here` });
};

/** Reads `64`, `32`, `16` or `decimal`. */
export const parseFractions = (typed: string): Result<Fractions> => {
  const found = FRACTIONS.find((each) => String(each) === typed);
  return found === undefined
    ? refuse({
        at: [],
        says: say`${quote(typed)} is no fraction of a rule; it must be ${FRACTIONS_IN_WORDS}`,
        hint: say`64`,
      })
    : accept(found);
};
