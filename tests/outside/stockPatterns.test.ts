import { expect, test } from 'vitest';
import { packingOf } from '../../src/stock/search/packing.ts';
import { patternsOf } from '../../src/stock/search/patterns.ts';
import { blankTypes } from '../../src/stock/wood/blankType.ts';
import { extentOf, PieceView } from '../../src/stock/wood/pieceView.ts';
import { plank, rectangle, want } from '../stock/randomBoards.ts';

/**
 * C. Christofides and E. Whitlock, An algorithm for two-dimensional cutting problems, Operations Research 25 (1977), first
 * instance: length, width, at most, value.
 */
const PIECES = [
  [8, 4, 2, 66],
  [3, 7, 1, 35],
  [8, 2, 3, 24],
  [3, 4, 5, 17],
  [3, 3, 2, 11],
  [3, 2, 2, 8],
  [2, 1, 1, 2],
] as const;

test('the first instance of Christofides and Whitlock reaches its best value, 244', () => {
  const sheet = plank(rectangle(0, 0, 15, 10));
  const wanted = PIECES.flatMap(([length, width, most]) =>
    Array.from({ length: most }, () => want(length, width)),
  );
  const types = blankTypes(
    [sheet],
    wanted,
    wanted.map((_, i) => i),
  );
  const saw = { kerf: 0, ends: 0, keep: { length: 1, width: 1 } };
  const best = (['x', 'y'] as const).map((axis) => {
    const view = new PieceView(
      sheet,
      axis,
      extentOf(sheet),
      types,
      types.map(() => true),
      saw,
    );
    const { patterns, finished } = patternsOf(view, {
      prices: PIECES.map(([, , , value]) => value),
      packing: packingOf(PIECES.map(([, , most]) => most)),
      stages: { oneStrip: false, oneBlankPerStrip: false, trim: false },
      breadth: Number.POSITIVE_INFINITY,
      thorough: true,
      most: Number.POSITIVE_INFINITY,
    });
    expect(finished).toBe(true);
    return Math.max(...patterns.map(({ value }) => value));
  });
  expect(Math.max(...best)).toBe(244);
});
