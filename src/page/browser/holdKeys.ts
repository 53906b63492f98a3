/** What types, and Tab, which moves the focus, are not held. */
const isHeld = ({ key, ctrlKey, metaKey }: KeyboardEvent): boolean =>
  key !== 'Tab' && (key.length > 1 || key === ' ' || ctrlKey || metaKey);

/** Does what a key would have done, where the focus is now: a page may not press a key as a hand does. */
const press = (held: KeyboardEvent): void => {
  const { key, code, ctrlKey, metaKey, altKey, shiftKey } = held;
  const at = document.activeElement ?? document.body;
  const again = { key, code, ctrlKey, metaKey, altKey, shiftKey, bubbles: true, cancelable: true };
  if (!at.dispatchEvent(new KeyboardEvent('keydown', again))) return;
  if (key === 'Escape') at.closest('dialog')?.close();
  if ((key === 'Enter' || key === ' ') && at instanceof HTMLButtonElement) at.click();
};

/** Holds the keys that are pressed from now on, for what is about to be opened; what is returned presses them there. */
export const holdKeys = (): (() => void) => {
  const held: KeyboardEvent[] = [];
  const hold = (event: KeyboardEvent): void => {
    if (!isHeld(event)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    held.push(event);
  };
  addEventListener('keydown', hold, true);
  return () =>
    // A dialog may be opened in a task of its own.
    void setTimeout(() => {
      removeEventListener('keydown', hold, true);
      held.forEach(press);
    });
};
