import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PartBlank } from '../../../../src/drawer/blanks/partBlanks.ts';
import {
  boxOf,
  differInPinsOnly,
  type HeldPart,
  heldOver,
  overNextBoard,
  refusalOf,
  stepped,
  takenUp,
  type Work,
} from '../../../../src/page/model/boards/heldPart.ts';
import { sentence } from '../../../../src/units/complaint.ts';
import { plank, rectangle, SAW, want } from '../../../stock/randomBoards.ts';

const part = (index: number, more: Partial<PartBlank> = {}): PartBlank => ({
  ...want(300, 80),
  drawer: 'Buttons',
  part: 'front',
  index,
  finished: 18,
  ...more,
});
const place = (x: number, y: number) => ({ x, y, turned: false, across: false });
const knot = { kind: 'loose knot' as const, outline: rectangle(900, 80, 40, 40) };
const work: Work = {
  planks: [
    plank(rectangle(40, 15, 2000, 200), { name: 'Cherry 1', stocks: ['front'], defects: [] }),
    plank(rectangle(0, 0, 1000, 150), { name: 'Ash 1', stocks: ['side'] }),
    plank(rectangle(0, 0, 1500, 180), { name: 'Cherry 2', stocks: ['front'], defects: [knot] }),
    plank(rectangle(0, 0, 1500, 180), { name: 'Cherry 3', stocks: ['front'], thickness: 19 }),
  ],
  blanks: [part(1), part(2, { pin: { plank: 2, place: place(100, 10) } })],
};
const held: HeldPart = { wanted: 0, plank: 0, place: place(500, 60) };
const STEPS = { step: 1, near: 5 };

const whyNot = (over: HeldPart): string | undefined => {
  const says = refusalOf(work, over, SAW);
  return says && sentence({ at: [], says }, 'mm');
};

describe('a part in the hand', () => {
  it('lies on whole steps of the board that it is held over', () => {
    expect(heldOver(work, held, 0, [300.4, 70.6], SAW, STEPS).place).toMatchObject({ x: 300, y: 71 });
    const inches = heldOver(work, held, 0, [300.4, 70.6], SAW, { step: 25.4 / 16, near: 5 }).place;
    expect((inches.x - 40) / (25.4 / 16)).toBeCloseTo(Math.round((300.4 - 40) / (25.4 / 16)), 9);
  });

  it('is drawn to an end or an edge that it hardly passes, clear of what is cut off, and no further', () => {
    expect(heldOver(work, held, 0, [62, 12], SAW, STEPS).place).toMatchObject({ x: 65, y: 15 });
    expect(heldOver(work, held, 0, [1718, 137], SAW, STEPS).place).toMatchObject({ x: 1715, y: 135 });
    expect(heldOver(work, held, 0, [50, 5], SAW, STEPS).place).toMatchObject({ x: 50, y: 5 });
  });

  it('moves by keys on whole steps, and keeps the measure that is not moved', () => {
    const odd = { ...held, place: place(500.37, 60.12) };
    expect(stepped(odd, [1, 0], 1).place).toMatchObject({ x: 501, y: 60.12 });
    expect(stepped(odd, [0, -10], 1).place).toMatchObject({ x: 500.37, y: 50 });
  });

  it('goes over to the next board for it, thick enough, and round to the first', () => {
    const next = overNextBoard(work, held, 1);
    expect(next).toMatchObject({ plank: 2, place: { x: 460, y: 45 } });
    expect(overNextBoard(work, next, 1)).toEqual(held);
    expect(overNextBoard(work, held, -1)).toEqual(next);
  });

  it.each<[string, HeldPart, RegExp | undefined]>([
    ['where it is clear', held, undefined],
    [
      'past an end',
      { ...held, place: place(50, 60) },
      /^does not lie inside "Cherry 1" with its ends cut off/u,
    ],
    ['over a knot', { wanted: 0, plank: 2, place: place(800, 50) }, /the loose knot at 920 mm, 100 mm/u],
    [
      'over what is pinned',
      { wanted: 0, plank: 2, place: place(380, 30) },
      /^lies on Buttons front 2, which is pinned there/u,
    ],
    [
      'on a board for other parts',
      { wanted: 0, plank: 1, place: place(100, 30) },
      /^does not come out of a board for side/u,
    ],
    [
      'on one that is too thin',
      { wanted: 0, plank: 3, place: place(100, 30) },
      /^needs a board of 20 mm, and "Cherry 3" is 19 mm thick/u,
    ],
    [
      'across the grain',
      { ...held, place: { ...place(500, 15), across: true } },
      /^cannot lie across the board/u,
    ],
  ])('is refused or not: %s', (_, over, says) => {
    if (says === undefined) expect(whyNot(over)).toBeUndefined();
    else expect(whyNot(over)).toMatch(says);
  });

  it('is not refused over the place where it was pinned itself', () => {
    expect(whyNot({ wanted: 1, plank: 2, place: place(120, 10) })).toBeUndefined();
  });

  it('is taken up from its pin, else from where it is laid out, but not once it is cut', () => {
    const laid = (wanted: number, kind: string) => [
      { plank: 0, blanks: [{ wanted, x: 65, y: 15, turned: true, length: 300, why: { kind } }] },
    ];
    expect(takenUp(work, laid(1, 'least waste'), 1)).toEqual({ wanted: 1, plank: 2, place: place(100, 10) });
    expect(takenUp(work, laid(0, 'least waste'), 0)).toEqual({
      wanted: 0,
      plank: 0,
      place: { ...place(65, 15), turned: true },
    });
    expect(takenUp(work, laid(0, 'cut already'), 0)).toBeUndefined();
    expect(takenUp(work, [], 0)).toBeUndefined();
  });

  it('is inside its board wherever a hand near the edges is, if the board has room', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -5, max: 5 }),
        fc.integer({ min: -5, max: 5 }),
        fc.boolean(),
        (dx, dy, far) => {
          const [x, y] = far ? [1715 + dx, 135 + dy] : [65 + dx, 15 + dy];
          const over = heldOver(work, held, 0, [x, y], SAW, STEPS);
          const { x0, y0, x1, y1 } = boxOf(work, over);
          expect([x0 >= 65, y0 >= 15, x1 <= 2015, y1 <= 215]).toEqual([true, true, true, true]);
        },
      ),
    );
  });
});

describe('a layout', () => {
  it('shows the parts of a plan that differs in pins only', () => {
    const free = { ...work, blanks: work.blanks.map(({ pin: _, ...blank }) => blank) };
    expect(differInPinsOnly(work, free)).toBe(true);
    expect(differInPinsOnly(work, { ...work, planks: work.planks.slice(1) })).toBe(false);
  });
});
