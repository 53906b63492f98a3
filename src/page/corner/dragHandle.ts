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
}

const MANY_STEPS = 10;

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: MANY_STEPS,
  PageDown: -MANY_STEPS,
};

/**
 * Makes an element draggable by pointer and by keys.
 * @param held the handle of the element, and px to the mm, at the time of the call
 */
export const dragHandle = (
  node: SVGElement,
  { grab, drag, drop, nudge }: DragActions,
  held: () => { readonly handle: Handle; readonly scale: number } | undefined,
): void => {
  let start: { x: number; y: number; scale: number } | undefined;
  let pending: number | undefined;
  let by = 0;

  // A finger on a handle does not scroll the page; browsers ignore touch-action inside a drawing.
  node.addEventListener('touchstart', (event) => event.preventDefault(), { passive: false });
  node.addEventListener('pointerdown', (event) => {
    const now = held();
    if (now === undefined || event.button !== 0) return;
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    node.focus({ preventScroll: true });
    start = { x: event.clientX, y: event.clientY, scale: now.scale };
    by = 0;
    grab(now.handle);
  });
  node.addEventListener('pointermove', (event) => {
    const now = held();
    if (start === undefined || now === undefined) return;
    by = (now.handle.axis === 'u' ? start.y - event.clientY : event.clientX - start.x) / start.scale;
    // There may be many events for one frame.
    pending ??= requestAnimationFrame(() => {
      pending = undefined;
      if (start !== undefined) drag(by);
    });
  });
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
  node.addEventListener('pointerup', () => end(true));
  node.addEventListener('pointercancel', () => end(false));
  node.addEventListener('keydown', (event) => {
    const now = held();
    if (now === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Escape') end(false);
    const steps = KEYS[event.key];
    if (steps === undefined || start !== undefined) return;
    event.preventDefault();
    // An arrow key to the side moves an upright that way, whether its value grows or shrinks.
    const sense = event.key === 'ArrowLeft' || event.key === 'ArrowRight' ? now.handle.sense : 1;
    nudge(now.handle, sense * steps * (event.shiftKey ? MANY_STEPS : 1));
  });
};
