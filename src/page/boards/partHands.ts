import type { StockWork } from '../../drawer/blanks/stockWork.ts';
import type { PlankLayout } from '../../stock/breakout.ts';
import { extentsOf } from '../../stock/polygon.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { Pin } from '../../stock/wanted.ts';
import type { Phrase } from '../../units/phrase.ts';
import type { Grip } from '../model/boards/heldBoard.ts';
import {
  type HeldPart,
  heldOver,
  overNextBoard,
  refusalOf,
  stepped,
  takenUp,
} from '../model/boards/heldPart.ts';
import type { BoardHands } from './boardHands.ts';
import type { BoardPicture } from './seenBoard.ts';

type Px = readonly [x: number, y: number];

/** The boards as they are shown, for hands that move parts over them. */
export interface PartsAtHand {
  readonly work: StockWork;
  readonly sawing: Sawing;
  readonly boards: readonly PlankLayout[];
  /** The step of keys and of dragging, in mm. */
  readonly step: number;
  /** px to each mm. */
  readonly scale: number;
  /** The pictures of the boards, by their places among all boards. */
  readonly pictures: ReadonlyMap<number, BoardPicture>;
}

/** A part in the hand, and why it cannot be pinned where it is held. */
export interface Carried {
  readonly held: HeldPart;
  readonly refusal: Phrase | undefined;
  /** Where the pointer is in the window, in px; absent where keys move the part. */
  readonly pointer?: Px;
}

/** From so near, in px, a part is drawn to an end or an edge of a board. */
const NEAR = 6;
/** Where a hand is so near the window's upper or lower border, the page scrolls under it, in px. */
const BORDER = { width: 48, by: 14 };

/**
 * Lets parts be carried by a pointer or by keys from place to place and from board to board.
 * @param pin pins what is let go where it may lie
 * @param told hears of a part that keys have moved, and of one that was let go where it may not lie
 */
export const partHands = (
  host: HTMLElement,
  atHand: () => PartsAtHand | undefined,
  {
    pin,
    told,
    show,
  }: {
    readonly pin: (wanted: number, pin: Pin) => void;
    readonly told: (carried: Carried) => void;
    readonly show: () => void;
  },
) => {
  let carried: Carried | undefined;
  /** From the pointer to the lower left corner of what it holds, in px. */
  let offset: Px = [0, 0];

  const surfaceOf = (plank: number): DOMRect | undefined =>
    host.querySelector(`.stock-board[data-plank="${plank}"]`)?.getBoundingClientRect();
  /** Where the lower left corner of a board's extents is in the window. */
  const originOf = ({ work, pictures }: PartsAtHand, plank: number): Px | undefined => {
    const [outline, picture, surface] = [work.planks[plank]?.outline, pictures.get(plank), surfaceOf(plank)];
    if (outline === undefined || picture === undefined || surface === undefined) return undefined;
    const { x0, y0 } = extentsOf(outline);
    const [x, y] = picture.at([x0, y0]);
    return [surface.left + x, surface.top + y];
  };
  /** The board under the pointer, or the nearest above or below it. */
  const boardAt = ({ pictures }: PartsAtHand, [, y]: Px): number | undefined => {
    const away = [...pictures.keys()].flatMap((plank) => {
      const surface = surfaceOf(plank);
      return surface === undefined ? [] : [{ plank, by: Math.max(surface.top - y, y - surface.bottom, 0) }];
    });
    return away.sort((a, b) => a.by - b.by)[0]?.plank;
  };
  const carry = (there: PartsAtHand, held: HeldPart, pointer?: Px): void => {
    carried = { held, refusal: refusalOf(there.work, held, there.sawing), ...(pointer && { pointer }) };
    show();
  };
  const put = (): void => {
    if (carried === undefined) return;
    const { held, refusal } = carried;
    if (refusal !== undefined) {
      told(carried);
      return;
    }
    carried = undefined;
    pin(held.wanted, { plank: held.plank, place: held.place });
  };
  const putBack = (): boolean => {
    const was = carried !== undefined;
    carried = undefined;
    if (was) show();
    return was;
  };
  const pickedUp = (there: PartsAtHand, wanted: number): HeldPart | undefined =>
    carried?.held.wanted === wanted ? carried.held : takenUp(there.work, there.boards, wanted);

  return {
    carried: (): Carried | undefined => carried,
    putBack,
    grab: (wanted: number, pointer: Px): void => {
      carried = undefined;
      const there = atHand();
      const held = there && takenUp(there.work, there.boards, wanted);
      const origin = there && held && originOf(there, held.plank);
      const outline = there?.work.planks[held?.plank ?? -1]?.outline;
      if (there === undefined || held === undefined || origin === undefined || outline === undefined) return;
      const { x0, y0 } = extentsOf(outline);
      const { x, y } = held.place;
      offset = [
        origin[0] + (x - x0) * there.scale - pointer[0],
        origin[1] - (y - y0) * there.scale - pointer[1],
      ];
    },
    drag: (wanted: number, pointer: Px): void => {
      const there = atHand();
      const held = there && pickedUp(there, wanted);
      const plank = there && boardAt(there, pointer);
      const origin = there && plank !== undefined ? originOf(there, plank) : undefined;
      const outline = there?.work.planks[plank ?? -1]?.outline;
      if (!there || !held || plank === undefined || !origin || !outline) return;
      const { x0, y0 } = extentsOf(outline);
      const corner: Px = [
        x0 + (pointer[0] + offset[0] - origin[0]) / there.scale,
        y0 - (pointer[1] + offset[1] - origin[1]) / there.scale,
      ];
      const steps = { step: there.step, near: NEAR / there.scale };
      if (pointer[1] < BORDER.width) scrollBy(0, -BORDER.by);
      if (pointer[1] > innerHeight - BORDER.width) scrollBy(0, BORDER.by);
      carry(there, heldOver(there.work, held, plank, corner, there.sawing, steps), pointer);
    },
    drop: (kept: boolean): void => {
      if (kept) put();
      putBack();
    },
    /** @param by steps to the right and up */
    nudge: (wanted: number, by: Px): void => {
      const there = atHand();
      const held = there && pickedUp(there, wanted);
      if (!there || !held) return;
      carry(there, stepped(held, by, there.step));
      if (carried) told(carried);
    },
    overNext: (wanted: number, by: 1 | -1): void => {
      const there = atHand();
      const held = there && pickedUp(there, wanted);
      if (!there || !held) return;
      carry(there, overNextBoard(there.work, held, by));
      if (carried) told(carried);
    },
    /** Pins what keys have moved. @returns whether anything was in the hand */
    put: (wanted: number): boolean => {
      if (carried?.held.wanted !== wanted) return false;
      put();
      return true;
    },
  };
};

