import { describe, expect, it } from 'vitest';
import type { Breakout } from '../../../src/stock/breakout.ts';
import type { Defect, Plank } from '../../../src/stock/plank.ts';
import { breakOut } from '../../../src/stock/search/breakOut.ts';
import type { RunWish, Wanted, Zone } from '../../../src/stock/wanted.ts';
import { gradedPlank, numbers, plank, rectangle, SAW, want } from '../randomBoards.ts';
import { faultsOf } from '../sawOut.ts';

const blanksOf = ({ boards }: Breakout) =>
  boards.flatMap(({ plank, blanks }) => blanks.map((blank) => ({ ...blank, plank })));

describe('figure that is to run through', () => {
  const board = plank(rectangle(0, 0, 2000, 200));

  it('lies end to end, one kerf apart, in its order', () => {
    const wanted = [want(400, 80), want(500, 80), want(300, 70)];
    const result = breakOut([board], wanted, [{ kind: 'row', pieces: [2, 0, 1] }], SAW);
    const [a, b, c] = [2, 0, 1].map((piece) => blanksOf(result).find(({ wanted }) => wanted === piece));
    expect(result.runs).toEqual([{ plank: 0 }]);
    expect([b?.x, c?.x]).toEqual([(a?.x ?? 0) + 303, (a?.x ?? 0) + 706]);
    expect([b?.y, c?.y]).toEqual([a?.y, a?.y]);
    expect(a?.why).toEqual({ kind: 'runs through', with: [0, 1] });
  });

  it('lies side by side from the bottom up', () => {
    const wanted = [want(400, 60), want(400, 80)];
    const result = breakOut([board], wanted, [{ kind: 'stack', pieces: [1, 0] }], SAW);
    const [lower, upper] = [1, 0].map((piece) => blanksOf(result).find(({ wanted }) => wanted === piece));
    expect(result.runs).toEqual([{ plank: 0 }]);
    expect(upper?.x).toBe(lower?.x);
    expect(upper?.y).toBe((lower?.y ?? 0) + 83);
  });

  it('is given up where a board cannot hold it, and its pieces are cut all the same', () => {
    const wanted = [want(1200, 180), want(1200, 180)];
    const result = breakOut([board, board], wanted, [{ kind: 'row', pieces: [0, 1] }], SAW);
    expect(result).toMatchObject({ runs: [{}], missing: [], bound: 2 });
  });
});

