// Whether there is room for everything, in Debian's Chromium: at every width, in both units, with large letters too.
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHEST, inInches } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { roomFaults } from '../page/roomFaults.ts';

const PLANS = { mm: [CHEST, ' mm'], in: [inInches(CHEST), '"'] } as const;

let there: Visit;
let page: Page;
let cdp: CDPSession;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
  cdp = await page.context().newCDPSession(page);
});
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
      found.push(...(await roomFaults(page)).map((fault) => `${width} px: ${fault}`));
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
