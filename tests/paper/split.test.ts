import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { CROSS, LINE_ROOM, splitToFit, TAB } from '../../src/paper/split.ts';
import { partsOf } from '../../src/paper/tile.ts';
import { fakePiece } from './fakePiece.ts';

const area = { width: 190, height: 275 };

describe('a piece that fits', () => {
  test('is not split, as it is or turned', () => {
    expect(splitToFit(fakePiece({ width: 80, height: 260 }), area)).toBe(NO_SPLITS);
    expect(splitToFit(fakePiece({ width: 260, height: 180 }), area)).toBe(NO_SPLITS);
  });
});

describe('a piece that is too long', () => {
  test('is split in the middle of the tails nearest to equal parts', () => {
    const piece = fakePiece({ width: 80, height: 480 });
    // Tails lie from 10 to 32 in each pitch of 30, so their middles at 21, 51, … 231, 261.
    expect(splitToFit(piece, area)).toEqual({ x: [], y: [231] });
  });

  test('is split along its folds too where it is also too wide', () => {
    const piece = fakePiece({ width: 230, height: 480, folds: [50, 115, 180] });
    expect(splitToFit(piece, { width: 136, height: 190 })).toEqual({ x: [115], y: [171, 321] });
  });

  test('is refused where it may not be split, or not often enough', () => {
    expect(splitToFit(fakePiece({ width: 300, height: 300 }), area)).toBeUndefined();
    const long = fakePiece({ width: 80, height: 900 });
    expect(
      splitToFit(
        {
          ...long,
          splittable: {
            x: [],
            y: [
              [220, 240],
              [500, 620],
            ],
          },
        },
        area,
      ),
    ).toBeUndefined();
    expect(
      splitToFit(
        {
          ...long,
          splittable: {
            x: [],
            y: [
              [220, 240],
              [440, 450],
              [640, 650],
            ],
          },
        },
        area,
      ),
    ).toEqual({
      x: [],
      y: [230, 445, 645],
    });
  });
});

/** The fewest splits of a length, found from its start: each as far up as it may be. */
const fewest = (
  length: number,
  intervals: readonly (readonly [number, number])[],
  room: number,
  overhang: number,
): number => {
  let [count, done, ahead] = [0, 0, room - overhang - TAB.most - LINE_ROOM];
  while (length - done > room - (count === 0 ? overhang : CROSS + LINE_ROOM) - overhang) {
    const reach = done + ahead;
    const next = Math.max(...intervals.filter(([lo]) => lo <= reach).map(([, hi]) => Math.min(hi, reach)));
    if (!(next > done)) return Number.POSITIVE_INFINITY;
    [count, done, ahead] = [count + 1, next, room - CROSS - TAB.most - 2 * LINE_ROOM];
  }
  return count;
};

test('splits are inside tails, parts fit, and no fewer parts would do', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 30, max: 120, noNaN: true }),
      fc.double({ min: 300, max: 1200, noNaN: true }),
      fc.double({ min: 13, max: 90, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (width, height, pitch, overhang) => {
        const piece = fakePiece({ width, height, pitch, overhang });
        const splits = splitToFit(piece, area);
        const ways = [area, { width: area.height, height: area.width }].filter(
          (way) => width + 2 * overhang <= way.width,
        );
        const least = Math.min(
          ...ways.map((way) => fewest(height, piece.splittable.y, way.height, overhang)),
        );
        expect(splits?.y.length ?? Number.POSITIVE_INFINITY).toBe(least);
        if (splits === undefined) return;
        for (const at of splits.y)
          expect(piece.splittable.y.some(([lo, hi]) => lo <= at && at <= hi)).toBe(true);
        for (const { room } of partsOf(piece, splits, 0)) {
          const [across, up] = [room.x1 - room.x0, room.y1 - room.y0].sort((a, b) => a - b);
          expect(across).toBeLessThanOrEqual(area.width + 1e-6);
          expect(up).toBeLessThanOrEqual(area.height + 1e-6);
        }
      },
    ),
  );
});
