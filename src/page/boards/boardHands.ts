import type { Grip } from '../model/boards/heldBoard.ts';

/** Events of what is held of a board. Lengths in px, y downward. */
export interface BoardHands {
  /** Whether a finger draws on the board. */
  readonly isDrawing: () => boolean;
  /** @param pointer where it is in the window */
  readonly grab: (board: number, grip: Grip, pointer: readonly [x: number, y: number]) => void;
  /** @param from where it was grabbed, from the upper left corner of what is held */
  readonly drag: (
    by: readonly [x: number, y: number],
    from: readonly [x: number, y: number],
    pointer: readonly [x: number, y: number],
  ) => void;
  /** @param kept false restores the place before */
  readonly drop: (kept: boolean) => void;
  /** A tap or a click that moved nothing, or Enter. */
  readonly press: (board: number, grip: Grip) => void;
  /** @param by steps to the right and up */
  readonly nudge: (board: number, grip: Grip, by: readonly [x: number, y: number]) => void;
  readonly remove: (board: number, grip: Grip) => void;
  /** Ends a run of keys. */
  readonly rest: () => void;
}

/** Movement in px that is no edit: a hand that clicks or taps is not quite still. */
const STILL = 3;
const MANY_STEPS = 10;
/** After so many ms another key begins another step of undo. */
const PAUSE = 2000;

const KEYS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, MANY_STEPS],
  PageDown: [0, -MANY_STEPS],
};

interface Held {
  readonly node: Element;
  readonly board: number;
  readonly grip: Grip;
}

const heldBy = (target: EventTarget | null): Held | undefined => {
  const node = target instanceof Element ? target.closest('[data-grip]') : null;
  const grip = node?.getAttribute('data-grip');
  return node === null || grip === null || grip === undefined
    ? undefined
    : { node, board: Number(node.getAttribute('data-board')), grip: grip as Grip };
};

/**
 * Lets boards and their defects be held by pointer and by keys. A finger takes hold of a grip that has the focus, which a tap
 * gives it: before that it scrolls the page, also from a grip.
 */
export const boardHands = (host: HTMLElement, hands: BoardHands): void => {
  let start:
    | (Held & { x: number; y: number; from: readonly [number, number]; pointer: number; isMoved: boolean })
    | undefined;
  let by: readonly [number, number] = [0, 0];
  let pending: number | undefined;
  const pointerOf = ({ x, y }: { x: number; y: number }): readonly [number, number] => [x + by[0], y + by[1]];
  const isChosen = ({ node, grip }: Held): boolean =>
    grip === 'drawing' ? hands.isDrawing() : document.activeElement === node;

  host.addEventListener('pointerdown', (event) => {
    const held = heldBy(event.target);
    if (held === undefined || event.button !== 0 || !event.isPrimary) return;
    if (event.pointerType !== 'mouse' && !isChosen(held)) return;
    if (held.grip === 'drawing' && !hands.isDrawing()) return;
    event.preventDefault();
    held.node.setPointerCapture(event.pointerId);
    if (held.grip !== 'drawing' && held.node instanceof SVGElement) held.node.focus({ preventScroll: true });
    const { left, top } = held.node.getBoundingClientRect();
    const { clientX: x, clientY: y, pointerId: pointer } = event;
    start = { ...held, x, y, from: [x - left, y - top], pointer, isMoved: false };
    by = [0, 0];
    hands.grab(held.board, held.grip, [x, y]);
  });
  host.addEventListener('pointermove', ({ pointerId, clientX, clientY }) => {
    if (pointerId !== start?.pointer) return;
    by = [clientX - start.x, clientY - start.y];
    start.isMoved ||= Math.hypot(...by) >= STILL;
    if (!start.isMoved) return;
    // There may be many events for one frame.
    pending ??= requestAnimationFrame(() => {
      pending = undefined;
      if (start !== undefined) hands.drag(by, start.from, pointerOf(start));
    });
  });
  const end = (kept: boolean): void => {
    if (start === undefined) return;
    const { board, grip, from, isMoved } = start;
    const pointer = pointerOf(start);
    if (pending !== undefined) cancelAnimationFrame(pending);
    pending = undefined;
    if (kept && isMoved) hands.drag(by, from, pointer);
    start = undefined;
    hands.drop(kept && isMoved);
    if (kept && !isMoved) hands.press(board, grip);
  };
  host.addEventListener('pointerup', () => end(true));
  host.addEventListener('pointercancel', () => end(false));
  // Not every browser heeds touch-action inside a drawing, or gives the focus there.
  // A touch that stops a page in its scrolling cannot be cancelled.
  host.addEventListener(
    'touchstart',
    (event) => {
      const held = heldBy(event.target);
      if (held !== undefined && isChosen(held) && event.cancelable) event.preventDefault();
    },
    { passive: false },
  );
  host.addEventListener('click', ({ target }) => {
    const held = heldBy(target);
    if (held === undefined || held.grip === 'drawing' || document.activeElement === held.node) return;
    if (held.node instanceof SVGElement) held.node.focus({ preventScroll: true });
    hands.press(held.board, held.grip);
  });

  let pause: ReturnType<typeof setTimeout> | undefined;
  const rest = (): void => {
    clearTimeout(pause);
    hands.rest();
  };
  host.addEventListener('focusout', ({ target }) => {
    if (heldBy(target) !== undefined) rest();
  });
  host.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && start !== undefined) {
      end(false);
      event.preventDefault();
    }
    const held = heldBy(event.target);
    if (held === undefined || start !== undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const { board, grip } = held;
    const steps = KEYS[event.key];
    if (steps !== undefined) {
      const times = event.shiftKey ? MANY_STEPS : 1;
      clearTimeout(pause);
      pause = setTimeout(rest, PAUSE);
      hands.nudge(board, grip, [steps[0] * times, steps[1] * times]);
    } else if (event.key === 'Enter' || event.key === ' ') hands.press(board, grip);
    else if (event.key === 'Delete') hands.remove(board, grip);
    else return;
    event.preventDefault();
  });
};
