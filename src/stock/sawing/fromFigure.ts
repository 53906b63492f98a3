import type { Plank } from '../plank.ts';
import { packingOf } from '../search/packing.ts';
import { type Pattern, patternsOf } from '../search/patterns.ts';
import type { Pool } from '../search/pool.ts';
import type { Saw } from '../wanted.ts';
import { areaOf, type BlankType } from '../wood/blankType.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { PieceView } from '../wood/pieceView.ts';
import { groupsOf } from './groups.ts';
import type { Group } from './sawing.ts';

/** Steps for the patterns that give just what is taken. */
const STEPS = 20_000;

/**
 * A way to cut just what is taken of a piece so that the fronts begin at its left end: before all else, and lists that run
 * through not turned. Nothing where the board does not ask for it, or where it cannot be had.
 * @param taken how many of each type
 */
export const fromFigure = (
  plank: Plank,
  { bin }: Pool,
  types: readonly BlankType[],
  taken: readonly number[],
  saw: Saw,
): Group[] => {
  const stages = bin.ways.find(({ view }) => view.axis === 'x')?.stages;
  const fronts = taken.map((number, type) => (types[type]?.stock === 'front' ? number : 0));
  if (plank.figure === undefined || stages === undefined || stages.trim || isNone(fronts)) return [];
  const prices = types.map(areaOf);
  const served = taken.map((number) => number > 0);
  const justThese = (counts: readonly number[], at: Rect): Pattern | undefined => {
    const packing = packingOf(counts);
    const view = new PieceView(plank, 'x', at, types, served, saw, { begins: true });
    const search = { prices, packing, stages, breadth: Number.POSITIVE_INFINITY, thorough: true };
    return patternsOf(view, { ...search, most: STEPS }).patterns.find((pattern) =>
      counts.every((number, type) => packing.countOf(pattern.counts, type) === number),
    );
  };
  const { at } = bin.piece;
  const first = justThese(fronts, at);
  if (first === undefined) return [];
  const others = taken.map((number, type) => number - (fronts[type] ?? 0));
  if (isNone(others)) return [groupsOf(first)];
  const rest = justThese(others, { ...at, x0: first.end + first.view.kerf });
  const whole = rest === undefined ? justThese(taken, at) : undefined;
  return rest === undefined
    ? whole === undefined
      ? []
      : [groupsOf(whole)]
    : [{ axis: 'x', parts: [...groupsOf(first).parts, ...groupsOf(rest).parts] }];
};

const isNone = (counts: readonly number[]): boolean => counts.every((number) => number === 0);
