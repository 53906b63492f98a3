// Movable fingers on the page, in Debian's Chromium: their section, the table of prices, and spacers that are dragged.
import { readFileSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RULES, axeFaults, COLOUR_RULES } from '../page/axeFaults.ts';
import { inInches } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { roomFaults } from '../page/roomFaults.ts';
import { give, kept, slider, told } from '../page/steering.ts';

/** With half pins of so little freedom that one spacer cannot serve all fronts. */
const FINGERS = readFileSync('examples/haberdashery-chest-fingers.yaml', 'utf8').replace('[6, 10]', '[5, 8]');
const GUIDED = readFileSync('examples/haberdashery-chest-guided.yaml', 'utf8');

let there: Visit;
let page: Page;
let touch: CDPSession;
beforeAll(async () => {
  there = await visit();
  page = await there.open({ hasTouch: true });
  touch = await page.context().newCDPSession(page);
});
afterAll(() => there.close());

const openPlan = async (text: string): Promise<void> => {
  await give(page, 'chest.yaml', Buffer.from(text));
  await page.locator('#fingers').waitFor();
};
const table = () => page.locator('.prices');
const tableIsNew = (): Promise<void> => page.locator('.prices[aria-busy="false"]').waitFor();
const choice = (words: string) => table().getByRole('button', { name: words });
const field = (label: string) => page.getByRole('textbox', { name: `Movable fingers, ${label}` });
const spacerRows = (): Promise<string[]> => page.locator('.spacers tbody tr').allTextContents();

describe('the section of movable fingers', () => {
  it('is for plans with a cutter, and begins with the width of a pair', async () => {
    expect(await page.locator('#fingers').isVisible()).toBe(false);
    await openPlan(GUIDED);
    await page.locator('#fingers input[name="together"]').fill('14');
    await page.keyboard.press('Enter');
    await field('pair together').waitFor();
    expect(await field('guide bush').inputValue()).toBe('16');
    expect(await kept(page)).toContain('fingers: {together: 14, bush: 16}');
    expect(await page.locator('.fingers .finger').first().getAttribute('d')).not.toBe('');
    await page.getByRole('button', { name: 'Cut without fingers' }).click();
    await page.locator('#fingers input[name="together"]').waitFor();
    expect(await kept(page)).toBe(GUIDED);
  });

  it('takes its numbers as they are typed, and says what is wrong with one', async () => {
    await openPlan(FINGERS);
    await field('pairs').fill('7');
    await field('pairs').press('Enter');
    expect(await kept(page)).toBe(FINGERS.replace('{channel: 25}}', '{channel: 25}, pairs: 7}'));
    await field('guide bush').fill('10');
    await field('guide bush').press('Enter');
    expect(await page.locator('#messages .stop').textContent()).toMatch(/bush/u);
    expect(await field('guide bush').inputValue()).toBe('10');
    await field('guide bush').press('Escape');
    expect(await field('guide bush').inputValue()).toBe('16');
    await field('pairs').fill('');
    await field('pairs').press('Enter');
    expect(await kept(page)).toBe(FINGERS);
  });

  it('has the prices of spacers to choose by: they are worked out beside the page, and the older ones stay until then', async () => {
    await tableIsNew();
    expect(await choice('1 spacer').isDisabled()).toBe(true);
    expect(await choice('2 spacers').getAttribute('aria-pressed')).toBe('true');
    await choice('3 spacers').click();
    expect(await table().getAttribute('aria-busy')).toBe('true');
    expect(await table().isVisible()).toBe(true);
    expect(await page.locator('#fingers').textContent()).toContain('Working…');
    expect(await choice('3 spacers').getAttribute('aria-pressed')).toBe('true');
    expect(await kept(page)).toBe(FINGERS.replace('spacers: 2', 'spacers: 3'));
    expect((await spacerRows()).filter((row) => row.includes('front'))).toHaveLength(3);
    await tableIsNew();
    await choice('no limit').click();
    expect(await kept(page)).toBe(FINGERS.replace('spacers: 2, ', ''));
    await tableIsNew();
    await choice('2 spacers').focus();
    await page.keyboard.press('Enter');
    expect(await kept(page)).toContain('family:  {halfPins: [5, 8], spacers: 2}');
    expect(await choice('2 spacers').evaluate((node) => node === document.activeElement)).toBe(true);
  });
});

