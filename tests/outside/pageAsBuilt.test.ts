// Boards as they came out, given on the page by hand, in Debian's Chromium.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';
import { give, kept } from '../page/steering.ts';

const PLAN = `name: Thread chest
stock: {front: {thickness: 20}, side: {thickness: 11}}
drawers:
  - {name: Thread, count: 2, opening: {width: 280, height: 76, depth: 420}}
`;
const THINNER = PLAN.replace(
  'depth: 420}}',
  'depth: 420}, asBuilt: [{index: 1, part: side, hand: left, thickness: 10.6}]}',
);

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
});
afterAll(() => there.close());

const built = () => page.locator('[data-name="built"]');

describe('boards as they came out', () => {
  it('are given a line for each, and the sizes of parts follow', async () => {
    await give(page, 'thread.yaml', Buffer.from(PLAN));
    const group = page.locator('.keys', {
      has: page.locator('summary', { hasText: 'Boards as they came out' }),
    });
    await group.locator('summary').click();
    const boards = page.getByLabel('Boards as they came out, boards, one a line', { exact: true });
    await boards.fill('index: 1, part: side, hand: left, thickness: 10.6');
    await boards.blur();
    expect(await kept(page)).toBe(THINNER);
    expect(await built().textContent()).toContain('Thread 1: left side 10.6 mm thick as it came out');
    const sizes = await page.locator('table.parts tbody tr').allTextContents();
    expect(sizes.map((row) => row.match(/^\D+ [12]/u)?.[0])).toEqual([
      'front 1',
      'left side 1',
      'right side 1',
      'back 1',
      'bottom 1',
      'front 2',
      'side 2',
      'back 2',
      'bottom 2',
    ]);
    await boards.fill('index: 1, part: front, length: 281');
    await boards.blur();
    expect(await page.locator('.refused').first().textContent()).toContain('it may be at most 280 mm');
    expect(await kept(page)).toBe(THINNER);
  });

  it('are there again after a reload, and refused in a file where nothing can be made of them', async () => {
    await page.reload();
    await built().waitFor();
    expect(await kept(page)).toBe(THINNER);
    await give(page, 'long.yaml', Buffer.from(THINNER.replace('thickness: 10.6', 'length: 416')));
    await page.locator('#messages', { hasText: 'it may be at most 415 mm' }).waitFor();
    expect(await kept(page)).toBe(THINNER);
  });
});
