import { EPSILON } from './epsilon.ts';
import { type InchNotation, marksPerInch } from './notation.ts';
import { isInInches, parseLength } from './parseLength.ts';
import { MM_PER_INCH, type Unit } from './unit.ts';

const FRACTIONS: readonly InchNotation[] = ['in/16', 'in/32', 'in'];

const isOnMark = (inches: number, notation: InchNotation): boolean => {
  const marks = inches * marksPerInch(notation);
  return Math.abs(marks - Math.round(marks)) < EPSILON;
};

/**
 * The notation of lengths that are typed in inches where a bare number means mm: the coarsest whose fractions show them
 * all, or thousandths where they are decimals, or finer than any rule.
 * @param typed lengths that `parseLength` reads
 * @returns nothing where none is in inches, or where bare numbers are: the reader's own notation is known there
 */
export const notationTyped = (typed: readonly (string | number)[], unit: Unit): InchNotation | undefined => {
  const inches = unit === 'in' ? [] : typed.filter((text) => isInInches(text, unit));
  if (inches.length === 0) return undefined;
  // What is under the first mark of a rule is told as a decimal beside fractions.
  const fractions = inches.flatMap((text) => {
    const length = parseLength(text, unit);
    return length.ok && !/[.,]\d/u.test(String(text)) ? [length.value / MM_PER_INCH] : [];
  });
  const ruled = FRACTIONS.find((notation) => fractions.every((each) => isOnMark(each, notation)));
  return fractions.length === 0 || ruled === undefined ? 'in/1000' : ruled;
};
