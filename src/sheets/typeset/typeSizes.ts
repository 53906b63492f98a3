import type { TextRun } from './block.ts';

/** Ems of a sheet that is read at arm's length, mm. */
export interface TypeSizes {
  readonly title: number;
  readonly heading: number;
  /** Of the numbers to work to. */
  readonly figure: number;
  readonly text: number;
  readonly note: number;
}

/** Type sizes as a multiple of the usual ones; numbers at least 5 mm, and all others at least 3.3 mm. */
export const typeSizes = (times: number): TypeSizes => ({
  title: 9 * times,
  heading: 4.2 * times,
  figure: Math.max(5, 5 * times),
  text: 3.9 * times,
  note: Math.max(3.3, 3.4 * times),
});

/** A measure to be read from afar, never broken. */
export const figure = (number: string, type: TypeSizes, weight: TextRun['weight'] = 'bold'): TextRun[] => [
  { text: number.replaceAll(' ', '\u00A0'), size: type.figure, weight },
];
