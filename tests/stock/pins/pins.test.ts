import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Breakout } from '../../../src/stock/breakout.ts';
import { pinFaults } from '../../../src/stock/pins/pinFaults.ts';
import type { Defect, Plank } from '../../../src/stock/plank.ts';
import { breakOut } from '../../../src/stock/search/breakOut.ts';
import type { PinnedPlace, Wanted } from '../../../src/stock/wanted.ts';
import { gradedPlank, numbers, plank, rectangle, SAW, want } from '../randomBoards.ts';
import { faultsOf } from '../sawOut.ts';
import { smallSet } from '../smallSet.ts';

const HASTY = { effort: 0.1 };

const at = (x: number, y: number, more: Partial<PinnedPlace> = {}): PinnedPlace => ({
  x,
  y,
  turned: false,
  across: false,
  ...more,
});
const pinned = (piece: Wanted, board: number, place?: PinnedPlace): Wanted => ({
  ...piece,
  pin: { plank: board, ...(place && { place }) },
});

const blanksOf = ({ boards }: Breakout) =>
  boards.flatMap(({ plank, blanks }) => blanks.map((blank) => ({ ...blank, plank })));
const blankOf = (answer: Breakout, wanted: number) =>
  blanksOf(answer).find((blank) => blank.wanted === wanted);

/** Whether each pinned piece lies where it was pinned, and nowhere else. */
const strayed = (wanted: readonly Wanted[], answer: Breakout): number[] =>
  wanted.flatMap(({ pin }, i) => {
    if (pin === undefined) return [];
    const own = blankOf(answer, i);
    const { place } = pin;
    const isThere =
      own?.plank === pin.plank &&
      own.why.kind === 'pinned' &&
      (place === undefined ||
        (Math.abs(own.x - place.x) < 1e-3 &&
          Math.abs(own.y - place.y) < 1e-3 &&
          own.turned === place.turned));
    return isThere ? [] : [i];
  });

/** Boards with knots, and blanks of a few sizes that some of them hold. */
const randomSet = (seed: number): { readonly planks: Plank[]; readonly wanted: Wanted[] } => {
  const random = numbers(seed * 7919);
  const figures = [{}, { figure: 'left' }, { figure: 'right' }] as const;
  const planks = Array.from({ length: 3 }, (_, i) => ({
    ...gradedPlank(random, 'common1', { sloping: seed % 2 === 0 }),
    ...figures[(seed + i) % 3],
  }));
  const sizes = Array.from({ length: 4 }, () => [200 + random() * 330, 50 + random() * 60].map(Math.round));
  const wanted = Array.from({ length: 9 }, () => {
    const [length = 0, width = 0] = sizes[Math.floor(random() * 4)] ?? [];
    return want(length, width);
  });
  return { planks, wanted };
};