describe('a board', () => {
  it('takes a blank that needs all of it between its ends', () => {
    const board = plank(rectangle(40, 15, 650, 118));
    expect(breakOut([board], [want(600, 118)], [], SAW)).toMatchObject({ missing: [], bound: 1 });
    expect(breakOut([board], [want(600.01, 118)], [], SAW).missing).toEqual([0]);
    expect(breakOut([board], [want(600, 118.01)], [], SAW).missing).toEqual([0]);
  });

  it('loses nothing at a clean end', () => {
    const board = plank(rectangle(0, 0, 600, 118), { clean: { left: true, right: true } });
    const result = breakOut([board], [want(600, 118)], [], SAW);
    expect(result.boards[0]).toMatchObject({ cuts: [], blanks: [{ x: 0, y: 0, piece: 0 }] });
  });

  it.each([
    ['along its length, short ones', 'long', [500, 80], [240, 80]],
    ['across its width, narrow ones', 'cup', [300, 110], [300, 40]],
  ] as const)('that is bent gives small parts before others: %s', (_what, bow, large, small) => {
    const board = plank(rectangle(0, 0, bow === 'long' ? 1200 : 800, 120));
    const wanted = [large, small, large, small].map(([length, width]) => want(length, width));
    for (const bent of [0, 1]) {
      const boards = [0, 1].map((i) => (i === bent ? { ...board, bow } : board));
      const result = breakOut(boards, wanted, [], SAW);
      const [large1, small1, large2, small2] = [0, 1, 2, 3].map((id) =>
        blanksOf(result).find(({ wanted }) => wanted === id),
      );
      expect([large1?.plank, large2?.plank]).toEqual([1 - bent, 1 - bent]);
      expect([small1?.plank, small2?.plank]).toEqual([bent, bent]);
      expect([small1?.why, small2?.why]).toEqual([{ kind: 'bow' }, { kind: 'bow' }]);
    }
  });

  it('that is bent costs no board more', () => {
    const [flat, bent] = [
      plank(rectangle(0, 0, 1400, 120)),
      plank(rectangle(0, 0, 500, 120), { bow: 'long' }),
    ];
    const wanted = [want(800, 100), want(400, 100)];
    expect(breakOut([flat, bent], wanted, [], SAW).boards.map(({ plank }) => plank)).toEqual([0]);
  });

  it('is spared where another does', () => {
    const board = plank(rectangle(0, 0, 1000, 200));
    const result = breakOut([{ ...board, keep: true }, board], [want(300, 100)], [], SAW);
    expect(result.boards.map(({ plank }) => plank)).toEqual([1]);
  });

  it('gives a spare where there is room, and is not opened for one', () => {
    const wanted = [want(600, 118), want(600, 118, { spare: true })];
    const [small, large] = [plank(rectangle(0, 0, 650, 118)), plank(rectangle(0, 0, 1300, 118))];
    expect(blanksOf(breakOut([small, small], wanted, [], SAW)).length).toBe(1);
    expect(blanksOf(breakOut([large], wanted, [], SAW)).map(({ why }) => why.kind)).toContain('spare');
  });

  it('turns a side so that its joint is clear of sapwood', () => {
    const sapwood: Defect = { kind: 'sapwood', outline: rectangle(0, 0, 100, 118) };
    const board = plank(rectangle(0, 0, 650, 118), { defects: [sapwood] });
    const zones: Zone[] = [{ from: [0, 0], to: [40, 118] }];
    const side = want(600, 118, { allows: ['sapwood'], zones });
    expect(blanksOf(breakOut([board], [side], [], SAW))).toMatchObject([{ turned: true }]);
    expect(breakOut([board], [{ ...side, allows: [] }], [], SAW).missing).toEqual([0]);
  });

  it('lets a panel lie either way', () => {
    const board = plank(rectangle(0, 0, 350, 400));
    const panel = want(400, 300, { eitherWay: true });
    expect(blanksOf(breakOut([board], [panel], [], SAW))).toMatchObject([{ length: 300, width: 400 }]);
  });
});

/** What must hold of every layout holds of one that is found in a hurry; good ones are for the bench. */
const HASTY = { effort: 0.1 };

interface RandomSet {
  readonly planks: Plank[];
  readonly wanted: Wanted[];
  readonly runs: RunWish[];
}

/** Three drawers with joints, grooves and fronts that run through, from boards with knots and sapwood. */
const randomSet = (seed: number): RandomSet => {
  const random = numbers(seed * 31337);
  const chance = (share: number) => random() < share;
  const planks = Array.from({ length: 4 }, (): Plank => {
    const board = gradedPlank(random, 'common1', { sloping: seed % 2 === 0 });
    const [, , [length, width] = [0, 0]] = board.outline;
    const sapwood: Defect = {
      kind: 'sapwood',
      outline: [
        [0, width - 30],
        [length, width - 14],
        [length, width + 5],
        [0, width + 5],
      ],
    };
    return {
      ...board,
      clean: { left: chance(0.2), right: chance(0.2) },
      defects: [...board.defects, ...(chance(0.6) ? [sapwood] : [])],
    };
  });
  const allows = seed % 3 === 0 ? [] : (['sapwood', 'sound knot'] as const);
  const zones = (length: number, width: number, left: boolean): Zone[] => [
    { from: [left ? 0 : length - 30, 0], to: [left ? 30 : length, width] },
    { from: [0, 14], to: [length, 19] },
  ];
  const part = (length: number, width: number, left: boolean, beside?: string): Wanted =>
    want(length, width, {
      allows,
      zones: zones(length, width, left),
      ...(beside === undefined ? {} : { beside }),
    });
  const wanted = ['a', 'b', 'c'].flatMap((drawer) => [
    part(310, 88, true),
    part(420, 88, true, drawer),
    part(420, 88, false, drawer),
    want(310, 68, { allows }),
  ]);
  const runs: RunWish[] = [{ kind: seed % 5 < 3 ? 'row' : 'stack', pieces: [0, 4, 8] }];
  return {
    planks,
    wanted: [...wanted, want(310, 88, { spare: true }), want(300, 200, { eitherWay: true })],
    runs,
  };
};

