// Every key of a plan by hand on the page, in Debian's Chromium: the groups unfolded, what is refused, and a chest begun
// without a line of text.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RULES, axeFaults, COLOUR_RULES } from '../page/axeFaults.ts';
import { CHEST, EXAMPLE } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { roomFaults } from '../page/roomFaults.ts';
import { fieldsOf, give, kept } from '../page/steering.ts';

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
});
afterAll(() => there.close());

const field = (name: string) => fieldsOf(page).field(name);
const typeIn = (name: string, text: string) => fieldsOf(page).typeIn(name, text);
const unfold = (title: string) => fieldsOf(page).unfold(title);

describe('a group of keys', () => {
  it('is unfolded, and each of its fields is one step of undo', async () => {
    expect(await page.locator('.keys-body').count()).toBe(0);
    await unfold('Gaps and lip');
    await typeIn('Gaps and lip, gap above', '1.5');
    expect(await kept(page)).toBe(EXAMPLE.replace('top: 1,', 'top: 1.5,'));
    await unfold('Kind of corner');
    await field('Kind of corner, kind').selectOption('double-lapped');
    expect(await kept(page)).toContain('lap: 5, kind: double-lapped}');
    await page.click('#undo');
    await page.click('#undo');
    expect(await kept(page)).toBe(EXAMPLE);
    expect(await field('Kind of corner, kind').inputValue()).toBe('');
  });

  it('keeps what cannot be taken in its field, beside the reason, until Escape', async () => {
    const gap = field('Gaps and lip, gap above');
    await typeIn('Gaps and lip, gap above', '9 feet');
    await gap.blur();
    expect(await gap.inputValue()).toBe('9 feet');
    expect(await gap.getAttribute('aria-invalid')).toBe('true');
    const why = await page.locator(`#${await gap.getAttribute('aria-describedby')}`).textContent();
    expect(why).toContain('"9 feet" is not a length');
    expect(await kept(page)).toBe(EXAMPLE);
    // Another field is taken meanwhile.
    await typeIn('Gaps and lip, gap behind', '10');
    expect(await gap.inputValue()).toBe('9 feet');
    await gap.press('Escape');
    expect(await gap.inputValue()).toBe('1');
    expect(await gap.getAttribute('aria-invalid')).toBe(null);
    expect(await page.locator('.refused').count()).toBe(0);
    await page.click('#undo');
  });

  it('that is nothing without all of its keys is set and removed as one', async () => {
    await unfold('Climate');
    for (const [key, air] of [
      ['making', '21C/45%'],
      ['driest', '21C/30%'],
      ['dampest', '21C/70%'],
    ] as const)
      await field(`Climate, ${key}`).fill(air);
    await page.getByRole('button', { name: 'Set climate' }).click();
    expect(await kept(page)).toContain('climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}');
    await page.getByRole('button', { name: 'Without climate' }).click();
    expect(await kept(page)).toBe(EXAMPLE);
  });

  it('of rows gives the drawers their places, and their openings again without it', async () => {
    await give(page, 'open.yaml', Buffer.from(CHEST));
    await unfold('Cabinet');
    for (const [key, text] of [
      ['width', '574'],
      ['height', '778'],
      ['depth', '420'],
      ['rail', '14'],
      ['rows', 'Buttons, Buttons\nThread, Thread\nRibbon, Ribbon\nPatches\nNotions\nCloth'],
    ] as const)
      await field(`Cabinet, ${key}`).fill(text);
    await page.getByRole('button', { name: 'Set cabinet' }).click();
    expect(await kept(page)).toContain('  - {name: Thread}\n');
    expect(await field('Cabinet, rows').inputValue()).toContain('Ribbon, Ribbon\nPatches');
    await page.getByRole('button', { name: 'Without cabinet' }).click();
    expect(await kept(page)).toContain('{name: Thread, count: 2, opening: {width: 280, height:');
    await page.click('#undo');
    await page.click('#undo');
    expect(await kept(page)).toBe(CHEST);
  });
});

describe('with every group unfolded', () => {
  it('there is room for everything', async () => {
    await give(page, 'chest.yaml', Buffer.from(CHEST.replace('halfPin: 6', 'halfPin: [6, 6]')));
    for (const summary of await page.locator('.keys > summary').all())
      if ((await summary.evaluate((node) => node.parentElement?.hasAttribute('open'))) !== true)
        await summary.click();
    await typeIn('Gaps and lip, gap above', '9 feet');
    await typeIn('Opening, height', '12');
    await page.locator('.message .close').click();
    const found: string[] = [];
    for (const width of [320, 390, 820, 1199, 1440, 2560]) {
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

  it('there is nothing for axe-core to find, in any colours', async () => {
    await page.setViewportSize({ width: 1440, height: 900 });
    expect(await axeFaults(page, AXE_RULES)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFaults(page, COLOUR_RULES, '#controls')).toEqual([]);
  });
});

describe('a chest', () => {
  it('is begun from a blank plan and finished without a line of text', async () => {
    await page.click('#blank');
    await typeIn('Name of the plan', 'Button chest');
    await typeIn('Name', 'Buttons');
    await typeIn('Opening, width', '280');
    await page.getByRole('button', { name: 'Add a drawer' }).click();
    await typeIn('Name', 'Ribbon');
    await typeIn('Opening, height', '110');
    await page.getByRole('button', { name: 'Move up' }).click();
    await typeIn('Wood and grain, wood of the fronts', 'Cherry, black');
    await typeIn('Thickness, sides', '11');
    expect(await kept(page)).toBe(`name: Button chest
units: mm
stock:
  front: {thickness: 20, species: "Cherry, black"}
  side: {thickness: 11}
drawers:
  - {name: Ribbon, opening: {width: 280, height: 110, depth: 400}}
  - {name: Buttons, opening: {width: 280, height: 100, depth: 400}}
`);
  });
});
