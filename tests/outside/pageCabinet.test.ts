// The elevation of a planned cabinet on the page, under a mouse, a finger and the keyboard.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EXAMPLE } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { give, hasTitle, kept, slider } from '../page/steering.ts';

const GRADUATED = readFileSync('examples/graduated-chest.yaml', 'utf8');
let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
});
afterAll(() => there.close());

const rail = (row: number, on = page) => slider(on, `rail under row ${row}`);
const heights = async (on = page): Promise<string> => /^ {2}heights: (.*)$/mu.exec(await kept(on))?.[1] ?? '';
const above = async (row: number): Promise<number> =>
  Number.parseFloat((await rail(row).getAttribute('aria-valuetext')) ?? '');
/** Holds a rail with the mouse, and moves it down by so many px. */
const hold = async (row: number, by: number): Promise<void> => {
  const box = await rail(row).locator('.hit').boundingBox();
  if (box === null) throw new Error('not seen');
  const [x, y] = [box.x + 30, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + by, { steps: 4 });
  await page.locator('.rail.moving').waitFor();
};

describe('the elevation of a cabinet', () => {
  it('moves the rail between listed rows with the mouse, its heights at the hand, as one step of undo', async () => {
    const before = await above(5);
    await hold(5, -20);
    const [, told = ''] =
      /row 5 ([\d.]+) mm/u.exec((await page.locator('#cabinet .callout').textContent()) ?? '') ?? [];
    await page.mouse.up();
    expect(await above(5)).toBe(Number(told));
    expect(Number(told)).toBeLessThan(before);
    // Rows 5 and 6 together stay 146 + 190.
    expect(await heights()).toBe(`[76, 76, 110, 110, ${told}, ${336 - Number(told)}]`);
    expect(await kept(page)).toContain('Cloth]   # from the top');
    await page.click('#undo');
    expect(await kept(page)).toBe(EXAMPLE);
  });

  it('puts a rail back by Escape while it is held', async () => {
    await hold(5, -20);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await page.locator('.rail.moving').count()).toBe(0);
    expect(await kept(page)).toBe(EXAMPLE);
  });

  it('selects a drawer by click and by key', async () => {
    await page
      .locator('#cabinet')
      .getByRole('button', { name: /^Cloth,/u })
      .click();
    expect(await page.locator('#corner-name').textContent()).toBe('Cloth');
    await page
      .locator('#cabinet')
      .getByRole('button', { name: /^Thread,/u })
      .press('Enter');
    expect(await page.locator('#corner-name').textContent()).toBe('Thread');
  });

  it('lets all rows of a progression follow the keys, which are one step of undo until Escape puts them back', async () => {
    await give(page, 'graduated.yaml', Buffer.from(GRADUATED));
    await hasTitle(page, 'Graduated chest');
    await rail(1).focus();
    await rail(1).press('ArrowDown');
    await rail(1).press('ArrowDown');
    // 24 3/4 = 4 a + 6 d: with a 1/8 more than 5 1/16, d is 2/3, or 43/64.
    expect(await heights()).toBe('{progression: arithmetic, step: 43/64}');
    await rail(1).press('Escape');
    expect(await kept(page)).toBe(GRADUATED);
    await rail(1).press('PageDown');
    expect(await heights()).not.toBe('{progression: arithmetic}');
    await page.click('#undo');
    expect(await kept(page)).toBe(GRADUATED);
  });

  it('breaks a progression where that is chosen, and not before', async () => {
    await page.getByRole('checkbox', { name: /Break the rule/u }).check();
    await rail(3).focus();
    await rail(3).press('ArrowUp');
    // 5 1/16, 5 13/16, 6 9/16 and 7 5/16 before.
    expect(await heights()).toBe('[5 1/16, 5 13/16, 6 1/2, 7 3/8]');
    expect(await page.getByRole('checkbox', { name: /Break the rule/u }).count()).toBe(0);
    await page.click('#undo');
    expect(await kept(page)).toBe(GRADUATED);
    await page.getByRole('checkbox', { name: /Break the rule/u }).uncheck();
  });

  it('says why a rail goes no further', async () => {
    await rail(1).focus();
    await rail(1).press('Home');
    await page.locator('#cabinet .callout.stopped .reason').waitFor();
    await rail(1).press('Escape');
    expect(await kept(page)).toBe(GRADUATED);
  });

  it('gives a rail to a finger that has tapped it, and scrolls under one that has not', async () => {
    const phone = await there.open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const grip = rail(5, phone).locator('.touch');
    await phone.locator('#cabinet').evaluate((node) => node.scrollIntoView({ block: 'center' }));
    await grip.tap();
    const box = await grip.boundingBox();
    if (box === null) throw new Error('not seen');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const touch = await phone.context().newCDPSession(phone);
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', by?: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: by === undefined ? [] : [{ x, y: y + by }],
      });
    await send('touchStart', 0);
    for (const by of [-4, -12, -20, -20]) await send('touchMove', by);
    await phone.locator('.rail.moving').waitFor();
    await send('touchEnd');
    expect(await heights(phone)).toMatch(/^\[76, 76, 110, 110, 1[0-3]\d(?:\.5)?, 2\d\d(?:\.5)?\]$/u);
    await phone.context().close();
  });
});
