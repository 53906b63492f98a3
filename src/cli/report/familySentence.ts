import type { Family } from '../../drawer/drawer.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';

/** What the drawers of a set have in common. */
export const familySentence = ({ target, spread }: Family, units: Notation): string =>
  `The set keeps to tails of ${formatLength(target, units)}; its widest tail is ${spread.toFixed(2)} times its narrowest.`;
