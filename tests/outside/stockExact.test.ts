import highsLoader, { type LegacyHighs } from 'highs';
import { describe, expect, it } from 'vitest';
import type { Plank } from '../../src/stock/plank.ts';
import { breakOut } from '../../src/stock/search/breakOut.ts';
import { exactYields, fewestBoards } from '../stock/exactBoards.ts';
import { GRID_SAW, latticeYields, slopingSet } from '../stock/latticeBoards.ts';
import { rectangle, SAW } from '../stock/randomBoards.ts';
import { smallSet } from '../stock/smallSet.ts';

/** A board of about such a size with a knot in it, on a grid of 10 mm. */
const onGrid = (board: Omit<Plank, 'outline'>, length: number, width: number): Plank => ({
  ...board,
  outline: rectangle(0, 0, 10 * Math.round(length / 10), 10 * Math.round(width / 10)),
  defects: [{ kind: 'loose knot', outline: rectangle(10 * Math.round(length / 40), 40, 60, 20) }],
});

/** The fewest boards whose yields give all that is asked for, by HiGHS; nothing where none do. */
const fewest = async (
  yields: readonly number[][][],
  counts: readonly number[],
): Promise<number | undefined> => {
  // Its types tell of an ES module, but it is a CommonJS one.
  const solver: LegacyHighs = await (highsLoader as unknown as () => Promise<LegacyHighs>)();
  const names = yields.map((list, board) => list.map((_, i) => `z${board}_${i}`));
  const all = names.flat();
  const onePerBoard = names.filter((own) => own.length > 0).map((own) => `${own.join(' + ')} <= 1`);
  const enough = counts.map((count, size) => {
    const terms = yields.flatMap((list, board) =>
      list.flatMap((row, i) => ((row[size] ?? 0) > 0 ? [`${row[size]} ${names[board]?.[i]}`] : [])),
    );
    return `${terms.length === 0 ? `0 ${all[0]}` : terms.join(' + ')} >= ${count}`;
  });
  const { Status, ObjectiveValue } = solver.solve(
    `Minimize\n ${all.join(' + ')}\nSubject To\n ${[...onePerBoard, ...enough].join('\n ')}\nBinary\n ${all.join(' ')}\nEnd`,
  );
  return Status === 'Optimal' ? Math.round(ObjectiveValue) : undefined;
};

describe('a small set', () => {
  for (let seed = 1; seed <= 8; seed++)
    it(`is cut out of as few boards as an exact recursion and HiGHS find, and that is proved, set ${seed}`, async () => {
      const { planks, sizes, wanted } = smallSet(seed);
      const counts = sizes.map(({ count }) => count);
      const least = await fewest(
        planks.map((board) => exactYields(board, sizes, SAW)),
        counts,
      );
      const { boards, missing, bound } = breakOut(planks, wanted, [], SAW);
      if (least === undefined) expect(missing).not.toEqual([]);
      else {
        expect(missing).toEqual([]);
        expect(boards.length).toBe(least);
        expect(bound).toBe(least);
      }
    });
});

describe('a small set of boards that slope at every side', () => {
  it('is cut out of no more boards than every place of a grid gives, and never proved to need more', () => {
    let [compared, proved] = [0, 0];
    for (let seed = 1; seed <= 10; seed++) {
      const { planks, sizes, wanted } = slopingSet(seed);
      const least = fewestBoards(planks, sizes, GRID_SAW, latticeYields);
      if (least === undefined) continue;
      const { boards, missing, bound } = breakOut(planks, wanted, [], GRID_SAW);
      expect(missing, `set ${seed}`).toEqual([]);
      expect(boards.length, `set ${seed}`).toBeLessThanOrEqual(least);
      expect(bound, `set ${seed}`).toBeLessThanOrEqual(least);
      compared++;
      if (bound === boards.length) proved++;
    }
    expect(compared).toBeGreaterThan(6);
    expect(proved / compared).toBeGreaterThan(0.7);
  });

  it('gives what an exact recursion finds where its sides are straight and square', () => {
    const { planks, sizes } = smallSet(1);
    const square = planks.map(({ outline: [, , [length = 0, width = 0] = []], ...board }) =>
      onGrid(board, length / 3, width),
    );
    const small = sizes.map(({ length, width, count }) => ({
      length: 10 * Math.ceil(length / 30),
      width: 10 * Math.ceil(width / 10),
      count: Math.min(count, 3),
    }));
    const told = (yields: number[][]) => yields.map(String).sort();
    for (const board of square)
      expect(told(latticeYields(board, small, GRID_SAW))).toEqual(told(exactYields(board, small, GRID_SAW)));
  });
});
