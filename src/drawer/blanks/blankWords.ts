import type { Reason } from '../../stock/breakout.ts';
import type { Plank } from '../../stock/plank.ts';
import { listNames } from '../../units/listNames.ts';
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

/** Why a blank lies where it does, in a few words: `runs through with Thread`, `the only board wide enough`. */
export const reasonWords = (why: Reason, blanks: readonly PartBlank[]): string => {
  switch (why.kind) {
    case 'cut already':
      return 'cut already';
    case 'pinned':
      return 'pinned here';
    case 'runs through':
      return `runs through with ${listNames([...new Set(why.with.flatMap((index) => blanks[index]?.drawer ?? []))])}`;
    case 'only board':
      return ONLY[why.for];
    case 'beside':
      return 'beside its drawer’s other side';
    case 'same board':
      return 'with its drawer’s other side';
    case 'bow':
      return 'a small part out of a bent board';
    case 'spare':
      return 'a second try, as there was room';
    case 'least waste':
      return 'so the least is lost';
  }
};

const ONLY = {
  stock: 'the only board for it',
  width: 'the only board wide enough',
  length: 'the only board long enough',
  'clear wood': 'the only board with so much clear wood',
} as const;

/** Without A to D, which name corners, and without I and O, which read as numbers. */
const LETTERS = 'EFGHJKLMNPQRSTUVWXYZ';

/** The letters of one blank, by its place in the list of all: `E` to `Z`, then `EE`, `EF` and so on; none is another's. */
export const blankLetters = (index: number): string => {
  const last = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length ? last : blankLetters(Math.floor(index / LETTERS.length) - 1) + last;
};
