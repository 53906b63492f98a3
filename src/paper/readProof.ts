import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import { MM_PER_INCH } from '../units/unit.ts';
import type { PrinterError } from './printerCorrection.ts';
import type { ProofLengths } from './proofLengths.ts';

/** Lengths measured on a proof, mm; both diagonals or neither. */
export interface MeasuredProof {
  readonly x: number;
  readonly y: number;
  readonly d1?: number;
  readonly d2?: number;
}

/** Largest error of any printer, as a share; a larger difference is a mistake in measuring or typing. */
export const MOST_ERROR = 0.03;

/** Largest difference of the diagonals from those of the sides, as a share: the accuracy of rules and eyes. */
const MOST_DISAGREEMENT = 0.005;

type Key = keyof ProofLengths;

/** The places of complaints, as the options are named. */
const PLACES: Readonly<Record<Key, string>> = {
  x: 'measuredX',
  y: 'measuredY',
  d1: 'measuredD1',
  d2: 'measuredD2',
};

const near = (ratio: number, wanted: number): boolean => Math.abs(ratio / wanted - 1) <= MOST_ERROR + EPSILON;

/** Ratios of a length in the wrong unit to the right one. */
const WRONG_UNITS = [
  { ratio: 1 / MM_PER_INCH, looks: 'inches', typed: (value: number) => `${trim(value)}in` },
  { ratio: 1 / 10, looks: 'centimetres', typed: (value: number) => `${trim(value)}cm` },
  {
    ratio: MM_PER_INCH,
    looks: 'millimetres read as inches',
    typed: (value: number) => `${trim(value / MM_PER_INCH)}mm`,
  },
] as const;

const trim = (value: number): string => String(Number(value.toFixed(4)));

const questions = (nominal: ProofLengths, key: Key, value: number): Complaint => {
  const wanted = nominal[key];
  const at = [PLACES[key]];
  const unit = WRONG_UNITS.find(({ ratio }) => near(value / wanted, ratio));
  if (unit !== undefined)
    return {
      at,
      says: say`${key} should be near ${mm(wanted)}, so what was measured looks like ${unit.looks}`,
      hint: say`${unit.typed(value)}`,
    };
  const off = Math.abs(value / wanted - 1) * 100;
  return {
    at,
    says: say`${key} should be near ${mm(wanted)} and ${mm(value)} is ${off.toFixed(1)} % off; no printer is out by more than ${MOST_ERROR * 100} %`,
    remedy: say`measure again, on the proof sheet for this paper`,
  };
};

/**
 * A printer's error from the lengths of its proof. Sides u and v and the skew between them follow from
 * d1² = |u + v|² and d2² = |u - v|², so the skew's sine is (d1² - d2²) / (4 x y); without diagonals it is 0.
 * @returns complaints at `measuredX` and so on: nonsense, a wrong unit, sides swapped, a page fitted to its paper, one
 * diagonal without the other, diagonals that do not match the sides, and any length over 3 % off
 * @example
 * ```ts
 * const proof = drawProof(paper, 6, 'mm');
 * if (proof.ok) {
 *   const { x, y } = proof.value.lengths;
 *   const error = readProof(proof.value.lengths, { x: 1.005 * x, y });
 *   if (error.ok) console.log(error.value.x.toFixed(3)); // 1.005
 * }
 * ```
 */
export const readProof = (nominal: ProofLengths, measured: MeasuredProof): Result<PrinterError> => {
  const { x, y, d1, d2 } = measured;
  const given = (
    [
      ['x', x],
      ['y', y],
      ['d1', d1],
      ['d2', d2],
    ] as const
  ).flatMap(([key, value]) => (value === undefined ? [] : [{ key, value, ratio: value / nominal[key] }]));

  const nonsense = given
    .filter(({ value }) => !(value > 0 && Number.isFinite(value)))
    .map(
      ({ key }): Complaint => ({
        at: [PLACES[key]],
        says: say`${key} must be a length over 0, near ${mm(nominal[key])}`,
      }),
    );
  if ((d1 === undefined) !== (d2 === undefined)) {
    const missing = d1 === undefined ? 'd1' : 'd2';
    nonsense.push({
      at: [PLACES[missing]],
      says: say`one diagonal is no use without the other: ${missing} is missing`,
      remedy: say`measure both, or remove both`,
    });
  }
  if (nonsense.length > 0) return refuse(...nonsense);

  const off = given.filter(({ ratio }) => !near(ratio, 1));
  const swapped = near(x / nominal.y, 1) && near(y / nominal.x, 1);
  if (off.length > 0 && swapped)
    return refuse({
      at: [PLACES.x],
      says: say`x and y are swapped: x runs across the foot of the sheet and should be near ${mm(nominal.x)}, y up its left side and near ${mm(nominal.y)}`,
      remedy: say`give x as ${mm(y)} and y as ${mm(x)}`,
    });
  const [first] = off;
  if (first !== undefined && off.length === given.length && isFitted(given.map(({ ratio }) => ratio)))
    return refuse({
      at: [PLACES.x],
      says: say`everything is about ${percentOf(first.ratio)} of its size: the page was fitted to the paper, or this is another proof sheet`,
      remedy: say`print the proof sheet for this paper again at 100 %, with no scaling`,
    });
  if (off.length > 0) return refuse(...off.map(({ key, value }) => questions(nominal, key, value)));

  if (d1 === undefined || d2 === undefined) return accept({ x: x / nominal.x, y: y / nominal.y, skew: 0 });
  const diagonal = Math.hypot(x, y);
  const meant = Math.sqrt((d1 * d1 + d2 * d2) / 2);
  if (Math.abs(meant / diagonal - 1) > MOST_DISAGREEMENT)
    return refuse({
      at: [PLACES.d1],
      says: say`sides of ${mm(x)} and ${mm(y)} have diagonals of about ${mm(diagonal)}, not ${mm(meant)}: one of the four is wrong`,
      remedy: say`measure all four again`,
    });
  const skew = (d1 * d1 - d2 * d2) / (4 * x * y);
  if (Math.abs(skew) > MOST_ERROR)
    return refuse({
      at: [PLACES.d1],
      says: say`the diagonals ${mm(d1)} and ${mm(d2)} differ by more than any printer's skew makes them`,
      remedy: say`measure both again, from corner to corner`,
    });
  return accept({ x: x / nominal.x, y: y / nominal.y, skew });
};

/** Whether all lengths are scaled alike, by no more than fitting to another paper or to wide margins causes. */
const isFitted = (ratios: readonly number[]): boolean => {
  const [least, most] = [Math.min(...ratios), Math.max(...ratios)];
  return least > 0.6 && most < 1.5 && most / least < 1.01;
};

const percentOf = (ratio: number): Phrase => say`${(ratio * 100).toFixed(0)} %`;
