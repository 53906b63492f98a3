// What a hand does in the dialogs of sheets beside taking them: it cancels, and it measures a printer.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { CHEST } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { download, give } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

const status = (page: Page) => page.locator('#take-status');
const hasFocus = (page: Page, what: string): Promise<boolean> =>
  page.locator(what).evaluate((node) => document.activeElement === node);

it('Cancel by key leaves the focus in the dialog, where the next key does nothing', async () => {
  const page = await there.open();
  // Long enough in the making.
  const more = Array.from(
    { length: 40 },
    (_, i) => `  - {name: Spare ${i}, opening: {width: 280, height: ${70 + i}, depth: 420}}\n`,
  );
  await give(page, 'many.yaml', Buffer.from(CHEST + more.join('')));
  await page.waitForFunction(() => document.querySelectorAll('.member').length === 46);
  await page.click('#take');
  await page.locator('#preview .cancel').press('Enter');
  expect(await page.locator('#preview').getAttribute('data-state')).toBe('stopped');
  expect(await hasFocus(page, '#take-status')).toBe(true);
  await page.locator('#preview-again').press('Enter');
  await page.locator('#preview .cancel').waitFor();
  expect(await hasFocus(page, '#take-status')).toBe(true);
  await page.keyboard.press('Escape');
  await page.click('#save-sheets');
  await page.click('#take-bench');
  await page.locator('.progress', { hasText: 'Bench sheets' }).locator('.cancel').press('Enter');
  await status(page).filter({ hasText: 'Cancelled. Nothing was saved.' }).waitFor();
  expect(await hasFocus(page, '#take-status')).toBe(true);
  await page.context().close();
});

it('a printer that is measured is told of within sight, and its sheets are those that the program corrects', async () => {
  const page = await there.open({ viewport: { width: 1440, height: 700 } });
  await page.click('#save-sheets');
  await page.locator('#take-dialog summary').click();
  const measure = async (x: string, y: string, says: RegExp): Promise<void> => {
    await page.fill('#measured-x', x);
    await page.fill('#measured-y', y);
    await page.fill('#printer-name', 'office');
    await page.click('#keep-printer');
    await status(page).filter({ hasText: says }).waitFor();
    const box = await status(page).boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThan(700);
  };
  await measure('149.4', '', /x and y are both needed/u);
  await measure('200.6', '149.4', /x and y are swapped/u);
  await measure('149.4', '200.6', /now corrected for office/u);
  expect(await page.locator('#printer').inputValue()).toBe('office');

  const out = folder();
  const settings = { HALFPIN_CONFIG_DIR: folder() };
  const run = (...args: string[]): void =>
    expect(halfpin(args, undefined, settings)).toMatchObject({ status: 0 });
  run('proof', '--measured-x', '149.4', '--measured-y', '200.6', '--save', 'office');
  run('draw', 'examples/haberdashery-chest.yaml', '--printer', 'office', '--out', out);
  const { bytes } = await download(page, '#take-templates');
  expect(bytes.equals(readFileSync(join(out, 'haberdashery-chest-templates.pdf')))).toBe(true);
  await page.context().close();
});
