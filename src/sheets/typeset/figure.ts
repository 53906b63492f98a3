import type { TextRun } from './block.ts';
import type { TypeSizes } from './typeSizes.ts';

/** A measure to be read from afar: what is left over of a fraction of an inch is set small after it. */
export const figure = (number: string, type: TypeSizes, weight: TextRun['weight'] = 'bold'): TextRun[] => {
  const [, main = number, over] = /^(.*?) ([+−]\.\d+.*)$/u.exec(number) ?? [];
  const large: TextRun = { text: main.replaceAll(' ', '\u00A0'), size: type.figure, weight };
  return over === undefined ? [large] : [large, { text: over, size: type.note, weight: 'regular' }];
};
