import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/drawing/drawing.ts';
import type { Plank } from '../../../src/stock/plank.ts';
import { binsOf } from '../../../src/stock/search/bin.ts';
import { poolOf } from '../../../src/stock/search/pool.ts';
import { leastBoards } from '../../../src/stock/search/proveBoards.ts';
import type { Wanted } from '../../../src/stock/wanted.ts';
import { areaOf, blankTypes } from '../../../src/stock/wood/blankType.ts';
import { looserPlank } from '../../../src/stock/wood/looserPlank.ts';
import { fewestBoards } from '../exactBoards.ts';
import { plank, rectangle, SAW, want } from '../randomBoards.ts';
import { smallSet } from '../smallSet.ts';

/** What is proved where next to nothing of the boards' patterns is known. */
const provedBlindly = (planks: readonly Plank[], wanted: readonly Wanted[]): number => {
  const types = blankTypes(
    planks,
    wanted,
    wanted.map((_, i) => i),
  );
  const demand = types.map(({ pieces }) => pieces.length);
  const search = { types, most: demand, prices: types.map(areaOf), breadth: 1, steps: 50 };
  const pools = planks
    .flatMap((board, i) => binsOf(looserPlank(board), i, types, SAW))
    .map((bin) => ({ ...poolOf(bin, search), complete: false }));
  return leastBoards(pools, types, demand, 50);
};

/** A board that is cut to the rectangle inside it gives no more than the whole. */
const sloping = (board: Plank): Plank => {
  const [, , [length, width] = [0, 0]] = board.outline;
  const outline: Point[] = [
    [-9, -11],
    [length, 0],
    [length + 8, width + 17],
    [0, width],
  ];
  return { ...board, outline };
};

describe('the fewest boards that are proved to be needed', () => {
  const seeds = Array.from({ length: 6 }, (_, i) => i + 1);

  it('are never more than an exact recursion needs, and most of them where boards are rectangles', () => {
    let [proved, needed] = [0, 0];
    for (const seed of seeds) {
      const { planks, sizes, wanted } = smallSet(seed);
      const fewest = fewestBoards(planks, sizes, SAW) ?? Number.POSITIVE_INFINITY;
      const bound = provedBlindly(planks, wanted);
      expect(bound, `set ${seed}`).toBeLessThanOrEqual(fewest);
      // A sloping board round each rectangle holds at least as much.
      expect(provedBlindly(planks.map(sloping), wanted), `set ${seed}`).toBeLessThanOrEqual(fewest);
      if (fewest < Number.POSITIVE_INFINITY) [proved, needed] = [proved + bound, needed + fewest];
    }
    expect(proved / needed).toBeGreaterThan(0.6);
  });

  it('are all boards and no more where each holds one blank exactly', () => {
    const boards = [1, 2, 3].map(() => plank(rectangle(0, 0, 650, 118)));
    const blanks = boards.map(() => want(600, 118));
    expect(provedBlindly(boards, blanks)).toBe(3);
  });
});
