// Whether there is room for everything, in Debian's Chromium: at every width, in both units, with large letters too.
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { CHEST } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';

vi.setConfig({ testTimeout: 60_000 });

/** The same drawers, told in inches: few of their lengths are whole, so that their fractions are long. */
const IN_INCHES = CHEST.replace('units: mm', 'units: in').replace(
  /\b(thickness|pin|halfPin|lap|offset|width|depth|height|side|top|behind|drop|slack): ([\d.]+)/gu,
  '$1: $2mm',
);
const PLANS = { mm: [CHEST, ' mm'], in: [IN_INCHES, '"'] } as const;

let there: Visit;
let page: Page;
let cdp: CDPSession;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
  cdp = await page.context().newCDPSession(page);
}, 60_000);
afterAll(() => there.close());

const openPlan = async (unit: keyof typeof PLANS): Promise<void> => {
  const [text, sign] = PLANS[unit];
  const file = { name: 'chest.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) };
  await page.locator('#file').setInputFiles(file);
  await page.locator('.summary').filter({ hasText: sign }).waitFor();
};

/** Resizes the window, and shows another corner, so that all of them have their turn. */
const show = async (width: number, turn: number): Promise<void> => {
  await page.setViewportSize({ width, height: 900 });
  await page.evaluate(async (i) => {
    const corners = document.querySelectorAll<HTMLElement>('.member');
    corners[i % corners.length]?.click();
    if (i % 3 === 0) document.querySelector<HTMLElement>('#which button:last-child')?.click();
    scrollTo(0, 0);
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
  }, turn);
};

/** What is wrong with the page as it is shown. */
const faults = (): Promise<string[]> =>
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

const widths = (step: number): number[] =>
  Array.from({ length: Math.floor((2560 - 320) / step) + 1 }, (_, i) => 320 + i * step);

describe.each([
  ['as large as they come', 16, 40],
  ['twice as large', 32, 240],
] as const)('with letters %s', (_, standard, step) => {
  it.each(['mm', 'in'] as const)('there is room for everything at every width, in %s', async (unit) => {
    await cdp.send('Page.setFontSizes', { fontSizes: { standard } });
    await openPlan(unit);
    const found: string[] = [];
    for (const [turn, width] of widths(step).entries()) {
      await show(width, turn);
      found.push(...(await faults()).map((fault) => `${width} px: ${fault}`));
    }
    expect(found).toEqual([]);
  });
});

/** What of these lies within the window and under nothing else. */
const inView = (selectors: readonly string[]): Promise<string[]> =>
  page.evaluate(
    (all) =>
      all.filter((selector) => {
        const node = document.querySelector(selector);
        const { left, top, width, height } = node?.getBoundingClientRect() ?? new DOMRect();
        const there = document.elementFromPoint(left + width / 2, top + height / 2);
        return node !== null && there !== null && node.contains(there);
      }),
    selectors,
  );

describe('what is needed everywhere', () => {
  beforeAll(async () => {
    await cdp.send('Page.setFontSizes', { fontSizes: { standard: 16 } });
    await openPlan('in');
    await page.locator('.member', { hasText: 'Cloth' }).click();
  });

  it('stays in view on a phone: undo, and the choice of drawer and of its corners', async () => {
    await page.setViewportSize({ width: 390, height: 700 });
    const needed = ['#undo', '#which select', '#which button'];
    for (const place of ['#controls', 'footer']) {
      await page.locator(place).evaluate((node) => node.scrollIntoView());
      expect(await inView(needed)).toEqual(needed);
    }
  });

  it('never covers what has the focus (WCAG 2.2, 2.4.11)', async () => {
    const covered = await page.evaluate(() => {
      const cover = document.querySelector('.headed');
      const all = document.querySelectorAll<HTMLElement>('button, input, summary, select, [tabindex="0"]');
      return [...all].toReversed().flatMap((each) => {
        each.focus();
        // What is above it on the page is not below it in the window.
        if (document.activeElement !== each || cover === null || each.closest('.headed, header, #welcome'))
          return [];
        const { top, bottom, height } = each.getBoundingClientRect();
        const under = cover.getBoundingClientRect().bottom;
        // What fits below it is seen whole; a line that is longer than the window is seen in part.
        const isUnder = height <= innerHeight - under ? top < under - 1 : bottom <= under;
        return isUnder ? [each.getAttribute('aria-label') ?? each.textContent ?? ''] : [];
      });
    });
    expect(covered).toEqual([]);
  });

  it('stays in view on a desk: undo and the drawing, while the numbers scroll', async () => {
    await page.setViewportSize({ width: 1440, height: 800 });
    for (const place of ['#controls label:last-child', '.member:last-child']) {
      await page
        .locator(place)
        .last()
        .evaluate((node) => node.scrollIntoView({ block: 'end' }));
      expect(await inView(['#undo', '#corner svg'])).toEqual(['#undo', '#corner svg']);
    }
  });
});

describe('at the bench', () => {
  it('numbers are as large as the screen allows, and arrow keys turn to the next corner', async () => {
    await page.click('#bench');
    const titles: (string | null)[] = [];
    for (const [width, height] of [
      [390, 844],
      [820, 1180],
      [1440, 900],
      [2560, 1440],
    ] as const) {
      await page.setViewportSize({ width, height });
      await page.keyboard.press('ArrowRight');
      titles.push(await page.locator('#bench-title').textContent());
      const fits = await page.locator('#bench-body').evaluate((body) =>
        [1, 1.08].map((times) => {
          body.style.fontSize = `${Number.parseFloat(body.style.fontSize) * times}px`;
          return body.scrollWidth <= body.clientWidth && body.scrollHeight <= body.clientHeight;
        }),
      );
      expect(fits).toEqual([true, false]);
    }
    await page.keyboard.press('ArrowLeft');
    titles.push(await page.locator('#bench-title').textContent());
    const [buttons, thread] = ['Buttons', 'Thread'].map((name) => [
      `${name}, front corners`,
      `${name}, back corners`,
    ]);
    expect(titles).toEqual(['Cloth, back corners', ...(buttons ?? []), thread?.[0], buttons?.[1]]);
  });
});
