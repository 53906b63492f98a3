import type { Handle } from '../model/handles.ts';

/** Events of a handle that is moved by pointer or by keys. */
export interface DragActions {
  readonly grab: (handle: Handle) => void;
  /** @param by mm, up or to the right, from where it was grabbed */
  readonly drag: (by: number) => void;
  /** @param kept false restores the place before */
  readonly drop: (kept: boolean) => void;
  /** @param steps of 0.1 mm or 1/64 in, by which its value grows */
  readonly nudge: (handle: Handle, steps: number) => void;
  /** Moves it to its least or most. */
  readonly limit: (handle: Handle, end: 'least' | 'most') => void;
  /** Ends a run of keys: its focus has left, or it has paused. */
  readonly settle: () => void;
  /** Puts back what a run of keys has moved; false where there is none. */
  readonly cancel: () => boolean;
}

const MANY_STEPS = 10;

/** After so many ms another key begins another step of undo. */
const PAUSE = 2000;

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: MANY_STEPS,
  PageDown: -MANY_STEPS,
};

/** Movement in px that is no edit: a hand that clicks or taps is not quite still. */
const STILL = 3;

/**
 * Makes an element draggable by pointer and by keys. A finger takes hold of a grip that has the focus, which a tap gives it:
 * before that it scrolls the page, also from a grip.
 * @param node the grip, which takes the focus
 * @param line where a mouse takes hold too
 * @param held the handle of the element, and px to the mm, at the time of the call
 */
export const dragHandle = (
  node: SVGElement,
  line: SVGElement,
  { grab, drag, drop, nudge, limit, settle, cancel }: DragActions,
  held: () => { readonly handle: Handle; readonly scale: number } | undefined,
): void => {
  let start: { x: number; y: number; scale: number; pointer: number; isMoved: boolean } | undefined;
  let pending: number | undefined;
  let by = 0;
  const isChosen = (): boolean => document.activeElement === node;

  const take = (event: PointerEvent): void => {
    const now = held();
    if (now === undefined || event.button !== 0 || !event.isPrimary) return;
    if (event.pointerType !== 'mouse' && (event.currentTarget === line || !isChosen())) return;
    event.preventDefault();
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
    node.focus({ preventScroll: true });
    const { clientX: x, clientY: y, pointerId: pointer } = event;
    start = { x, y, scale: now.scale, pointer, isMoved: false };
    by = 0;
    grab(now.handle);
  };
  const move = (event: PointerEvent): void => {
    const now = held();
    if (now === undefined || event.pointerId !== start?.pointer) return;
    const px = now.handle.axis === 'u' ? start.y - event.clientY : event.clientX - start.x;
    start.isMoved ||= Math.abs(px) >= STILL;
    if (!start.isMoved) return;
    by = px / start.scale;
    // There may be many events for one frame.
    pending ??= requestAnimationFrame(() => {
      pending = undefined;
      if (start !== undefined) drag(by);
    });
  };
  const end = (kept: boolean): void => {
    if (start === undefined) return;
    if (pending !== undefined) {
      cancelAnimationFrame(pending);
      pending = undefined;
      if (kept) drag(by);
    }
    start = undefined;
    drop(kept);
  };
  // Not every browser heeds touch-action inside a drawing, or gives the focus there.
  // A touch that stops a page in its scrolling cannot be cancelled.
  node.addEventListener('touchstart', (event) => isChosen() && event.cancelable && event.preventDefault(), {
    passive: false,
  });
  node.addEventListener('click', () => node.focus({ preventScroll: true }));
  for (const each of [node, line]) {
    each.addEventListener('pointerdown', take);
    each.addEventListener('pointermove', move);
    each.addEventListener('pointerup', () => end(true));
    each.addEventListener('pointercancel', () => end(false));
  }
  line.addEventListener('pointerenter', () => node.setAttribute('data-near', ''));
  line.addEventListener('pointerleave', () => node.removeAttribute('data-near'));
  let pause: ReturnType<typeof setTimeout> | undefined;
  const rest = (): void => {
    clearTimeout(pause);
    settle();
  };
  node.addEventListener('blur', rest);
  node.addEventListener('keydown', (event) => {
    const now = held();
    if (now === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const steps = KEYS[event.key];
    const isLimit = event.key === 'Home' || event.key === 'End';
    if (event.key === 'Escape') {
      const isDragged = start !== undefined;
      end(false);
      if (isDragged || cancel()) event.preventDefault();
    }
    if ((steps === undefined && !isLimit) || start !== undefined) return;
    event.preventDefault();
    clearTimeout(pause);
    pause = setTimeout(rest, PAUSE);
    if (steps === undefined) {
      limit(now.handle, event.key === 'Home' ? 'least' : 'most');
      return;
    }
    // An arrow key to the side moves an upright that way, whether its value grows or shrinks.
    const sense = event.key === 'ArrowLeft' || event.key === 'ArrowRight' ? now.handle.sense : 1;
    nudge(now.handle, sense * steps * (event.shiftKey ? MANY_STEPS : 1));
  });
};
