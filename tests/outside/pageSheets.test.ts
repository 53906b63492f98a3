// What is taken from the page in Debian's Chromium, on paper and at the bench, read back by others.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { said } from '../cli/program.ts';
import { CHEST } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { download, give } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
// Whatever went wrong inside the page, or asked for the network, comes to light here.
afterAll(() => there.close());

const FROM_GROOVE =
  "On the sides all is measured from the groove's upper edge, 16 mm above the reference edge.";

describe('taking it away', () => {
  /** What the program makes, written into a folder, from the same plan. */
  const drawn = (plan: string, ...as: string[]): string => {
    const out = mkdtempSync(join(tmpdir(), 'halfpin-page-'));
    onTestFinished(() => rmSync(out, { recursive: true }));
    said('draw', plan, '--out', out, ...as);
    return out;
  };

  it.each([
    ['haberdashery-chest', ['templates', 'cutting-list', 'bench', 'comparison', 'proportion', 'corners']],
    ['haberdashery-chest-guided', ['templates', 'guides', 'cutting-list', 'bench', 'comparison']],
  ])('makes the PDFs of the program for %s, byte for byte', async (plan, names) => {
    const path = `examples/${plan}.yaml`;
    const out = drawn(path, '--sheets', ['contents', ...names].join());
    expect(readdirSync(out).sort()).toEqual(names.map((name) => `${plan}-${name}.pdf`).sort());
    const page = await there.open();
    await give(page, `${plan}.yaml`, readFileSync(path));
    await page.waitForFunction((cut) => {
      const title = document.querySelector('input')?.value ?? '';
      return title.includes('guided') === cut;
    }, names.includes('guides'));
    await page.click('#save-sheets');
    await page.locator('#take-guides').waitFor({ state: names.includes('guides') ? 'visible' : 'hidden' });
    for (const name of names) {
      const made = await download(page, `#take-${name}`);
      expect(made.name).toBe(`${plan}-${name}.pdf`);
      expect(made.bytes.equals(readFileSync(join(out, made.name))), name).toBe(true);
    }
    await page.context().close();
  });

  it('packs the program’s SVG pieces, and the DXF of guides, lists its parts, and reads a proof as it does', async () => {
    const path = 'examples/haberdashery-chest-guided.yaml';
    const out = drawn(path, '--as', 'svg,dxf');
    const page = await there.open();
    await give(page, 'guided.yaml', readFileSync(path));
    await page.waitForFunction(() => document.querySelector('input')?.value.includes('guided'));
    await page.click('#save-sheets');
    const pieces = unzipSync((await download(page, '#take-pieces')).bytes);
    expect(Object.keys(pieces).sort()).toEqual(readdirSync(out).sort());
    for (const [name, bytes] of Object.entries(pieces))
      expect(new TextDecoder().decode(bytes), name).toBe(readFileSync(join(out, name), 'utf8'));
    const list = await download(page, '#take-parts');
    expect(list.bytes.toString()).toBe(said('parts', path, '--csv'));

    const measures = { x: '149.4', y: '200.6', d1: '250.1', d2: '249.9' };
    await page.locator('#take-dialog summary').click();
    for (const [key, typed] of Object.entries(measures)) await page.fill(`#measured-${key}`, typed);
    await page.click('#keep-printer');
    const status = page.locator('#take-status', { hasText: 'corrected for my printer' });
    const options = Object.entries(measures).flatMap(([key, typed]) => [`--measured-${key}`, typed]);
    const accuracy = said('proof', ...options)
      .replaceAll(/\s+/gu, ' ')
      .replace(/^.*?(?=Read to)/u, '');
    expect(await status.textContent()).toBe(`Sheets are now corrected for my printer. ${accuracy.trim()}`);
    await page.context().close();
  });

  it('prints at full size from the browser itself', async () => {
    const page = await there.open();
    await page.evaluate(() => {
      // A headless browser has no print window; what it would print is what its own PDF has.
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.click('#take');
    await page.click('#take-print');
    await page.waitForSelector('body[data-printed]');
    const bytes = await page.pdf({ preferCSSPageSize: true });
    const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
    const { view } = await pdf.getPage(1);
    const mm = (points = 0) => (points * 25.4) / 72;
    // Chromium cuts a page down to whole px of 1/96 inch; what is drawn on it keeps its size.
    expect(Math.abs(mm(view[2]) - 210)).toBeLessThan(0.27);
    expect(Math.abs(mm(view[3]) - 297)).toBeLessThan(0.27);
    const { across, up } = checkBars(bytes);
    expect(Math.abs(across - 100)).toBeLessThan(0.1);
    expect(Math.abs(up - 100)).toBeLessThan(0.1);
    await page.context().close();
  });
});

describe('at the bench', () => {
  it('shows one corner after the other in large numbers, and keeps the screen on', async () => {
    const page = await there.open();
    await page.click('#bench');
    expect(await page.locator('#bench-title').textContent()).toBe('Buttons, front corners');
    await page.waitForFunction(() => document.getElementById('bench-awake')?.textContent !== '');
    expect(await page.locator('#bench-awake').textContent()).toBe('The screen stays on while this is open.');
    // From 6 to 23.67 at the end; at the baseline 15/7 less on either side.
    expect(await page.locator('#bench-body tbody tr').last().allTextContents()).toEqual(['1623.678.1421.52']);
    await page.getByRole('button', { name: 'The next corner' }).click();
    expect(await page.locator('#bench-title').textContent()).toBe('Buttons, back corners');
    // The groove is 11 mm up and 5 mm wide; on its top edge stands the back.
    expect(await page.locator('#bench-body p').allTextContents()).toEqual([FROM_GROOVE]);
    expect(await page.locator('#bench-body caption').textContent()).toBe(
      "Tails from the groove's upper edge, in mm",
    );
    const size = await page
      .locator('#bench-body td')
      .last()
      .evaluate((node) => Number.parseFloat(getComputedStyle(node).fontSize));
    expect(size).toBeGreaterThanOrEqual(24);
    await page.keyboard.press('Escape');
    expect(await page.locator('#bench-dialog').isVisible()).toBe(false);
    // The drawing says so too.
    expect(await page.locator('.names').textContent()).toContain('Side, outside');
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    const names = page.locator('.names');
    expect(await names.textContent()).toContain('Side, from 16 up');
    expect(await names.textContent()).not.toMatch(/reference/u);
    await page.context().close();
  });

  it('says of a front with a lip that it is measured from its rebate, and of its back what is said of every back', async () => {
    const page = await there.open();
    const lipped = CHEST.replace(/^name: .*$/mu, 'name: Lipped chest').concat('\nfront: {lip: 6}\n');
    await give(page, 'lipped.yaml', Buffer.from(lipped));
    await page.waitForFunction(() => document.querySelector('input')?.value === 'Lipped chest');
    await page.click('#bench');
    // A front of 20 with a lap of 5; the lip of 6 covers a gap of 0.5.
    expect(await page.locator('#bench-body p').allTextContents()).toEqual([
      "Before gauging: cut the front's rebate first, along its ends and both edges, 15 mm deep; gauge the front from the rebate's shoulder, 6.5 mm in from the front's own end; mark it from the rebate's lower edge, 6 mm above the front's own.",
    ]);
    await page.getByRole('button', { name: 'The next corner' }).click();
    expect(await page.locator('#bench-body p').allTextContents()).toEqual([FROM_GROOVE]);
    await page.context().close();
  });
});

describe('the bench, for a router', () => {
  it('has its settings in place of the dividers', async () => {
    const page = await there.open();
    await give(page, 'guided.yaml', readFileSync('examples/haberdashery-chest-guided.yaml'));
    await page.waitForFunction(() => document.querySelector('input')?.value === 'Haberdashery chest, guided');
    await page.click('#bench');
    const rows = () => page.locator('#bench-body dl > div').allTextContents();
    // At the surface the cut is 12.7 - 2 × 15 tan 8° = 8.484 mm wide; half of it short of the side's 11 mm is 6.76.
    expect(await rows()).toEqual(
      expect.arrayContaining([
        'Tails, dovetail cutter’s depth15 mm',
        'Pins, cutter’s depth15 mm',
        'Pins, centre stops from end6.76 mm',
      ]),
    );
    expect((await rows()).join()).not.toContain('Dividers');
    await page.getByRole('button', { name: 'The next corner' }).click();
    // The one tail at the back has half spaces only beside it, which are cut by hand.
    expect(await rows()).toEqual(
      expect.arrayContaining(['Pins, straight cutter8 mm', 'Pins, cutter’s depth11 mm']),
    );
    expect((await rows()).join()).not.toContain('Tails, cutter');
    await page.context().close();
  });
});

/** The longest run of dark pixels on each of some lines of a picture. */
const longestRun = (lines: readonly (readonly number[])[]): number =>
  Math.max(
    ...lines.map((line) => {
      let [run, longest] = [0, 0];
      for (const pixel of line) {
        run = pixel < 160 ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
      return longest;
    }),
  );

/** The two check bars of a first page as poppler's pdftoppm draws it, in mm: along the foot, and up the left side. */
const checkBars = (pdf: Buffer): { across: number; up: number } => {
  const dpi = 600;
  const picture = execFileSync(
    'pdftoppm',
    ['-r', String(dpi), '-gray', '-f', '1', '-l', '1', '-singlefile', '-'],
    {
      input: pdf,
      maxBuffer: 1e9,
    },
  );
  const [head, w = '', h = ''] =
    /^P5\s(\d+)\s(\d+)\s255\s/u.exec(picture.subarray(0, 40).toString('latin1')) ?? [];
  const [width, height] = [Number(w), Number(h)];
  const pixel = (x: number, y: number): number => picture[(head?.length ?? 0) + y * width + x] ?? 255;
  const px = (mm: number): number => Math.round((mm / 25.4) * dpi);
  const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
  // Nothing but the bars stands in the last 2 mm before the margin.
  const rows = range(height - px(8), height - px(5)).map((y) => range(0, width).map((x) => pixel(x, y)));
  const columns = range(px(5), px(8)).map((x) => range(0, height).map((y) => pixel(x, y)));
  // From the middle of one end's tick to the middle of the other's; lines are 0.13 mm wide.
  const mm = (pixels: number): number => (pixels / dpi) * 25.4 - 0.13;
  return { across: mm(longestRun(rows)), up: mm(longestRun(columns)) };
};
