import { find } from '../browser/dom.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

/**
 * What is folded away behind one button where there is no room for all. The browser opens it, and closes it where something
 * else is pressed; arrow keys go through it, and Escape closes it and nothing else.
 */
export const moreMenu = (): void => {
  const opener = find('more', HTMLButtonElement);
  const items = find('more-items', HTMLElement);
  let isOpen = false;
  items.addEventListener('beforetoggle', (event) => {
    isOpen = event.newState === 'open';
  });
  const close = (): void => {
    if (isOpen) items.hidePopover();
  };
  // First the focus goes back, so that a dialog which is asked for leaves it on what is seen.
  items.addEventListener('click', ({ target }) => target instanceof HTMLButtonElement && close(), true);
  addEventListener('resize', close);
  const go = (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    if (!isOpen || (step === undefined && event.key !== 'Escape')) return;
    event.preventDefault();
    if (step === undefined) {
      close();
      return;
    }
    const all: (Element | null)[] = [opener, ...items.querySelectorAll('button')];
    const at = all.indexOf(document.activeElement);
    const next = all[(at + step + all.length) % all.length];
    if (next instanceof HTMLElement) next.focus();
  };
  for (const each of [opener, items]) each.addEventListener('keydown', go);
};
