import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isTail, widthName } from '../../../src/joint/widthName.ts';
import {
  addTail,
  evenOut,
  fill,
  linesOf,
  listed,
  locksAfterAdding,
  locksAfterRemoving,
  mirror,
  moveLine,
  removeTail,
  setWidth,
  type TipWidths,
  total,
} from '../../../src/page/model/widths.ts';
import { type Result, sentence } from '../../../src/units/complaint.ts';

/** Half pin 4, tail 12, pin 4, tail 12, pin 4, tail 12, half pin 4: 52 in all. */
const EVEN: TipWidths = [4, 12, 4, 12, 4, 12, 4];
const NONE = new Set<number>();

const made = (result: Result<TipWidths>): TipWidths => {
  if (!result.ok) throw new Error(JSON.stringify(result.complaints));
  return result.value;
};

describe('widths', () => {
  it('are distinguished by name', () => {
    expect(EVEN.map((_, i) => widthName(i, EVEN.length))).toEqual([
      'lower half pin',
      'tail 1',
      'pin 1',
      'tail 2',
      'pin 2',
      'tail 3',
      'upper half pin',
    ]);
  });

  it('have a line between every two, counted from the reference edge', () => {
    expect(linesOf(EVEN)).toEqual([4, 16, 20, 32, 36, 48]);
  });

  it('are listed as a plan lists them, and a single tail without pins', () => {
    expect(listed([4, 12, 5, 11, 3])).toEqual({
      spacing: { kind: 'listed', tails: [12, 11], pins: [5] },
      halfPin: { lower: 4, upper: 3 },
    });
    expect(listed([4, 12, 3]).spacing).toEqual({ kind: 'listed', tails: [12] });
  });
});

describe('moveLine', () => {
  it('adds to the width below what it removes from the one above', () => {
    expect(made(moveLine(EVEN, NONE, 2, 1.5))).toEqual([4, 12, 5.5, 10.5, 4, 12, 4]);
    expect(made(moveLine(EVEN, NONE, 2, -1))).toEqual([4, 12, 3, 13, 4, 12, 4]);
  });

  it('moves a locked width along, whole', () => {
    expect(made(moveLine(EVEN, new Set([3]), 2, 1))).toEqual([4, 12, 5, 12, 3, 12, 4]);
    expect(made(moveLine(EVEN, new Set([3]), 3, 1))).toEqual([4, 12, 5, 12, 3, 12, 4]);
    expect(made(moveLine(EVEN, new Set([2, 3, 4]), 3, 2))).toEqual([4, 14, 4, 12, 4, 10, 4]);
  });

  it('names the nearest lock where every width on one side is locked', () => {
    const told = (result: Result<TipWidths>) =>
      result.ok ? [] : result.complaints.map((complaint) => sentence(complaint, 'mm'));
    expect(told(moveLine(EVEN, new Set([0, 1]), 1, 1))).toEqual([
      'tail 1 is locked at 12 mm; try unlocking it',
    ]);
    expect(told(moveLine(EVEN, new Set([6]), 5, 1))).toEqual([
      'upper half pin is locked at 4 mm; try unlocking it',
    ]);
  });
});

describe('setWidth', () => {
  it('lets the next width above make room', () => {
    expect(made(setWidth(EVEN, NONE, 1, 14))).toEqual([4, 14, 2, 12, 4, 12, 4]);
  });

  it('passes over what is locked', () => {
    expect(made(setWidth(EVEN, new Set([2]), 1, 14))).toEqual([4, 14, 4, 10, 4, 12, 4]);
  });

  it('lets the next one below make room for the upper half pin, and where all above is locked', () => {
    expect(made(setWidth(EVEN, NONE, 6, 5))).toEqual([4, 12, 4, 12, 4, 11, 5]);
    expect(made(setWidth(EVEN, new Set([6]), 5, 13))).toEqual([4, 12, 4, 12, 3, 13, 4]);
  });

  it('refuses to change a locked width', () => {
    expect(setWidth(EVEN, new Set([1]), 1, 13).ok).toBe(false);
  });

  it('refuses where nothing can make room', () => {
    expect(setWidth(EVEN, new Set([0, 1, 2, 4, 5, 6]), 3, 13).ok).toBe(false);
  });
});