describe('a pinned blank', () => {
  const board = plank(rectangle(0, 0, 2000, 200));

  it('lies where it is pinned, and the rest round it, to the last piece that there is room for', () => {
    // 547 mm are left on either side of it in each of two rows.
    const wanted = [pinned(want(850, 98), 0, at(575, 51)), ...Array.from({ length: 4 }, () => want(547, 98))];
    const answer = breakOut([board], wanted, [], SAW);
    expect(answer).toMatchObject({ missing: [], bound: 1 });
    expect(strayed(wanted, answer)).toEqual([]);
    expect(faultsOf([board], wanted, SAW, answer)).toEqual([]);
  });

  it('stays on the board that it is pinned to, and the fewest boards are told with it', () => {
    const wanted = [pinned(want(300, 100), 1), want(300, 100)];
    const answer = breakOut([board, board], wanted, [], SAW);
    expect(answer.boards.map(({ plank }) => plank)).toEqual([1]);
    expect(answer.bound).toBe(1);
    const apart = [pinned(want(300, 100), 1), pinned(want(300, 100), 0, at(800, 20))];
    expect(breakOut([board, board], apart, [], SAW)).toMatchObject({ missing: [], bound: 2 });
  });

  it('is turned as it is pinned, also where nothing else tells its ends apart', () => {
    for (const turned of [true, false]) {
      const wanted = [pinned(want(300, 100), 0, at(400, 30, { turned })), want(500, 90)];
      const answer = breakOut([board], wanted, [], SAW);
      expect(strayed(wanted, answer)).toEqual([]);
      expect(blankOf(answer, 0)?.turned).toBe(turned);
    }
  });

  it('may be a panel across the board', () => {
    const wanted = [pinned(want(180, 150, { eitherWay: true }), 0, at(600, 10, { across: true }))];
    expect(blankOf(breakOut([board], wanted, [], SAW), 0)).toMatchObject({
      x: 600,
      y: 10,
      length: 150,
      width: 180,
    });
  });

  it('holds its place in a row whose figure runs through', () => {
    const fronts = [want(400, 80), pinned(want(500, 80), 0, at(900, 60)), want(300, 80)];
    const answer = breakOut([board], fronts, [{ kind: 'row', pieces: [0, 1, 2] }], SAW);
    expect(answer.runs).toEqual([{ plank: 0 }]);
    expect(strayed(fronts, answer)).toEqual([]);
    expect(blankOf(answer, 2)?.x).toBeGreaterThanOrEqual(1403);
    const turned = fronts.map((piece, i) =>
      i === 1 ? pinned(want(500, 80), 0, at(900, 60, { turned: true })) : piece,
    );
    const back = breakOut([board], turned, [{ kind: 'row', pieces: [0, 1, 2] }], SAW);
    expect(back.runs).toEqual([{ plank: 0 }]);
    expect(blankOf(back, 2)?.x).toBeLessThan(600);
  });

  it('gives up the row that it was pinned out of, and is cut all the same', () => {
    const fronts = [pinned(want(400, 80), 0, at(100, 10)), pinned(want(500, 80), 1, at(900, 60))];
    const answer = breakOut([board, board], fronts, [{ kind: 'row', pieces: [0, 1] }], SAW);
    expect(answer).toMatchObject({ runs: [{}], missing: [], bound: 2 });
    expect(strayed(fronts, answer)).toEqual([]);
  });

  it('is cut where it is a second try, which else needs not be', () => {
    const wanted = [want(300, 100), pinned(want(300, 100, { spare: true }), 1, at(100, 10))];
    expect(strayed(wanted, breakOut([board, board], wanted, [], SAW))).toEqual([]);
  });

  it('may lie in what earlier cuts have left', () => {
    const cuts = [{ kind: 'crosscut' as const, piece: 0, at: 1000 }];
    const begun = [{ ...board, done: { cuts, blanks: [] } }];
    const wanted = [pinned(want(300, 100), 0, at(1003, 50)), want(950, 190)];
    const answer = breakOut(begun, wanted, [], SAW);
    expect(answer).toMatchObject({ missing: [], bound: 1 });
    expect(strayed(wanted, answer)).toEqual([]);
    expect(faultsOf(begun, wanted, SAW, answer)).toEqual([]);
  });
});

describe('pins that cannot be', () => {
  const knot: Defect = { kind: 'loose knot', outline: rectangle(900, 80, 40, 40) };
  const board = plank(rectangle(0, 0, 2000, 200), { defects: [knot], stocks: ['front'] });
  const faultOf = (...pieces: Wanted[]) =>
    pinFaults([board, { ...board, thickness: 19 }], pieces, SAW).get(pieces.length - 1);
  const piece = want(300, 100);

  it.each([
    ['too near an end', [pinned(piece, 0, at(24, 10))], { is: 'outside' }],
    ['over an edge', [pinned(piece, 0, at(100, 101))], { is: 'outside' }],
    ['on a knot', [pinned(piece, 0, at(800, 50))], { is: 'defect', defect: knot }],
    ['on a board that is too thin', [pinned(piece, 1)], { is: 'thin' }],
    ['on a board for other parts', [pinned({ ...piece, stock: 'side' }, 0)], { is: 'stock' }],
    ['across the grain', [pinned(piece, 0, at(100, 0, { across: true }))], { is: 'grain' }],
    ['too long for the board', [pinned(want(1960, 10), 0)], { is: 'no room' }],
    ['on another', [pinned(piece, 0, at(100, 10)), pinned(piece, 0, at(350, 60))], { is: 'pin', other: 0 }],
    [
      'less than a kerf beside another',
      [pinned(piece, 0, at(100, 10)), pinned(piece, 0, at(402.9, 10))],
      { is: 'pin', other: 0 },
    ],
  ])('are %s', (_, pieces, fault) => {
    expect(faultOf(...pieces)).toEqual(fault);
  });

  it('are four like the sails of a mill, between which no cut passes from edge to edge', () => {
    const mill = [
      pinned(want(200, 60), 0, at(100, 10)),
      pinned(want(80, 120), 0, at(303, 10)),
      pinned(want(200, 60), 0, at(183, 133)),
      pinned(want(80, 120), 0, at(100, 73)),
    ];
    expect(faultOf(...mill.slice(0, 3))).toBeUndefined();
    expect(faultOf(...mill)).toEqual({ is: 'stuck', others: [0, 1, 2] });
  });

  it('are none where places were rounded when they were printed', () => {
    const beside = [pinned(piece, 0, at(100.00005, 10)), pinned(piece, 0, at(402.9999, 10.0001))];
    expect(faultOf(...beside)).toBeUndefined();
    const answer = breakOut([board], beside, [], SAW);
    expect(strayed(beside, answer)).toEqual([]);
    expect(faultsOf([board], beside, SAW, answer)).toEqual([]);
  });
});

