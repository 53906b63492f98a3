/** Calls `print` where Ctrl+P, or Cmd+P, is pressed, in place of what the browser would print. */
export const onPrintKey = (print: () => void): void => {
  addEventListener('keydown', (event) => {
    const isPrint = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
    if (!isPrint || event.key.toLowerCase() !== 'p') return;
    event.preventDefault();
    // What is being typed counts.
    const at = document.activeElement;
    if (at instanceof HTMLElement) {
      at.blur();
      at.focus();
    }
    print();
  });
};
