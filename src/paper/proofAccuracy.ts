import { EPSILON, roundUp } from '../units/epsilon.ts';
import { formatLength } from '../units/formatLength.ts';
import { finest } from '../units/notation.ts';
import { parseLength } from '../units/parseLength.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import type { ProofLengths } from './proofLengths.ts';
import type { MeasuredProof } from './readProof.ts';
import { VERNIERS, vernierMarks, vernierStep } from './vernier.ts';

/** To what a proof was read, mm: the distance between two marks of the rule. */
export interface ProofFineness {
  readonly sides: number;
  readonly diagonals: number;
}

/** The most by which a page is wrong that is corrected with a proof's readings, as shares of a length. */
export interface ProofAccuracy {
  readonly across: number;
  readonly up: number;
  /** How far an upright line may lean for each mm of its length; absent where the diagonals were not measured. */
  readonly skew?: number;
}

/**
 * To what lengths were read on one rule, in mm, from how they are typed: the finest last place (`149.7` tells 0.1 mm,
 * `6-47/64in` tells 1/64 in, with `9in` beside it too), or half of the place before where every reading is a whole number
 * of those, and not all are whole without (`149.5` and `200.0` tell 0.5 mm).
 * @param readings that `parseLength` reads
 */
export const finenessOf = (readings: readonly string[], unit: Unit): number => {
  const places = readings.map((typed) => {
    // ¾ becomes 3⁄4.
    const text = typed.normalize('NFKC');
    const one = parseLength(`1${typed.trim().replace(/^[^a-z"″”'’′]*/iu, '')}`, unit);
    const parts = /[/⁄]\s*(\d+)/u.exec(text)?.[1];
    const decimals = /[.,](\d+)/u.exec(text)?.[1]?.length ?? 0;
    const whole = one.ok ? one.value : 1;
    return { isDecimal: parts === undefined, place: whole / Number(parts ?? 10 ** decimals) };
  });
  const fineness = Math.min(...places.map(({ place }) => place));
  const digits = readings.map((typed) => {
    const length = parseLength(typed, unit);
    return length.ok ? Math.round(length.value / fineness) : 0;
  });
  const inHalves =
    places.every(({ isDecimal }) => isDecimal) &&
    digits.every((digit) => digit % 5 === 0) &&
    digits.some((digit) => digit % 10 !== 0);
  return inHalves ? 5 * fineness : fineness;
};

/**
 * How true a corrected page is, for readings that are each right to half a mark. The correction prints ℓ as ℓ t / m, where
 * m is the reading of a side and t its true length, so it is off by ℓ |t - m| / m at most. The skew, s = (d1² - d2²) /
 * (4 x y), is off by its differential, (d1 δ + d2 δ) / (2 x y) + |s| (δ / x + δ / y); terms in δ² are left out, under a
 * hundredth of it for marks up to 1 mm. A vernier is printed with the error that it measures, and so is off by that share
 * of the way to the mark that is read. That share is taken from the reading, not from the true length: for a vernier of
 * 10 mm at 150 mm the bound may be a fifteenth too small. Readings as fine as a vernier's are taken for its.
 */
export const proofAccuracy = (
  nominal: ProofLengths,
  { x, y, d1, d2 }: MeasuredProof,
  { sides, diagonals }: ProofFineness,
): ProofAccuracy => {
  const [atX, atY] = [slack(x, nominal.x, sides), slack(y, nominal.y, sides)];
  const [across, up] = [atX / x, atY / y];
  if (d1 === undefined || d2 === undefined) return { across, up };
  const skew = (d1 * d1 - d2 * d2) / (4 * x * y);
  const diagonal = d1 * slack(d1, nominal.d1, diagonals) + d2 * slack(d2, nominal.d2, diagonals);
  return { across, up, skew: diagonal / (2 * x * y) + Math.abs(skew) * (across + up) };
};

/** How far the true length may be from a reading, mm. */
const slack = (reading: number, nominal: number, fineness: number): number => {
  const vernier = Object.values(VERNIERS).find((each) => Math.abs(vernierStep(each) - fineness) < EPSILON);
  // At its last mark the rule's next is read.
  const reach = vernier === undefined ? 0 : (vernierMarks(vernier).at(-2) ?? 0);
  return fineness / 2 + reach * Math.abs(reading / nominal - 1);
};

/** What a reader thinks of as a drawer's size, mm: 200 mm, or 8 in. */
const OVER: Readonly<Record<Unit, number>> = { mm: 200, in: 8 * MM_PER_INCH };

/** How true a printer is with its correction, and whether it could be read more finely. */
export const accuracyText = (
  nominal: ProofLengths,
  measured: MeasuredProof,
  fineness: ProofFineness,
  unit: Unit,
): string => {
  const over = OVER[unit];
  // Rounded up, so that what is said holds.
  const within = (share: number): string =>
    unit === 'mm'
      ? formatLength(roundUp(share * over, 100), unit)
      : formatLength(roundUp((share * over) / MM_PER_INCH, 1000) * MM_PER_INCH, finest(unit));
  const { across, up, skew } = proofAccuracy(nominal, measured, fineness);
  const step = vernierStep(VERNIERS[unit]);
  const finer = proofAccuracy(nominal, measured, { sides: step, diagonals: step });
  return [
    `Read to ${markText(fineness.sides, unit)}, a corrected ${formatLength(over, unit)} is true within ${within(across)} across and ${within(up)} up.`,
    skew === undefined
      ? 'The skew was not measured.'
      : `The skew over ${formatLength(over, unit)} is within ${within(skew)}.`,
    ...(finer.across < across
      ? [
          `The verniers on the proof sheet read to ${markText(step, unit)}: then it is true within ${within(finer.across)} across and ${within(finer.up)} up.`,
        ]
      : []),
  ].join(' ');
};

/** The distance between two marks of a rule: `0.5 mm`, `1/64"`. */
const markText = (fineness: number, unit: Unit): string => {
  if (unit === 'mm') return formatLength(fineness, unit);
  const marks = MM_PER_INCH / fineness;
  const isFraction = marks > 1 && Math.abs(marks - Math.round(marks)) < EPSILON && marks <= 128;
  return isFraction ? `1/${Math.round(marks)}"` : formatLength(fineness, finest(unit));
};