describe('the blanks of an answer', () => {
  it.each([1, 3])('pinned where they lie change nothing else of it, set %i', (seed) => {
    const { planks, wanted } = randomSet(seed);
    const answer = breakOut(planks, wanted, [], SAW, HASTY);
    const lying = blanksOf(answer);
    const some = wanted.map((piece, i) => {
      const own = lying.find((blank) => blank.wanted === i);
      return own === undefined || i % 3 === 0
        ? piece
        : pinned(piece, own.plank, at(own.x, own.y, { turned: own.turned }));
    });
    expect(pinFaults(planks, some, SAW)).toEqual(new Map());
    const again = breakOut(planks, some, [], SAW, HASTY);
    expect(again.boards.map(({ cuts }) => cuts)).toEqual(answer.boards.map(({ cuts }) => cuts));
    expect(strayed(some, again)).toEqual([]);
  });

  it.each([3, 5, 7, 8])(
    'pinned with two of a size in each other’s place take no more boards, set %i',
    (seed) => {
      const { planks, wanted } = smallSet(seed);
      const answer = breakOut(planks, wanted, [], SAW, HASTY);
      const lying = blanksOf(answer);
      const isAlike = (one: number, other: number) =>
        one !== other &&
        wanted[one]?.length === wanted[other]?.length &&
        wanted[one]?.width === wanted[other]?.width;
      const first = wanted.findIndex((_, i) => wanted.some((__, j) => isAlike(i, j)));
      const second = wanted.findIndex((_, j) => isAlike(first, j));
      for (const every of [1, 3]) {
        const changed = wanted.map((piece, i) => {
          const place = lying.find(
            (blank) => blank.wanted === (i === first ? second : i === second ? first : i),
          );
          const isPinned = place !== undefined && (i === first || i === second || i % every === 0);
          return isPinned
            ? pinned(piece, place.plank, at(place.x, place.y, { turned: place.turned }))
            : piece;
        });
        const again = breakOut(planks, changed, [], SAW, HASTY);
        expect(strayed(changed, again)).toEqual([]);
        expect(faultsOf(planks, changed, SAW, again)).toEqual([]);
        expect(again).toMatchObject({
          missing: answer.missing.map(() => expect.anything()),
          bound: answer.bound,
        });
        expect(again.boards.length).toBe(answer.boards.length);
      }
    },
  );
});

describe('parts pinned anywhere', () => {
  it('are refused with a reason, or lie there in a layout that can be sawn', () => {
    let [honoured, refused] = [0, 0];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 1e6 }), (seed, spot) => {
        const { planks, wanted } = randomSet(seed);
        const random = numbers(spot);
        const tried = wanted.map((piece, i): Wanted => {
          const board = Math.floor(random() * 3);
          const [x, y] = [25 + Math.round(random() * 1600), Math.round(random() * 150)];
          return i > 5
            ? piece
            : pinned(piece, board, random() < 0.1 ? undefined : at(x, y, { turned: random() < 0.5 }));
        });
        const faults = pinFaults(planks, tried, SAW);
        refused += faults.size;
        const right = tried.map((piece, i) => (faults.has(i) ? (wanted[i] as Wanted) : piece));
        const answer = breakOut(planks, right, [], SAW, HASTY);
        honoured += right.filter(({ pin }) => pin !== undefined).length;
        expect(
          strayed(
            right.map((piece) => (piece.pin?.place ? piece : want(1, 1))),
            answer,
          ),
        ).toEqual([]);
        expect(faultsOf(planks, right, SAW, answer)).toEqual([]);
        expect(answer.bound ?? 0).toBeLessThanOrEqual(answer.boards.length);
      }),
      { numRuns: 6 },
    );
    expect(Math.min(honoured, refused)).toBeGreaterThan(5);
  });
});
