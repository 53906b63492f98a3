import type { Page } from 'playwright-core';

/** What leaves the window, or lies over something else, on the page as it is shown. */
export const roomFaults = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const CONTROLS = 'button, input, select, summary, textarea';
    const found: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth} px wide`);

    interface Item {
      readonly name: string;
      readonly node: Element;
      readonly box: { x0: number; y0: number; x1: number; y1: number };
    }
    const items: Item[] = [];
    const add = (name: string, node: Element, { left, top, right, bottom }: DOMRect, inset: number): void => {
      const high = (bottom - top) * inset;
      if (right - left > 1)
        items.push({ name, node, box: { x0: left, y0: top + high, x1: right, y1: bottom - high } });
    };
    const isSeen = (node: Element): boolean =>
      node.checkVisibility({ visibilityProperty: true }) && node.closest('.hidden, .skip, option') === null;
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
      const node = text.parentElement;
      const words = text.textContent?.trim() ?? '';
      if (node === null || words === '' || node.matches('script, style, textarea') || !isSeen(node)) continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      // A line of text is higher than its letters.
      for (const rect of range.getClientRects()) add(`"${words}"`, node, rect, 0.22);
    }
    const written = items.length;
    for (const node of document.querySelectorAll(`${CONTROLS}, .grip`)) {
      if (!isSeen(node)) continue;
      const name =
        node.getAttribute('aria-label') ?? (node.textContent || node.parentElement?.ariaLabel || '');
      add(`[${name.trim()}]`, node, node.getBoundingClientRect(), 0);
      // A plan's name may be of any length.
      if (node instanceof HTMLInputElement && node.id !== 'title' && node.scrollWidth > node.clientWidth)
        found.push(`[${name}] is too small for "${node.value}"`);
    }
    items.forEach(({ name, node, box }, i) => {
      if (i < written) {
        if (box.x0 < -0.5 || box.x1 > clientWidth + 0.5) found.push(`${name} leaves the window`);
        const around = node.closest(CONTROLS)?.getBoundingClientRect();
        if (around && (box.x0 < around.left - 0.5 || box.x1 > around.right + 0.5))
          found.push(`${name} is wider than its button`);
      }
      for (const other of items.slice(i + 1)) {
        const wide = Math.min(box.x1, other.box.x1) - Math.max(box.x0, other.box.x0);
        const high = Math.min(box.y1, other.box.y1) - Math.max(box.y0, other.box.y0);
        if (wide > 1 && high > 1 && !other.node.contains(node))
          found.push(`${name} and ${other.name} overlap by ${wide.toFixed(0)} × ${high.toFixed(0)} px`);
      }
    });
    return found;
  });