describe('fill', () => {
  it('scales free tails alike and leaves all else', () => {
    expect(made(fill([4, 10, 4, 20, 4], NONE, 57))).toEqual([4, 15, 4, 30, 4]);
    expect(made(fill([4, 10, 4, 20, 4], new Set([1]), 57))).toEqual([4, 10, 4, 35, 4]);
  });

  it('refuses where every tail is locked', () => {
    expect(fill([4, 10, 4], new Set([1]), 20).ok).toBe(false);
  });
});

describe('one tail more and one fewer', () => {
  it('adds one at the top as wide as the mean, for which the others make room', () => {
    // 52 less four pins of 4 and one more: 32 for four tails.
    expect(made(addTail(EVEN, NONE))).toEqual([4, 8, 4, 8, 4, 8, 4, 8, 4]);
  });

  it('keeps a locked tail while it adds one', () => {
    expect(made(addTail(EVEN, new Set([1])))).toEqual([4, 12, 4, 20 / 3, 4, 20 / 3, 4, 20 / 3, 4]);
    expect([...locksAfterAdding(EVEN, new Set([1, 6]))]).toEqual([1, 8]);
  });

  it('removes one with the pin above it, and the highest with the pin below it', () => {
    const uneven: TipWidths = [4, 10, 5, 12, 3, 14, 4];
    const room = 12 + 3;
    expect(made(removeTail(uneven, NONE, 3))).toEqual([4, 10 * (1 + room / 24), 5, 14 * (1 + room / 24), 4]);
    expect(made(removeTail(uneven, NONE, 5))).toEqual([4, 10 * (1 + 17 / 22), 5, 12 * (1 + 17 / 22), 4]);
    expect([...locksAfterRemoving(uneven, new Set([1, 3, 5]), 3)]).toEqual([1, 3]);
  });

  it('keeps the last tail', () => {
    expect(removeTail([4, 12, 4], NONE, 1).ok).toBe(false);
  });
});

describe('evenOut', () => {
  it('makes all tails and all pins alike, and leaves the half pins', () => {
    expect(made(evenOut([4, 10, 5, 12, 3, 14, 4], NONE, 52))).toEqual([4, 12, 4, 12, 4, 12, 4]);
  });

  it('leaves what is locked', () => {
    expect(made(evenOut([4, 10, 5, 12, 3, 14, 4], new Set([1]), 52))).toEqual([4, 10, 4, 13, 4, 13, 4]);
  });

  it('does with a single tail', () => {
    expect(made(evenOut([4, 44, 4], NONE, 52))).toEqual([4, 44, 4]);
  });
});

describe('every change of widths', () => {
  const widths = fc
    .array(fc.double({ min: 1, max: 50, noNaN: true }), { minLength: 1, maxLength: 9 })
    .map((half) => [...half.flatMap((width) => [width, width * 2]), 3]);

  it('keeps the board filled', () => {
    fc.assert(
      fc.property(
        widths,
        fc.nat(),
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.nat(),
        (all, at, by, lock) => {
          const locked = new Set([lock % all.length]);
          const line = at % (all.length - 1);
          const tail = 1 + 2 * (at % ((all.length - 1) / 2));
          for (const result of [
            moveLine(all, locked, line, by),
            setWidth(all, locked, at % all.length, (all[at % all.length] ?? 0) + by),
            addTail(all, locked),
            removeTail(all, locked, tail),
            evenOut(all, locked, total(all)),
            { ok: true as const, value: mirror(all) },
          ])
            if (result.ok) expect(total(result.value)).toBeCloseTo(total(all), 9);
        },
      ),
    );
  });

  it('leaves a locked width as it is when a line moves', () => {
    fc.assert(
      fc.property(widths, fc.nat(), fc.nat(), (all, at, lock) => {
        const i = lock % all.length;
        const moved = moveLine(all, new Set([i]), at % (all.length - 1), 1);
        if (moved.ok) expect(moved.value[i]).toBe(all[i]);
      }),
    );
  });

  it('alternates pins and tails', () => {
    expect(EVEN.map((_, i) => isTail(i))).toEqual([false, true, false, true, false, true, false]);
  });
});
