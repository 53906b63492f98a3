import { describe, expect, it } from 'vitest';
import type { Breakout } from '../../../src/stock/breakout.ts';
import type { Plank } from '../../../src/stock/plank.ts';
import { breakOut } from '../../../src/stock/search/breakOut.ts';
import type { RunWish, Wanted } from '../../../src/stock/wanted.ts';
import { gradedPlank, numbers, plank, rectangle, SAW, want } from '../randomBoards.ts';
import { faultsOf } from '../sawOut.ts';

const blanksOf = ({ boards }: Breakout) => boards.flatMap(({ blanks }) => blanks);
/** What comes out of one board, by its places from the left. */
const inOrder = (result: Breakout): number[] =>
  blanksOf(result)
    .toSorted((a, b) => a.x - b.x)
    .map(({ wanted }) => wanted);

describe('a list that runs through', () => {
  // A knot over the whole width: only the longer of two goes before it.
  const knot = { kind: 'loose knot', outline: rectangle(540, 0, 50, 100) } as const;
  const board = plank(rectangle(0, 0, 950, 100), { defects: [knot] });
  const row: RunWish = { kind: 'row', pieces: [0, 1] };
  const wanted = [want(300, 90), want(500, 90)];

  it('is turned, and so reversed, where it has room only so', () => {
    const result = breakOut([board], wanted, [row], SAW);
    expect(result).toMatchObject({ missing: [], runs: [{ plank: 0 }] });
    expect(inOrder(result)).toEqual([1, 0]);
    expect(blanksOf(result).map(({ turned }) => turned)).toEqual([true, true]);
    expect(faultsOf([board], wanted, SAW, result)).toEqual([]);
  });

  it('begins at the end at which fronts begin: turned from the right one, not turned from the left one', () => {
    const clear = plank(rectangle(0, 0, 950, 100));
    for (const [figure, order, turned] of [
      ['left', [0, 1], false],
      ['right', [1, 0], true],
    ] as const) {
      const boards = [{ ...clear, figure }];
      const result = breakOut(boards, wanted, [row], SAW);
      expect(inOrder(result)).toEqual(order);
      expect(blanksOf(result).map((blank) => blank.turned)).toEqual([turned, turned]);
      expect(faultsOf(boards, wanted, SAW, result)).toEqual([]);
    }
    // Its first front lies where the end that is lost ends.
    const right = blanksOf(breakOut([{ ...clear, figure: 'right' }], wanted, [row], SAW));
    expect(Math.max(...right.map(({ x, length }) => x + length))).toBe(950 - SAW.ends);
  });

  it('is met all the same where it has room only from the other end', () => {
    const result = breakOut([{ ...board, figure: 'left' }], wanted, [row], SAW);
    expect(result).toMatchObject({ missing: [], runs: [{ plank: 0 }] });
    expect(inOrder(result)).toEqual([1, 0]);
  });
});

describe('fronts', () => {
  const board = plank(rectangle(0, 0, 1600, 120));
  const side = want(440, 100, { stock: 'side' });
  const wanted = [side, want(300, 100), side, want(300, 110)];

  it('lie nearer than other parts to the end at which they begin', () => {
    const left = inOrder(breakOut([{ ...board, figure: 'left' }], wanted, [], SAW));
    expect(left.slice(0, 2).sort()).toEqual([1, 3]);
    const right = inOrder(breakOut([{ ...board, figure: 'right' }], wanted, [], SAW));
    expect(right.slice(2).sort()).toEqual([1, 3]);
  });

  it('lie there in a board that is cut on, and the cuts begin with those that were made', () => {
    const begun: Plank = { ...board, figure: 'right' };
    const whole = breakOut([begun], wanted, [], SAW);
    const [{ cuts = [], blanks = [] } = {}] = whole.boards;
    for (const count of [1, 3, cuts.length]) {
      const made = cuts.slice(0, count);
      const there = new Set([0]);
      made.forEach(({ piece }, k) => {
        there.delete(piece);
        there.add(2 * k + 1).add(2 * k + 2);
      });
      const boards = [
        { ...begun, done: { cuts: made, blanks: blanks.filter(({ piece }) => there.has(piece)) } },
      ];
      expect(breakOut(boards, wanted, [], SAW).boards.map((layout) => layout.cuts)).toEqual([cuts]);
      const more = breakOut(boards, [...wanted, want(60, 50)], [], SAW);
      expect(more.boards[0]?.cuts.slice(0, count)).toEqual(made);
      expect(faultsOf(boards, [...wanted, want(60, 50)], SAW, more)).toEqual([]);
    }
  });

  it('cost no board more where it is said at which end they begin', () => {
    for (const seed of [1, 2]) {
      const random = numbers(seed * 4241);
      const stocks = ['front', 'side'] as const;
      const planks = Array.from({ length: 2 }, () =>
        gradedPlank(random, 'selects', { sloping: seed === 2, stocks }),
      );
      const parts = Array.from(
        { length: 8 },
        (_, i): Wanted =>
          want(Math.round(280 + random() * 300), Math.round(60 + random() * 60), {
            stock: i % 2 === 0 ? 'front' : 'side',
            allows: ['sound knot'],
            zones: [{ from: [0, 0], to: [40, 60] }],
          }),
      );
      const begun = planks.map((each, i): Plank => ({ ...each, figure: i % 2 === 0 ? 'right' : 'left' }));
      const hasty = { effort: 0.1 };
      const result = breakOut(begun, parts, [{ kind: 'row', pieces: [0, 2] }], SAW, hasty);
      expect(faultsOf(begun, parts, SAW, result)).toEqual([]);
      const free = breakOut(planks, parts, [{ kind: 'row', pieces: [0, 2] }], SAW, hasty);
      expect(result.boards.length).toBe(free.boards.length);
      expect(result.missing).toEqual(free.missing);
    }
  });
});
