/** Sizes of letters, to those of the page: the least that is read from the bench, and the least that is read at all. */
const FROM_BENCH = 1.5;
const AT_ALL = 0.75;
/** The largest, to the height of the element. */
const LARGEST = 0.25;
const STEP = 0.95;

/**
 * Gives an element that scrolls the largest letters with which it need not. What is too long for letters that can be read
 * from the bench is scrolled down, never sideways.
 */
export const fillScreen = (element: HTMLElement): void => {
  const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const { clientHeight, clientWidth } = element;
  const fits = (size: number): boolean => {
    element.style.fontSize = `${size}px`;
    return (
      element.scrollWidth <= clientWidth &&
      (size <= FROM_BENCH * letter || element.scrollHeight <= clientHeight)
    );
  };
  let size = Math.max(clientHeight * LARGEST, FROM_BENCH * letter);
  while (!fits(size) && size > AT_ALL * letter) size *= STEP;
};
