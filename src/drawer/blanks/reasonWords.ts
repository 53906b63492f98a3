import type { Reason } from '../../stock/breakout.ts';
import { listNames } from '../../units/listNames.ts';
import type { PartBlank } from './partBlanks.ts';

/** Why a blank lies where it does, in a few words: `runs through with Thread`, `the only board wide enough`. */
export const reasonWords = (why: Reason, blanks: readonly PartBlank[]): string => {
  switch (why.kind) {
    case 'cut already':
      return 'cut already';
    case 'runs through':
      return `runs through with ${listNames([...new Set(why.with.flatMap((index) => blanks[index]?.drawer ?? []))])}`;
    case 'only board':
      return ONLY[why.for];
    case 'beside':
      return 'beside its other side';
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
