// The page judged by axe-core (rules of WCAG 2.2, A and AA) and by its measures, in every state, width and colour scheme.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RULES, axeFaults, COLOUR_RULES } from '../page/axeFaults.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { pressInHead } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

const COLOURS = {
  dark: { colorScheme: 'dark', forcedColors: 'none' },
  forced: { colorScheme: 'dark', forcedColors: 'active' },
} as const;

const STATES: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'as it opens': async () => {},
  'while a line is stopped': async (page) => {
    await page.getByRole('slider', { name: 'tail 2, lower edge', exact: true }).focus();
    for (let i = 0; i < 8; i++) await page.keyboard.press('PageDown');
    await page.locator('.callout').waitFor();
  },
  'with a message, locks and the plan as text': async (page) => {
    await page.getByRole('button', { name: 'Lock tail 2' }).click();
    await page.locator('#text-panel summary').click();
    await page.locator('#text').fill('name: x');
    await page
      .locator('#file')
      .setInputFiles({ name: 'x.txt', mimeType: 'text/plain', buffer: Buffer.from('?') });
    await page.locator('#messages .stop').waitFor();
  },
  'with back corners, while one is dragged': async (page) => {
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    const grip = page.getByRole('slider', { name: 'tail 1, lower edge' }).locator('.grip');
    // At the lower edge of the window, so that the head that stays in view lies over as little as may be.
    await grip.evaluate((element) => element.scrollIntoView({ block: 'end' }));
    const box = await grip.boundingBox();
    await page.mouse.move((box?.x ?? 0) + 4, (box?.y ?? 0) + 5);
    await page.mouse.down();
    await page.mouse.move((box?.x ?? 0) + 4, (box?.y ?? 0) - 10);
    await page.locator('.callout').waitFor();
  },
  'with a single corner and a note': async (page) => {
    await page.locator('#file').setInputFiles({
      name: 'box.yaml',
      mimeType: 'text/plain',
      buffer: Buffer.from('joints: [{name: Box, kind: through, width: 56, tailBoard: 10, pinBoard: 10}]'),
    });
    await page.waitForFunction(() => document.getElementById('corner-name')?.textContent === 'Box');
    await pressInHead(page, '#link');
    await page.locator('#messages .note').waitFor();
  },
  'with what is folded away': async (page) => {
    if (await page.locator('#more').isVisible()) await page.click('#more');
  },
  'while sheets are chosen': async (page) => {
    await page.click('#take');
    await page.locator('#take-dialog summary').click();
  },
  'while files are chosen': async (page) => {
    await pressInHead(page, '#save-sheets');
    await page.locator('#preview img').first().waitFor();
  },
  'at the bench': async (page) => {
    await page.click('#bench');
    await page.locator('#bench-dialog[open]').waitFor();
  },
  'over the licences': async (page) => {
    await page.click('#licences');
    await page.locator('#licences-text').filter({ hasText: 'zod' }).waitFor();
  },
};

describe.each([
  [1440, 'light', ['dark', 'forced']],
  [390, 'dark', []],
] as const)('the page %i px wide in %s', (width, colorScheme, others) => {
  it('gives axe-core nothing to find, in any state, nor in other colours', async () => {
    const found: string[] = [];
    // The page's policy lets no script in, axe-core neither.
    const page = await there.open({ viewport: { width, height: 844 }, colorScheme, bypassCSP: true });
    for (const [name, enter] of Object.entries(STATES)) {
      await page.emulateMedia({ colorScheme, forcedColors: 'none' });
      await page.reload();
      await enter(page);
      found.push(...(await axeFaults(page, AXE_RULES)).map((fault) => `${name}: ${fault}`));
      for (const colours of others) {
        await page.emulateMedia(COLOURS[colours]);
        found.push(...(await axeFaults(page, COLOUR_RULES)).map((fault) => `${name}, ${colours}: ${fault}`));
      }
    }
    expect(found).toEqual([]);
    await page.context().close();
  });
});

describe.each([
  [1440, 'light'],
  [1024, 'dark'],
  [390, 'light'],
] as const)('the page %i px wide', (width, colorScheme) => {
  it('shows everything without scrolling sideways, and gives a finger 44 px', async () => {
    const page = await there.open({ viewport: { width, height: 844 }, colorScheme });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, input:not([type]), input[type="text"], select, summary, label:has([type="radio"])',
        ),
      ]
        .map((node) => ({
          name: node.getAttribute('aria-label') ?? node.textContent,
          box: node.getBoundingClientRect(),
        }))
        .filter(({ box }) => box.width > 0 && (box.width < 43.99 || box.height < 43.99))
        .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
    );
    expect(small).toEqual([]);
    await page.context().close();
  });
});

describe('motion', () => {
  it('there is none, for those who ask for none and for all others', async () => {
    const page = await there.open({ reducedMotion: 'reduce' });
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((node) => {
          const { animationName, transitionDuration } = getComputedStyle(node);
          return animationName !== 'none' || transitionDuration !== '0s';
        }).length,
    );
    expect(moving).toBe(0);
    await page.context().close();
  });
});
