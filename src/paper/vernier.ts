import { MM_PER_INCH, type Unit } from '../units/unit.ts';

/** A scale printed along a line, back from its end, that divides the marks of a rule laid beside it. */
export interface Vernier {
  /** Distance between two marks of the rule, mm. */
  readonly mark: number;
  /** Into how many parts it is divided. */
  readonly parts: number;
}

/** For rules in mm, to 0.1 mm; for rules in sixteenths of an inch, to 1/128 in. */
export const VERNIERS: Readonly<Record<Unit, Vernier>> = {
  mm: { mark: 1, parts: 10 },
  in: { mark: MM_PER_INCH / 16, parts: 8 },
};

/** To what a vernier is read, mm. */
export const vernierStep = ({ mark, parts }: Vernier): number => mark / parts;

/**
 * Distances of a vernier's marks from the end of its line, mm, the first 0. Each is one part more than a mark of the rule
 * from the next (a retrograde vernier): where the line ends k parts past a mark of the rule, the vernier's mark k meets one.
 */
export const vernierMarks = ({ mark, parts }: Vernier): number[] =>
  Array.from({ length: parts + 1 }, (_, k) => k * (mark + mark / parts));