/** The part that a grip is of. */
const partIn = (grip: Grip): number | undefined =>
  grip.startsWith('part ') ? Number(grip.slice('part '.length)) : undefined;

/** The hands of a board, with those that hold its parts. */
export const withParts = (
  hands: BoardHands,
  parts: ReturnType<typeof partHands>,
  { choose, free }: { readonly choose: (wanted: number) => void; readonly free: (wanted: number) => void },
): BoardHands => {
  let held: number | undefined;
  return {
    ...hands,
    grab: (board, grip, pointer) => {
      held = partIn(grip);
      if (held === undefined) hands.grab(board, grip, pointer);
      else parts.grab(held, pointer);
    },
    drag: (by, from, pointer) => {
      if (held === undefined) hands.drag(by, from, pointer);
      else parts.drag(held, pointer);
    },
    drop: (kept) => {
      if (held === undefined) hands.drop(kept);
      else parts.drop(kept);
      held = undefined;
    },
    press: (board, grip) => {
      const part = partIn(grip);
      if (part === undefined) hands.press(board, grip);
      else if (!parts.put(part)) choose(part);
    },
    nudge: (board, grip, by) => {
      const part = partIn(grip);
      if (part === undefined) hands.nudge(board, grip, by);
      else parts.nudge(part, by);
    },
    remove: (board, grip) => {
      const part = partIn(grip);
      if (part === undefined) hands.remove(board, grip);
      else free(part);
    },
  };
};

/** The keys of a part beside those of every grip: B for the next board, with Shift for the one before, and Escape. */
export const partKeys = (host: HTMLElement, parts: ReturnType<typeof partHands>): void =>
  host.addEventListener('keydown', (event) => {
    const node = event.target instanceof Element ? event.target.closest('[data-grip^="part "]') : null;
    const part = partIn((node?.getAttribute('data-grip') ?? 'length') as Grip);
    if (part === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const isBoard = event.key.toLowerCase() === 'b';
    if (isBoard) parts.overNext(part, event.shiftKey ? -1 : 1);
    if (isBoard || (event.key === 'Escape' && parts.putBack())) event.preventDefault();
  });
