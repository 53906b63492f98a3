import { find, nextTask } from '../browser/dom.ts';
import type { SheetsState } from './readySheets.ts';
import type { DrawnPage } from './sheetJob.ts';

/**
 * Prints sheets at full size, and nothing else of the page, whether the user prints from the page or from the browser's
 * menu. A browser asked by its menu does not wait: where the sheets are not ready, it prints that.
 * @param unasked what stands on the paper in place of sheets that were not asked for by the page's own button, where they
 * would not be what the user expects
 * @returns puts the sheets in the document, little by little, and prints them
 */
export const printedSheets = (
  state: () => SheetsState,
  unasked: () => string | undefined,
): (() => Promise<void>) => {
  const host = find('print', HTMLElement);
  const sizes = document.head.appendChild(document.createElement('style'));
  let shown: readonly DrawnPage[] = [];
  /** Puts the rest of those that are shown in the document, as far as it is run. */
  let rest: Iterator<void> = [].values();

  const show = (pages: readonly DrawnPage[]): void => {
    if (shown === pages) return;
    host.replaceChildren();
    sizes.textContent = pageRules(pages);
    shown = pages;
    rest = putIn(host, pages);
  };

  addEventListener('beforeprint', () => {
    const { is, pages, says } = state();
    const instead = shown.length === 0 ? unasked() : undefined;
    if (instead !== undefined) {
      host.textContent = instead;
      return;
    }
    show(is === 'ready' ? pages : []);
    while (rest.next().done !== true);
    if (is === 'refused') host.textContent = `The templates cannot be made: ${says.join('. ')}.`;
    else if (is !== 'ready')
      host.textContent = 'The templates were not ready to print. On the page, press Print.';
  });
  addEventListener('afterprint', () => show([]));

  return async () => {
    const { pages } = state();
    show(pages);
    while (shown === pages && rest.next().done !== true) await nextTask();
    if (state().pages === pages) print();
  };
};

/** Path data, in letters, that a browser takes in at once: a few ms. */
const SLICE = 1 << 17;

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** Puts pages in the document; pauses after each slice. */
function* putIn(host: HTMLElement, pages: readonly DrawnPage[]): Generator<void, void> {
  const sizes = sizesOf(pages);
  let slice = 0;
  for (const page of pages) {
    const { width, height, paths } = page;
    const svg = document.createElementNS(NAMESPACE, 'svg');
    setAll(svg, { width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` });
    svg.style.setProperty('page', pageName(sizes.indexOf(sizeOf(page))) || 'auto');
    host.append(svg);
    for (const { look, data } of paths) {
      const path = document.createElementNS(NAMESPACE, 'path');
      setAll(path, { ...look, d: data });
      svg.append(path);
      slice += data.length;
      if (slice < SLICE) continue;
      slice = 0;
      yield;
    }
  }
}

const setAll = (element: Element, attributes: Readonly<Record<string, string>>): void => {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
};

const sizeOf = ({ width, height }: DrawnPage): string => `${width}mm ${height}mm`;

/** Pages of a roll differ in length. */
const sizesOf = (pages: readonly DrawnPage[]): string[] => [...new Set(pages.map(sizeOf))];

/** Each size of page has a name; the first needs none, as not every browser knows names. */
const pageName = (index: number): string => (index === 0 ? '' : `sheet-${index}`);

const pageRules = (pages: readonly DrawnPage[]): string =>
  sizesOf(pages)
    .map((size, i) => `@page ${pageName(i)} { size: ${size}; margin: 0 }`)
    .join('\n');
