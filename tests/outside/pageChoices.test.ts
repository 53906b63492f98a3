// What is chosen of sheets on the page, in Debian's Chromium: it makes what the program makes with the same options, is
// kept for the next visit, and says when it cannot be had.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHEST, folder, said } from '../cli/program.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { download, kept } from '../page/steering.ts';

const FONT = 'node_modules/@fontsource/alegreya-sans/files/alegreya-sans-greek-400-normal.woff';

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open();
});
afterAll(() => there.close());

/** What the program draws of a plan, each file by its name. */
const drawn = (plan: string, ...options: string[]): Map<string, Buffer> => {
  const out = folder();
  said('draw', plan, '--out', out, ...options);
  return new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name))]));
};

const choose = async (id: string, typed: string): Promise<void> => {
  await page.fill(`#${id}`, typed);
  await page.locator(`#${id}`).press('Enter');
};

const expectSame = async (files: Map<string, Buffer>): Promise<void> => {
  for (const [name, bytes] of files) {
    const kind = /-(templates|cutting-list|bench|comparison)\.pdf$/u.exec(name)?.[1];
    const made = await download(page, `#take-${kind}`);
    expect(made.name).toBe(name);
    expect(made.bytes.equals(bytes), name).toBe(true);
  }
};

describe('what is chosen on the page', () => {
  it('gives the files that the program gives of some drawers, every copy, on another paper for the bench', async () => {
    const options = ['--only', 'Buttons,Cloth/side', '--copies', 'made', '--bench-paper', 'A5'];
    const files = drawn(CHEST, ...options);
    expect([...files.keys()].sort()).toEqual(
      ['bench', 'cutting-list', 'templates'].map((kind) => `haberdashery-chest-only-1-6-side-${kind}.pdf`),
    );
    await page.click('#save-sheets');
    await choose('only', 'Buttons, cloth/side');
    await page.selectOption('#copies', 'made');
    await choose('bench-paper', 'A5');
    expect(await page.locator('#take-comparison').count()).toBe(0);
    await expectSame(files);
    const pieces = unzipSync((await download(page, '#take-pieces')).bytes);
    expect(Object.keys(pieces).sort()).toEqual(
      [...drawn(CHEST, ...options.slice(0, 2), '--as', 'svg').keys()].sort(),
    );
  });

  it('says what is no drawer, and no board of those that are chosen', async () => {
    await choose('only', 'Buttens');
    const why = page.locator('#preview .stop');
    await why.filter({ hasText: '"Buttens" is no drawer and no single corner of this plan' }).waitFor();
    await choose('only', 'Cloth/side');
    await page.selectOption('#boards', 'pin');
    await why.filter({ hasText: 'the parts chosen are not pin boards' }).waitFor();
    await page.selectOption('#boards', 'both');
    await choose('only', '');
    await page.keyboard.press('Escape');
  });

  it('of a groove is drawn as the program draws the plan that is saved', async () => {
    await page.locator('.keys > summary', { hasText: 'Back, bottom and slips' }).click();
    await page.getByLabel('Back, bottom and slips, groove stopped at', { exact: true }).fill('auto');
    await page.keyboard.press('Enter');
    const plan = join(folder(), 'stopped.yaml');
    writeFileSync(plan, await kept(page));
    expect(readFileSync(plan, 'utf8')).toContain('stopped: auto');
    await page.click('#save-sheets');
    await expectSame(drawn(plan, '--sheets', 'templates,contents', '--copies', 'made'));
    await page.click('#take-close');
    await page.click('#undo');
  });
});

describe('the printer', () => {
  it('is not called "none", nor what could not be typed again', async () => {
    await page.click('#take');
    await page.locator('#take-dialog summary').click();
    await page.fill('#measured-x', '149.4');
    await page.fill('#measured-y', '200.6');
    for (const [name, why] of [
      ['none', '"none" stands for printing without a correction, so no printer can be called that'],
      ['in/out', 'a printer is named with letters, digits, spaces, dots and hyphens'],
    ] as const) {
      await page.fill('#printer-name', name);
      await page.click('#keep-printer');
      await page.locator('#take-status.stop', { hasText: why }).waitFor();
    }
    expect(await page.locator('#printer option').count()).toBe(1);
  });

  it('and the font file are chosen again on the next visit, until they are given up', async () => {
    await page.fill('#printer-name', 'office');
    await page.click('#keep-printer');
    await page.locator('#take-status', { hasText: 'corrected for office' }).waitFor();
    await page.setInputFiles('#font', FONT);
    await page.locator('#font-name').waitFor();
    await page.waitForTimeout(300);
    await page.reload();
    await page.click('#take');
    expect(await page.inputValue('#printer')).toBe('office');
    expect(await page.locator('#font-name').textContent()).toBe(FONT.split('/').at(-1));
    await page.click('#no-font');
    await page.selectOption('#printer', '');
    await page.waitForTimeout(300);
    await page.reload();
    await page.click('#take');
    expect(await page.inputValue('#printer')).toBe('');
    expect(await page.locator('#font-name').count()).toBe(0);
  });
});

describe('Print', () => {
  it('pressed while sheets are still being made says so, and prints them when they are ready', async () => {
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.check('#rods');
    await page.click('#take-print');
    expect(await page.locator('#take-status').textContent()).toBe(
      'The sheets are still being made. They are printed as soon as they are ready.',
    );
    await page.waitForSelector('body[data-printed]');
    expect(await page.locator('#take-status').textContent()).toBe('');
  });
});