describe('a set with joints, grooves, sapwood and running figure', () => {
  for (const seed of [1, 2, 3, 4])
    it(`can be sawn, and sawn on from half of its cuts, set ${seed}`, () => {
      const { planks, wanted, runs } = randomSet(seed);
      const whole = breakOut(planks, wanted, runs, SAW, HASTY);
      expect(faultsOf(planks, wanted, SAW, whole)).toEqual([]);
      const [layout] = whole.boards;
      if (layout === undefined) return;
      const cuts = layout.cuts.slice(0, Math.ceil(layout.cuts.length / 2));
      const freed = new Set(cuts.flatMap((_, k) => [2 * k + 1, 2 * k + 2]));
      for (const { piece } of cuts) freed.delete(piece);
      const blanks = layout.blanks.filter(({ piece }) => freed.has(piece));
      const begun = planks.map((board, i) =>
        i === layout.plank ? { ...board, done: { cuts, blanks } } : board,
      );
      // One part more than was thought: what is left of the board is laid out anew.
      const more = [...wanted, want(200, 50)];
      const rest = breakOut(begun, more, runs, SAW, HASTY);
      expect(faultsOf(begun, more, SAW, rest)).toEqual([]);
      expect(rest.boards.find(({ plank }) => plank === layout.plank)?.cuts.slice(0, cuts.length)).toEqual(
        cuts,
      );
      expect(rest.missing).toEqual(whole.missing);
    });

  it('stays laid out as it was told while it is cut', () => {
    const { planks, wanted, runs } = randomSet(25);
    const whole = breakOut(planks, wanted, runs, SAW, HASTY);
    const [layout] = whole.boards;
    const cuts = layout?.cuts.slice(0, 3) ?? [];
    const begun = planks.map((board, i) =>
      i === layout?.plank ? { ...board, done: { cuts, blanks: [] } } : board,
    );
    expect(cuts.length).toBe(3);
    const places = ({ boards }: Breakout) => boards.map(({ plank, cuts }) => ({ plank, cuts }));
    expect(places(breakOut(begun, wanted, runs, SAW, HASTY))).toEqual(places(whole));
  });

  it('is laid out the same each time', () => {
    const { planks, wanted, runs } = randomSet(7);
    expect(breakOut(planks, wanted, runs, SAW, HASTY)).toEqual(breakOut(planks, wanted, runs, SAW, HASTY));
  });

  it('tells how far it is, in steps of a hundredth or more, never back, and its end once', () => {
    for (const seed of [1, 2]) {
      const { planks, wanted, runs } = randomSet(seed);
      const told: { readonly share: number; readonly best: Breakout }[] = [];
      const onProgress = (share: number, best: Breakout) => told.push({ share, best });
      const answer = breakOut(planks, wanted, runs, SAW, { ...HASTY, onProgress });
      const steps = told.map(({ share }, i) => share - (told[i - 1]?.share ?? 0));
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(0.0099);
      expect(Math.max(...steps)).toBeLessThan(0.35);
      expect(told.length).toBeGreaterThan(12);
      expect(told.at(-1)).toEqual({ share: 1, best: answer });
      // The first layout comes at once, and can be sawn.
      expect(faultsOf(planks, wanted, SAW, told[0]?.best ?? answer)).toEqual([]);
      expect(breakOut(planks, wanted, runs, SAW, HASTY)).toEqual(answer);
    }
  });

  it('tells how far it is where a board is cut already, too', () => {
    const { planks, wanted, runs } = randomSet(3);
    const [first] = breakOut(planks, wanted, runs, SAW, HASTY).boards;
    const cuts = first?.cuts.slice(0, 2) ?? [];
    const begun = planks.map((board, i) =>
      i === first?.plank ? { ...board, done: { cuts, blanks: [] } } : board,
    );
    for (const more of [[], [want(200, 50)]]) {
      const shares: number[] = [];
      const onProgress = (share: number) => shares.push(share);
      breakOut(begun, [...wanted, ...more], runs, SAW, { ...HASTY, onProgress });
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(shares.filter((share) => share === 1)).toHaveLength(1);
      expect(shares.length).toBeGreaterThan(12);
    }
  });
});
