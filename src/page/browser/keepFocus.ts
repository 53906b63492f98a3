const FOCUSABLE = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';

const isUsable = (element: Element): boolean =>
  element.isConnected &&
  !element.matches(':disabled') &&
  element.closest('[hidden], dialog:not([open])') === null;

/** Focuses an element; false where it cannot have the focus. */
const focus = (element: Element): boolean => {
  if (!isUsable(element) || !(element instanceof HTMLElement || element instanceof SVGElement)) return false;
  element.focus();
  return document.activeElement === element;
};

/**
 * Keeps the keyboard's place on the page.
 * @returns to be called after what is shown has changed: where the element that had the focus is gone, hidden or
 * disabled, its neighbour has it
 */
export const keepFocus = (): (() => void) => {
  let last: Element | undefined;
  /** All that could have the focus when the last one had it, in the order of the page. */
  let order: Element[] = [];

  document.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof Element)) return;
    last = target;
    order = [...document.querySelectorAll(FOCUSABLE)];
  });
  document.addEventListener('focusout', ({ target, relatedTarget }) => {
    // Who clicks beside everything means to leave; an element that is removed leaves too, and is then gone.
    if (relatedTarget === null)
      setTimeout(() => {
        if (last === target && isUsable(last)) last = document.activeElement === last ? last : undefined;
      });
  });
  document.addEventListener(
    'close',
    ({ target }) => {
      if (!(target instanceof HTMLDialogElement)) return;
      // The browser has put the focus back, where what opened the dialog had it.
      const opener = document.getElementById(target.id.replace('-dialog', ''));
      if (document.activeElement === document.body && opener !== null) focus(opener);
    },
    true,
  );

  return () => {
    if (last === undefined || isUsable(last)) return;
    const { activeElement } = document;
    if (activeElement !== null && activeElement !== document.body && activeElement !== last) return;
    const [lost, at] = [last, order.indexOf(last)];
    const away = (element: Element): number => {
      const steps = order.indexOf(element) - at;
      // Beside it first, then the nearest, and of two as near the later one.
      return (
        (lost.parentElement === element.parentElement ? 0 : 1e6) + 2 * Math.abs(steps) - (steps > 0 ? 1 : 0)
      );
    };
    order.toSorted((a, b) => away(a) - away(b)).find(focus);
  };
};
