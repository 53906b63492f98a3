import { describe, expect, it } from 'vitest';
import { breakOut } from '../../src/stock/search/breakOut.ts';
import type { Wanted } from '../../src/stock/wanted.ts';
import { gradedPlank, numbers, SAW, want } from './randomBoards.ts';
import { faultsOf } from './sawOut.ts';

const GRADES = ['fas', 'selects', 'common1', 'common2'] as const;

/** Blanks of a few sizes that two boards or three hold. */
const blanks = (random: () => number): Wanted[] => {
  const sizes = Array.from({ length: 4 }, () => [300 + random() * 330, 70 + random() * 70].map(Math.round));
  return Array.from({ length: 12 }, () => {
    const [length = 0, width = 0] = sizes[Math.floor(random() * 4)] ?? [];
    return want(length, width);
  });
};

describe('a layout of random boards', () => {
  for (let seed = 1; seed <= 8; seed++)
    it(`can be sawn, set ${seed}`, () => {
      const random = numbers(seed * 7919);
      const grade = GRADES[seed % 4] ?? 'fas';
      const planks = Array.from({ length: 4 }, () => gradedPlank(random, grade, { sloping: seed % 2 === 0 }));
      const wanted = blanks(random);
      const breakout = breakOut(planks, wanted, [], SAW, { effort: 0.1 });
      expect(faultsOf(planks, wanted, SAW, breakout)).toEqual([]);
      expect(breakout.boards.flatMap(({ blanks }) => blanks).length).toBeGreaterThan(3);
    });
});
