import type { TextRun } from './block.ts';
import type { TypeSizes } from './typeSizes.ts';

/** A measure to be read from afar, never broken. */
export const figure = (number: string, type: TypeSizes, weight: TextRun['weight'] = 'bold'): TextRun[] => [
  { text: number.replaceAll(' ', '\u00A0'), size: type.figure, weight },
];
