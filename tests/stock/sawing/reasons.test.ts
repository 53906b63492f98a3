import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/drawing/drawing.ts';
import type { Blank, Breakout } from '../../../src/stock/breakout.ts';
import type { Plank } from '../../../src/stock/plank.ts';
import { breakOut } from '../../../src/stock/search/breakOut.ts';
import type { RunWish, Wanted } from '../../../src/stock/wanted.ts';
import { box, holds, meet } from '../latticeBoards.ts';
import { plank, rectangle, SAW, want } from '../randomBoards.ts';

const between = (min: number, max: number) => fc.integer({ min, max });

const board: fc.Arbitrary<Plank> = fc
  .record({
    size: fc.tuple(between(380, 900), between(80, 190)),
    skew: fc.constantFrom(0, 0, 8),
    stocks: fc.constantFrom(['front'] as const, ['side'] as const, ['front', 'side'] as const),
    thickness: fc.constantFrom(14, 25, 25),
    clean: fc.record({ left: fc.boolean(), right: fc.boolean() }),
    bow: fc.constantFrom(undefined, undefined, 'long' as const, 'cup' as const),
    marred: fc.array(fc.tuple(fc.boolean(), between(0, 700), between(0, 150), between(30, 120)), {
      maxLength: 2,
    }),
  })
  .map(({ size: [length, width], skew, stocks, thickness, clean, bow, marred }) =>
    plank(
      [
        [0, skew],
        [length, 0],
        [length - skew, width],
        [0, width - skew],
      ],
      {
        ...{ stocks, thickness, clean },
        ...(bow && { bow }),
        defects: marred.map(([isKnot, x, y, long]) => ({
          kind: isKnot ? 'loose knot' : 'sapwood',
          outline: rectangle(x, y, long, 30),
        })),
      },
    ),
  );

const set = fc
  .record({
    planks: fc.array(board, { minLength: 2, maxLength: 4 }),
    front: fc.tuple(between(150, 420), between(40, 110)),
    side: fc.tuple(between(150, 420), between(40, 110)),
    thick: fc.constantFrom(12, 20),
    panel: fc.tuple(between(80, 300), between(60, 150)),
    isRun: fc.boolean(),
    spare: fc.boolean(),
  })
  .map(({ planks, front: [fl, fw], side: [sl, sw], thick, panel: [pl, pw], isRun, spare }) => {
    const front = want(fl, fw, { thickness: thick, allows: ['sapwood'] });
    const side = (drawer: string, joint: readonly [number, number]) =>
      want(sl, sw, {
        stock: 'side',
        thickness: 10,
        allows: ['sapwood'],
        beside: drawer,
        zones: [{ from: [joint[0], 0], to: [joint[1], sw] }],
      });
    const sides = ['a', 'b'].flatMap((drawer) => [side(drawer, [0, 40]), side(drawer, [sl - 40, sl])]);
    const wanted: Wanted[] = [
      ...[front, front, ...sides],
      want(pl, pw, { eitherWay: true }),
      ...(spare ? [{ ...front, spare: true }] : []),
    ];
    const runs: RunWish[] = isRun ? [{ kind: 'row', pieces: [0, 1] }] : [];
    return { planks, wanted, runs };
  });

/** Of a whole board: its length without what is cut off its ends, and its width. */
const roomOf = ({ outline, clean }: Plank) => ({
  long: Math.max(...outline.map(([x]) => x)) - (clean.left ? 0 : SAW.ends) - (clean.right ? 0 : SAW.ends),
  wide: Math.max(...outline.map(([, y]) => y)),
});
/** How a piece may lie: its extents, and the parts that must be clear of all defects. */
const waysOf = ({ length, width, zones, eitherWay }: Wanted) => {
  const along = { length, width, zones: zones.map(({ from: [a, b], to: [c, d] }) => [a, b, c, d] as const) };
  const turned = {
    ...along,
    zones: along.zones.map(([a, b, c, d]) => [length - c, width - d, length - a, width - b] as const),
  };
  return [along, turned, ...(eitherWay ? [{ length: width, width: length, zones: [] }] : [])];
};

/** Whether a piece finds room in a whole board at any of many places. */
const findsRoom = ({ outline, defects, clean }: Plank, wish: Wanted): boolean => {
  const { long, wide } = roomOf({ ...plank(outline), clean: { left: true, right: true } });
  const places = (end: number) => Array.from({ length: Math.floor(end / 5) + 1 }, (_, i) => i * 5);
  return waysOf(wish).some(({ length, width, zones }) =>
    places(long - length).some((x) =>
      places(wide - width).some((y) => {
        const lengthened = box(
          x - (clean.left ? 0 : SAW.ends),
          y,
          x + length + (clean.right ? 0 : SAW.ends),
          y + width,
        );
        return (
          holds(outline, lengthened) &&
          defects.every(({ kind, outline: defect }) => {
            const parts: Point[][] = wish.allows.includes(kind)
              ? zones.map(([a, b, c, d]) => box(x + a, y + b, x + c, y + d))
              : [box(x, y, x + length, y + width)];
            return parts.every((part) => !meet(part, defect));
          })
        );
      }),
    ),
  );
};

