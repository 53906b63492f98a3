import highsLoader, { type LegacyHighs } from 'highs';
import { describe, expect, it } from 'vitest';
import { breakOut } from '../../src/stock/search/breakOut.ts';
import { exactYields } from '../stock/exactBoards.ts';
import { SAW } from '../stock/randomBoards.ts';
import { smallSet } from '../stock/smallSet.ts';

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
