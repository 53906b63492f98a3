// Pulls, locks and stops on the page, in Debian's Chromium: their fields, and the fronts of the cabinet with them.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';
import { fieldsOf, give, kept } from '../page/steering.ts';

/** One drawer, whose front is 280 x 76. */
const PLAN = `stock: {front: {thickness: 20}, side: {thickness: 11}}
groove: {offset: 11, width: 5, depth: 5}
fit: {side: 0.5, top: 1}
drawers:
- {name: Buttons, opening: {width: 281, height: 77, depth: 420}}
`;

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
  await give(page, 'plan.yaml', Buffer.from(PLAN));
});
afterAll(() => there.close());

const typeIn = (name: string, text: string) => fieldsOf(page).typeIn(name, text);
const unfold = (title: string) => fieldsOf(page).unfold(title);
const pulls = () => page.locator('#cabinet .pulls');

/** The middle of what is drawn, as shares of the front: from its left end, and up from its lower edge. */
const middle = (): Promise<number[]> =>
  page.evaluate(() => {
    const box = (selector: string): DOMRect | undefined =>
      document.querySelector<SVGGraphicsElement>(selector)?.getBBox();
    const [drawn, board] = [box('#cabinet .pulls'), box('#cabinet .board')];
    if (drawn === undefined || board === undefined) throw new Error('nothing is drawn');
    return [
      (drawn.x + drawn.width / 2 - board.x) / board.width,
      (board.y + board.height - drawn.y - drawn.height / 2) / board.height,
      drawn.width / board.width,
    ];
  });

describe('pulls on the page', () => {
  it('are drawn on the fronts once one of their fields is set, where the rules put them', async () => {
    expect(await pulls().count()).toBe(0);
    await unfold('Pulls');
    await typeIn('Pulls, above', '5%');
    await pulls().waitFor();
    const [across = 0, up = 0, width = 0] = await middle();
    expect(across).toBeCloseTo(0.5, 2);
    // 5 % above the middle; a pull is 28 of 280 wide.
    expect(up).toBeCloseTo(0.55, 1);
    expect(width).toBeCloseTo(0.1, 2);
    await typeIn('Pulls, number', '2');
    // From a quarter to three quarters, and a pull.
    await expect.poll(async () => (await middle())[2]).toBeCloseTo(0.6, 2);
    expect(await kept(page)).toContain('pulls:');
  });

  it('that cannot be made are told of below the cabinet, with what can', async () => {
    await typeIn('Pulls, above', '-20');
    await expect
      .poll(() => page.locator('#cabinet .note').allTextContents())
      .toEqual([
        '"Buttons": a hole of 5 mm for a pull, 18 mm above the front\'s lower edge, would run into the groove, or come within 3 mm of it; try -16.5mm',
      ]);
    expect(await pulls().count()).toBe(0);
    await page.click('#undo');
    await pulls().waitFor();
    expect(await page.locator('#cabinet .note').count()).toBe(0);
  });

  it('have their drilling templates among the files to save', async () => {
    await page.click('#save-sheets');
    await page.locator('#take-drilling').waitFor();
    await page.locator('#take-proportion').waitFor();
  });
});