const isApart = (a: Blank, b: Blank, other: Blank): boolean => {
  const middles = [a, b].map(({ x, y, length, width }): Point => [x + length / 2, y + width / 2]);
  const low = Math.max(a.y, b.y);
  const high = Math.min(a.y + a.width, b.y + b.width);
  const [from, to] = high > low ? [0, 1] : [1, 0];
  const start =
    from === 0 ? (low + high) / 2 : (Math.max(a.x, b.x) + Math.min(a.x + a.length, b.x + b.length)) / 2;
  const [first = 0, last = 0] = middles.map((point) => point[from] ?? 0).sort((p, q) => p - q);
  const [at, size] = from === 0 ? ([other.x, other.length] as const) : ([other.y, other.width] as const);
  const [across, breadth] = to === 1 ? ([other.y, other.width] as const) : ([other.x, other.length] as const);
  return at > last || at + size < first || across >= start || across + breadth <= start;
};

/** What is untrue of the reasons that a layout gives. */
const untruths = (planks: readonly Plank[], wanted: readonly Wanted[], { boards }: Breakout): string[] =>
  boards.flatMap(({ plank: own, blanks }) =>
    blanks.flatMap((blank): string[] => {
      const { why } = blank;
      const wish = wanted[blank.wanted] as Wanted;
      const told = `board ${own}, piece ${blank.wanted}: ${JSON.stringify(why)}`;
      const others = planks.filter(
        ({ stocks, thickness }, i) => i !== own && stocks.includes(wish.stock) && thickness >= wish.thickness,
      );
      const here = (piece: number) => blanks.find((other) => other.wanted === piece);
      const isTrue = (): boolean => {
        switch (why.kind) {
          case 'runs through':
            return why.with.every((piece) => here(piece) !== undefined);
          case 'spare':
            return wish.spare;
          case 'only board':
            switch (why.for) {
              case 'stock':
                return others.length === 0;
              case 'width':
                return waysOf(wish).every(({ width }) => others.every((other) => roomOf(other).wide < width));
              case 'length':
                return waysOf(wish).every(({ length, width }) =>
                  others.every((other) => roomOf(other).long < length || roomOf(other).wide < width),
                );
              case 'clear wood':
                return others.every((other) => !findsRoom(other, wish));
            }
            return false;
          case 'beside':
          case 'same board': {
            const partner = here(why.with);
            if (partner === undefined || wanted[why.with]?.beside !== wish.beside) return false;
            return (
              why.kind === 'same board' ||
              blanks.every((other) => [blank, partner].includes(other) || isApart(blank, partner, other))
            );
          }
          case 'bow': {
            const { bow } = planks[own] as Plank;
            const size = (piece: number) => wanted[piece]?.[bow === 'long' ? 'length' : 'width'] ?? 0;
            const elsewhere = boards
              .filter(({ plank: other }) => planks[other]?.bow !== bow)
              .flatMap((other) => other.blanks.filter(({ wanted: id }) => wanted[id]?.stock === wish.stock));
            return bow !== undefined && elsewhere.every(({ wanted: id }) => size(id) >= size(blank.wanted));
          }
          case 'least waste':
            return others.length > 0;
          default:
            return false;
        }
      };
      return isTrue() ? [] : [told];
    }),
  );

describe('the reason that is told for a blank', () => {
  it('is true', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(set, ({ planks, wanted, runs }) => {
        const breakout = breakOut(planks, wanted, runs, SAW, { effort: 0.1 });
        for (const { why } of breakout.boards.flatMap(({ blanks }) => blanks))
          kinds.add(why.kind === 'only board' ? why.for : why.kind);
        expect(untruths(planks, wanted, breakout)).toEqual([]);
      }),
      // Most kinds are among these.
      { numRuns: 40, seed: 3 },
    );
    for (const kind of ['runs through', 'spare', 'stock', 'width', 'clear wood', 'beside', 'least waste'])
      expect(kinds).toContain(kind);
  });

  it('is no want of length where a panel would lie across another board', () => {
    const boards = [plank(rectangle(0, 0, 600, 250)), plank(rectangle(0, 0, 300, 500))];
    const panel = want(400, 220, { eitherWay: true });
    const { boards: cut } = breakOut(boards, [panel, panel], [], SAW);
    expect(cut.map(({ blanks }) => blanks.map(({ why }) => why.kind))).toEqual([
      ['least waste'],
      ['least waste'],
    ]);
  });

  it('is that no other board is long enough where with its ends cut off it is not', () => {
    const [long, short] = [plank(rectangle(0, 0, 700, 120)), plank(rectangle(0, 0, 640, 120))];
    const why = (...boards: Plank[]) => breakOut(boards, [want(600, 100)], [], SAW).boards[0]?.blanks[0]?.why;
    expect(why(short, long)).toEqual({ kind: 'only board', for: 'length' });
    const clean = { left: false, right: true };
    expect(why({ ...short, clean }, long)).toEqual({ kind: 'least waste' });
  });
});
