import type { Plank } from '../../stock/plank.ts';
import type { PartBlank } from './partBlanks.ts';

/** `Buttons front 2`, `Buttons left side 1`, `Cloth front 1, strip 2`, `Cloth front, spare`: of equal parts each has its number. */
export const blankName = ({ drawer, part, index, strip, spare }: PartBlank): string => {
  // Sides come in pairs: the first of each is the left one.
  const side = part === 'side' || part === 'slip';
  const hand = side && index !== undefined ? `${index % 2 === 1 ? 'left' : 'right'} ` : '';
  const number = index === undefined ? '' : ` ${side ? Math.ceil(index / 2) : index}`;
  return `${drawer} ${hand}${part}${number}${strip === undefined ? '' : `, strip ${strip}`}${spare ? ', spare' : ''}`;
};

/** `Ash 2`, or where there are several of that name `Ash 2 no. 1`. */
export const plankName = ({ name, copy }: Plank, planks: readonly Plank[]): string =>
  planks.some((other) => other.name === name && other.copy !== copy) ? `${name} no. ${copy}` : name;
