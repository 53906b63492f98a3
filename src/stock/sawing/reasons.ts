import type { Reason } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { RunWish, Wanted } from '../wanted.ts';
import { serves } from '../wood/blankType.ts';
import { extentOf } from '../wood/pieceView.ts';
import { ticks } from '../wood/ticks.ts';

/** What is known of a blank when its reason is asked for. */
export interface Circumstances {
  readonly planks: readonly Plank[];
  readonly wanted: readonly Wanted[];
  /** The run that it lies in. */
  readonly run: RunWish | undefined;
  /** All pieces that come out of its board. */
  readonly together: ReadonlySet<number>;
  /** Whether some clear place of a board takes the piece, were nothing else cut. */
  readonly holds: (plank: number) => boolean;
}

/** Why a piece lies in its board; the strongest reason. */
export const reasonOf = (piece: number, plank: number, known: Circumstances): Reason => {
  const { planks, wanted, run, together, holds } = known;
  const wish = wanted[piece];
  const board = planks[plank];
  if (wish === undefined || board === undefined) return { kind: 'least waste' };
  if (run !== undefined) return { kind: 'runs through', with: run.pieces.filter((other) => other !== piece) };
  if (wish.spare) return { kind: 'spare' };
  const others = planks.flatMap((other, i) => (i !== plank && serves(other, wish) ? [i] : []));
  const able = (test: (size: { length: number; width: number }) => boolean) =>
    others.some((i) => {
      const { x0, y0, x1, y1 } = extentOf(planks[i] as Plank);
      return test({ length: x1 - x0, width: y1 - y0 });
    });
  const short = ticks(wish.eitherWay ? Math.min(wish.length, wish.width) : wish.width);
  const long = ticks(wish.eitherWay ? Math.max(wish.length, wish.width) : wish.length);
  if (others.length === 0) return { kind: 'only board', for: 'stock' };
  if (!able(({ width }) => width >= short)) return { kind: 'only board', for: 'width' };
  if (!able(({ length, width }) => length >= long && width >= short))
    return { kind: 'only board', for: 'length' };
  if (!others.some((i) => holds(i))) return { kind: 'only board', for: 'clear wood' };
  const partner =
    wish.beside === undefined
      ? -1
      : wanted.findIndex((other, i) => i !== piece && other.beside === wish.beside && together.has(i));
  if (partner >= 0) return { kind: 'beside', with: partner };
  const kin = wanted.filter(({ stock, spare }) => stock === wish.stock && !spare);
  const least = (key: 'length' | 'width') => kin.every((other) => other[key] >= wish[key]);
  if ((board.bow === 'long' && least('length')) || (board.bow === 'cup' && least('width')))
    return { kind: 'bow' };
  return { kind: 'least waste' };
};
