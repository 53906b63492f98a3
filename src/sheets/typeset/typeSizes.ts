import type { TextRun } from './block.ts';
/** The ems of a sheet that is read at arm's length, in mm. */
export interface TypeSizes {
  readonly title: number;
  readonly heading: number;
  /** Of the numbers that are worked to. */
  readonly figure: number;
  readonly text: number;
  readonly note: number;
}

/** Type so many times its usual size; numbers are no smaller than 5 mm, and nothing is smaller than 3.3 mm. */
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
