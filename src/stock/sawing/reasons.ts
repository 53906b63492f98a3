import type { Reason } from '../breakout.ts';
import type { Plank } from '../plank.ts';
import type { RunWish, Saw, Wanted } from '../wanted.ts';
import { serves } from '../wood/blankType.ts';
import type { Rect } from '../wood/clearStarts.ts';
import { extentOf } from '../wood/pieceView.ts';
import { ticks } from '../wood/ticks.ts';

/** A wanted piece where it lies. */
export interface Lying {
  readonly piece: number;
  readonly at: Rect;
}

/** What is known of a blank when its reason is asked for. */
export interface Circumstances {
  readonly planks: readonly Plank[];
  readonly wanted: readonly Wanted[];
  readonly saw: Saw;
  /** The run that it lies in. */
  readonly run: RunWish | undefined;
  /** All that comes out of its board. */
  readonly together: readonly Lying[];
  /** Whether some clear place of a board takes the piece, were nothing else cut from now on. */
  readonly holds: (plank: number) => boolean;
  /** What comes out of boards that are not bent as this one is. */
  readonly elsewhere: readonly Pick<Wanted, 'stock' | 'length' | 'width'>[];
}

/** Why a piece lies in its board; the strongest reason. */
export const reasonOf = ({ piece, at }: Lying, plank: number, known: Circumstances): Reason => {
  const { planks, wanted, run, together } = known;
  const wish = wanted[piece];
  const board = planks[plank];
  if (wish === undefined || board === undefined) return { kind: 'least waste' };
  if (run !== undefined) return { kind: 'runs through', with: run.pieces.filter((other) => other !== piece) };
  if (wish.spare) return { kind: 'spare' };
  const lacking = whatOthersLack(wish, plank, known);
  if (lacking !== undefined) return { kind: 'only board', for: lacking };
  const partner = together.find(
    (other) =>
      other.piece !== piece && wish.beside !== undefined && wanted[other.piece]?.beside === wish.beside,
  );
  if (partner !== undefined)
    return { kind: isNextTo(at, partner.at, together) ? 'beside' : 'same board', with: partner.piece };
  return isForBent(wish, board, known) ? { kind: 'bow' } : { kind: 'least waste' };
};

/** What every other board lacks that a piece needs; nothing where some other has room for it. */
const whatOthersLack = (
  wish: Wanted,
  plank: number,
  { planks, saw, holds }: Circumstances,
): Extract<Reason, { kind: 'only board' }>['for'] | undefined => {
  const others = planks.flatMap((other, i) => (i !== plank && serves(other, wish) ? [{ other, i }] : []));
  if (others.length === 0) return 'stock';
  const ways = [
    [ticks(wish.length), ticks(wish.width)] as const,
    ...(wish.eitherWay ? [[ticks(wish.width), ticks(wish.length)] as const] : []),
  ];
  const some = (fits: (between: number, width: number) => boolean) =>
    others.some(({ other }) => {
      const { x0, y0, x1, y1 } = extentOf(other);
      const { left, right } = other.clean;
      return fits(x1 - x0 - (Number(!left) + Number(!right)) * ticks(saw.ends), y1 - y0);
    });
  if (!some((_, own) => ways.some(([, width]) => own >= width))) return 'width';
  if (!some((between, own) => ways.some(([length, width]) => between >= length && own >= width)))
    return 'length';
  return others.some(({ i }) => holds(i)) ? undefined : 'clear wood';
};

/** Whether two pieces lie side by side or end to end with none between them. */
const isNextTo = (a: Rect, b: Rect, all: readonly Lying[]): boolean => {
  const isAlong = a.y0 < b.y1 && b.y0 < a.y1;
  const isAcross = a.x0 < b.x1 && b.x0 < a.x1;
  const both: Rect = {
    x0: Math.min(a.x0, b.x0),
    y0: Math.min(a.y0, b.y0),
    x1: Math.max(a.x1, b.x1),
    y1: Math.max(a.y1, b.y1),
  };
  const isBetween = ({ at }: Lying) =>
    at !== a && at !== b && at.x0 < both.x1 && at.x1 > both.x0 && at.y0 < both.y1 && at.y1 > both.y0;
  return (isAlong || isAcross) && !all.some(isBetween);
};

/** Whether a board is bent so that small parts come out of it, and none of its stock that lies in another is smaller, but some larger. */
const isForBent = (wish: Wanted, { bow }: Plank, { elsewhere }: Circumstances): boolean => {
  if (bow === undefined) return false;
  const key = bow === 'long' ? 'length' : 'width';
  const sizes = elsewhere.flatMap((other) => (other.stock === wish.stock ? [other[key]] : []));
  return sizes.length > 0 && Math.min(...sizes) >= wish[key] && Math.max(...sizes) > wish[key];
};