describe('a spacer that two drawers share', () => {
  it('is dragged by a mouse, with all its tails, and says so', async () => {
    await openPlan(FINGERS);
    const grip = slider(page, 'spacer of tail 1');
    const before = await told(grip);
    const box = await grip.locator('.grip').boundingBox();
    if (box === null) throw new Error('no grip');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 6);
    await page.locator('.callout').waitFor();
    const words = (await page.locator('.callout').textContent()) ?? '';
    await page.mouse.up();
    const after = await told(grip);
    expect(after).toBeGreaterThan(before + 0.3);
    expect(words).toMatch(
      new RegExp(
        `^spacer ${after} mm \\(\\+[\\d.]+\\), all its tails in eight of nine drawers, [\\d.]+ mm wide`,
        'u',
      ),
    );
    expect(await told(slider(page, 'spacer of tail 2'))).toBe(after);
    expect((await spacerRows())[1]).toMatch(
      /^\s*[\d.]+\s*4\s*front of Buttons, Thread, Ribbon, Patches, Notions/u,
    );
    await page.getByRole('button', { name: 'Let the set choose all fronts' }).click();
    expect(await told(grip)).toBe(before);
  });

  it('moves by keys, to its limits too', async () => {
    const handle = slider(page, 'spacer of tail 2');
    await handle.focus();
    const before = await told(handle);
    await page.keyboard.press('ArrowUp');
    expect(await told(handle)).toBeCloseTo(before + 0.1, 2);
    expect(await told(slider(page, 'spacer of tail 1'))).toBe(await told(handle));
    await page.keyboard.press('Home');
    expect(await told(handle)).toBe(0);
    await page.keyboard.press('End');
    expect(await told(handle)).toBeGreaterThan(before + 1);
    await page.keyboard.press('Escape');
    expect(await told(handle)).toBe(before);
  });

  it('moves under a finger at its grip that was tapped, and the page scrolls under one beside it', async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    const handle = slider(page, 'spacer of tail 1');
    await handle.evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const before = await told(handle);
    const area = await handle.locator('.touch').boundingBox();
    if (area === null) throw new Error('no target');
    expect([area.width, area.height].map(Math.round)).toEqual([44, 44]);
    const swipe = async (x: number, y: number, by: number): Promise<void> => {
      for (const [type, at] of [
        ['touchStart', y],
        ['touchMove', y - by / 2],
        ['touchMove', y - by],
      ] as const) {
        await touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y: at }] });
        await page.waitForTimeout(30);
      }
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    const middle = area.y + area.height / 2;
    await page.touchscreen.tap(area.x + area.width / 2, middle);
    await page.waitForFunction(() => document.activeElement?.ariaLabel === 'spacer of tail 1');
    await swipe(area.x + area.width / 2, middle, 8);
    await expect.poll(() => told(handle)).toBeGreaterThan(before);
    expect(await page.locator('#undo').getAttribute('title')).toBe('spacer, four of nine drawers');
    const from = await page.evaluate(() => scrollY);
    await swipe(area.x - 12, middle, 100);
    await page.waitForFunction((y) => scrollY > y + 40, from);
  });
});

describe('with fingers there is room for everything, and nothing for axe-core to find', () => {
  it.each([
    ['mm', FINGERS, 16],
    ['in', inInches(FINGERS), 32],
  ] as const)('in %s', async (_, text, standard) => {
    await touch.send('Page.setFontSizes', { fontSizes: { standard } });
    await openPlan(text);
    await tableIsNew();
    const found: string[] = [];
    for (const width of [320, 390, 600, 820, 1199, 1200, 1440, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      await page.evaluate(async () => {
        scrollTo(0, 0);
        await new Promise(requestAnimationFrame);
        await new Promise(requestAnimationFrame);
      });
      found.push(...(await roomFaults(page)).map((fault) => `${width} px: ${fault}`));
    }
    expect(found).toEqual([]);
  });

  it('in any colours', async () => {
    expect(await axeFaults(page, AXE_RULES)).toEqual([]);
    for (const colours of [
      { colorScheme: 'dark', forcedColors: 'none' },
      { colorScheme: 'light', forcedColors: 'active' },
    ] as const) {
      await page.emulateMedia(colours);
      expect(await axeFaults(page, COLOUR_RULES, '#fingers')).toEqual([]);
    }
  });

  it('the drawing that stays while the page scrolls lies over nothing else', async () => {
    for (const width of [820, 1024, 1440]) {
      await page.setViewportSize({ width, height: 900 });
      const covered = await page.evaluate(() => {
        scrollTo(0, document.body.scrollHeight);
        const [drawing, ...others] = ['#drawing', '#set', '#controls', '.family', '#fingers'].map((name) => ({
          name,
          box: document.querySelector(name)?.getBoundingClientRect() ?? new DOMRect(),
        }));
        const over = (a = new DOMRect(), b = new DOMRect()): boolean =>
          a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
        return others.flatMap(({ name, box }) => (over(drawing?.box, box) ? [name] : []));
      });
      expect(covered).toEqual([]);
    }
  });
});
