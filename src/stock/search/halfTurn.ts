import type { Point } from '../../drawing/drawing.ts';
import type { Breakout, PlankLayout } from '../breakout.ts';
import type { Cut, Plank } from '../plank.ts';
import { extentsOf } from '../polygon.ts';
import type { Wanted } from '../wanted.ts';
import { nearestTick, toMm } from '../wood/ticks.ts';

/** To a fraction of a tick, which is what sums of floats are off by. */
const exact = (mm: number): number => toMm(nearestTick(mm));

/** What lies left or below of a cut lies right or above of it. */
const otherSide = (piece: number): number => (piece === 0 ? 0 : piece % 2 === 1 ? piece + 1 : piece - 1);

const turnOf = ({ outline }: Plank, kerf: number) => {
  const { x0, y0, x1, y1 } = extentsOf(outline);
  return {
    point: ([x, y]: Point): Point => [x0 + x1 - x, y0 + y1 - y],
    box: <T extends { x: number; y: number; length: number; width: number }>(box: T): T => ({
      ...box,
      x: exact(x0 + x1 - box.x - box.length),
      y: exact(y0 + y1 - box.y - box.width),
    }),
    cut: ({ kind, piece, at }: Cut): Cut => ({
      kind,
      piece: otherSide(piece),
      at: exact((kind === 'crosscut' ? x0 + x1 : y0 + y1) - at - kerf),
    }),
  };
};

/** A board turned by half in its plane, with what has been cut of it. */
export const halfTurned = (plank: Plank, kerf: number): Plank => {
  const turn = turnOf(plank, kerf);
  const { outline, defects, clean, figure, done } = plank;
  return {
    ...plank,
    outline: outline.map(turn.point),
    defects: defects.map((defect) => ({ ...defect, outline: defect.outline.map(turn.point) })),
    clean: { left: clean.right, right: clean.left },
    ...(figure && { figure: figure === 'left' ? 'right' : 'left' }),
    ...(done && {
      done: {
        cuts: done.cuts.map(turn.cut),
        blanks: done.blanks.map(({ turned, piece, ...blank }) => ({
          ...blank,
          turned: !turned,
          piece: otherSide(piece),
        })),
      },
    }),
  };
};

/** A layout of a board that was turned by half, on the board as it lies. */
const turnedBack = (layout: PlankLayout, plank: Plank, kerf: number): PlankLayout => {
  const turn = turnOf(plank, kerf);
  const made = plank.done?.cuts ?? [];
  return {
    ...layout,
    blanks: layout.blanks.map((blank) => ({
      ...turn.box(blank),
      turned: !blank.turned,
      piece: otherSide(blank.piece),
    })),
    cuts: [...made, ...layout.cuts.slice(made.length).map(turn.cut)],
    offcuts: layout.offcuts.map(turn.box),
  };
};

const beginsRight = ({ figure }: Plank): boolean => figure === 'right';

/** Boards turned so that fronts begin at the left end of all that say where. */
export const frontsFromLeft = (planks: readonly Plank[], kerf: number): readonly Plank[] =>
  planks.map((plank) => (beginsRight(plank) ? halfTurned(plank, kerf) : plank));

/** Pieces that are pinned to such boards, pinned to them as they are turned. */
export const pinsFromLeft = (
  wanted: readonly Wanted[],
  planks: readonly Plank[],
  kerf: number,
): readonly Wanted[] =>
  wanted.map((piece) => {
    const { pin, length, width } = piece;
    const plank = pin && planks[pin.plank];
    if (pin?.place === undefined || plank === undefined || !beginsRight(plank)) return piece;
    const { across, turned, ...corner } = pin.place;
    const { x, y } = turnOf(plank, kerf).box(
      across ? { ...corner, length: width, width: length } : { ...corner, length, width },
    );
    return { ...piece, pin: { ...pin, place: { x, y, turned: !turned, across } } };
  });

/** A layout of boards turned so, on the boards as they lie. */
export const asTheyLie = (breakout: Breakout, planks: readonly Plank[], kerf: number): Breakout => ({
  ...breakout,
  boards: breakout.boards.map((layout) => {
    const plank = planks[layout.plank];
    return plank !== undefined && beginsRight(plank) ? turnedBack(layout, plank, kerf) : layout;
  }),
});
