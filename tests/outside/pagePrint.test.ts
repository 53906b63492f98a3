// What the page prints in Debian's Chromium, as its own PDF of that shows, against the program's PDF; both read by pdf.js.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHEST, folder, said } from '../cli/program.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { type ReadPage, readWithPdfjs } from './readPdf.ts';

const PAGE = pathToFileURL('dist/halfpin.html').href;

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

/** A headless browser has no print window: `print()` is only counted, and what it would print is what its own PDF has. */
const countPrints = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', '');
  });

const printed = (page: Page): Promise<Buffer> => page.pdf({ preferCSSPageSize: true });

const wordsOf = async (bytes: Buffer): Promise<{ pages: number; words: string }> => {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { items } = await (await pdf.getPage(1)).getTextContent();
  return { pages: pdf.numPages, words: items.map((item) => ('str' in item ? item.str : '')).join('') };
};

/** Where lines end, in mm from the top left: Chromium cuts a page down to whole px of 1/96 inch at its foot. */
const endsOf = ({ strokes, height }: ReadPage) =>
  strokes.flatMap(({ from, to }) => [from, to].map(([x, y]) => [x, height - y] as const));

describe('printing', () => {
  it('by Ctrl+P is of the templates that the program draws, to 0.01 mm', async () => {
    const out = folder();
    said('draw', CHEST, '--out', out);
    const drawn = await readWithPdfjs(join(out, 'haberdashery-chest-templates.pdf'));
    const page = await there.open();
    await countPrints(page);
    await page.keyboard.press('Control+p');
    await page.waitForSelector('body[data-printed]');
    expect(await page.locator('#take-print').textContent()).toBe(`Print ${drawn.pages.length} sheets`);
    // The pictures are made when the sheets are printed already.
    await page
      .locator('#preview img')
      .nth(drawn.pages.length - 1)
      .waitFor();
    expect(await page.locator('#preview img').count()).toBe(drawn.pages.length);
    writeFileSync(join(out, 'printed.pdf'), await printed(page));
    const { pages } = await readWithPdfjs(join(out, 'printed.pdf'));
    expect(pages.length).toBe(drawn.pages.length);
    for (const [i, sheet] of pages.entries()) {
      const own = drawn.pages[i] as ReadPage;
      const ends = endsOf(own);
      const found = endsOf(sheet).map(([x, y]) =>
        Math.min(...ends.map(([u, v]) => Math.max(Math.abs(u - x), Math.abs(v - y)))),
      );
      expect(Math.max(...found), `sheet ${i + 1}`).toBeLessThan(0.01);
      // Chromium fills the dashes of a line that is alone in its path.
      expect(sheet.strokes.length).toBeGreaterThan(0.95 * own.strokes.length);
    }
    await page.context().close();
  });

  it('from the browser’s menu is of the same, once editing pauses; before that it is in words', async () => {
    const page = await there.open();
    const early = await wordsOf(await printed(page));
    expect(early).toEqual({
      pages: 1,
      words: 'The templates were not ready to print. On the page, press Print.',
    });
    await expect
      .poll(async () => (await wordsOf(await printed(page))).pages, { timeout: 20_000, interval: 1000 })
      .toBe(7);
    await page.getByRole('slider', { name: 'tail 2, lower edge', exact: true }).press('PageUp');
    expect((await wordsOf(await printed(page))).words).toBe(early.words);
    await page.context().close();
  });

  it('says why sheets cannot be made, on the page and on paper', async () => {
    const page = await there.open();
    await page.click('#take');
    await page.fill('#paper', '80x100');
    await page.locator('#paper').press('Enter');
    const why = page.locator('#preview .stop');
    await why.waitFor();
    expect((await wordsOf(await printed(page))).words).toBe(
      `The templates cannot be made: ${await why.textContent()}.`,
    );
    await page.context().close();
  });

  it('is refused in words in a browser that cannot unpack its script', async () => {
    const page = await there.browser.newPage();
    await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'DecompressionStream'));
    await page.goto(PAGE);
    await page.click('#take');
    await page
      .locator('#messages')
      .filter({ hasText: 'This browser cannot unpack what makes sheets.' })
      .waitFor();
    await page.context().close();
  });
});

describe('what is asked for while its script is unpacked', () => {
  /** The page, whose scripts are not unpacked until it is told. */
  const openPacked = async (): Promise<{ page: Page; unpack: () => Promise<void> }> => {
    const page = await there.browser.newPage();
    await page.addInitScript(() => {
      const { blob } = Response.prototype;
      const isAwaited = new Promise((resolve) => addEventListener('unpack', resolve));
      Response.prototype.blob = async function () {
        await isAwaited;
        return blob.call(this);
      };
    });
    await page.goto(PAGE);
    await countPrints(page);
    const unpack = async (): Promise<void> => {
      expect(await page.locator('dialog[open]').count()).toBe(0);
      await page.evaluate(() => void dispatchEvent(new Event('unpack')));
    };
    return { page, unpack };
  };

  it('is printed, where that was asked for, also where Enter was pressed on what was to open', async () => {
    for (const keys of [['Control+p'], ['Enter', 'Enter']]) {
      const { page, unpack } = await openPacked();
      await page.locator('#take').focus();
      for (const key of keys) await page.keyboard.press(key);
      await unpack();
      await page.waitForSelector('body[data-printed]');
      await page.context().close();
    }
  });

  it('is the bench view on the page that keys have turned to, and is closed by Escape', async () => {
    const { page, unpack } = await openPacked();
    await page.click('#bench');
    await page.keyboard.press('ArrowRight');
    await unpack();
    await page.locator('#bench-title', { hasText: 'Buttons, back corners' }).waitFor();
    await page.context().close();

    const { page: other, unpack: unpackOther } = await openPacked();
    await other.click('#bench');
    await other.keyboard.press('Escape');
    await unpackOther();
    await other.locator('#bench-title', { hasText: 'Buttons, front corners' }).waitFor({ state: 'attached' });
    expect(await other.locator('dialog[open]').count()).toBe(0);
    expect(await other.evaluate(() => document.activeElement?.id)).toBe('bench');
    await other.context().close();
  });
});
