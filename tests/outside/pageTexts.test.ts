// The plan's text in the page, while what is typed is no valid plan yet; and what the page says of that and of refusals.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';
import { begun, download, give, kept, message, slider } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

const CHEST = readFileSync('examples/haberdashery-chest.yaml', 'utf8');
/** Its line 12 opens a bracket that is not closed. */
const BROKEN = CHEST.replace(/(joint: {2}\{.*)\}/u, '$1');
const FAULT = 'The plan’s text has a fault in line 12';

const typed = async (page: Page, text: string): Promise<void> => {
  if ((await page.locator('#text-panel[open]').count()) === 0) await page.click('#text-panel summary');
  await page.fill('#text', text);
};
const text = (page: Page): Promise<string> => page.locator('#text').inputValue();

describe('text that is typed and no plan yet', () => {
  it('outlives every control, which says why it is refused, the panel, and a reload', async () => {
    const page = await there.open();
    await typed(page, BROKEN);
    await page.getByRole('button', { name: 'One tail more' }).click();
    expect(await message(page).textContent()).toContain(
      `${FAULT}, so nothing else can be changed; put it right`,
    );
    expect(await page.locator('output.number').textContent()).toBe('3 tails');
    await slider(page, 'lap').focus();
    await page.keyboard.press('ArrowUp');
    expect(await page.locator('.callout').textContent()).toContain(FAULT);
    await page.getByLabel('Opening, height').fill('80');
    await page.keyboard.press('Enter');
    expect(await page.getByLabel('Opening, height').inputValue()).toBe('80');
    expect(await page.getByLabel('Opening, height').getAttribute('aria-invalid')).toBe('true');
    await page.getByRole('button', { name: 'Copy this drawer' }).click();
    expect(await page.getByLabel('Which drawer', { exact: true }).inputValue()).toBe('Buttons');
    await page.click('#text-panel summary');
    await page.click('#text-panel summary');
    expect(await text(page)).toBe(BROKEN);
    expect(await kept(page)).toBe(CHEST);
    await page.reload();
    expect(await text(page)).toBe(BROKEN);
    expect(await page.locator('#text-wrong').textContent()).toContain('Line 12: the bracket {');
    await page.click('#undo');
    expect(await text(page)).toBe(CHEST);
    expect(await page.locator('#text-wrong').textContent()).toBe('');
    await page.click('#redo');
    expect(await text(page)).toBe(BROKEN);
    await page.context().close();
  });

  it('is kept with its plan where another is opened', async () => {
    const page = await there.open();
    await typed(page, BROKEN);
    await begun(page);
    await page.click('#undo');
    expect(await text(page)).toBe(BROKEN);
    await page.click('#redo');
    await page.click('#kept');
    await page.getByRole('button', { name: 'Bring it back' }).first().click();
    expect(await text(page)).toBe(BROKEN);
    await page.context().close();
  });

  it('is told of beside Print, in its dialog, at Ctrl+P and at Link', async () => {
    const page = await there.open();
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await page.click('#take');
    await page.locator('#preview[data-state="ready"]').waitFor();
    await page.click('#take-close');
    await typed(page, BROKEN);
    expect(await page.locator('#unread').textContent()).toBe(
      `${FAULT}: sheets and links are of the plan before it.`,
    );
    await page.keyboard.press('Control+p');
    await page.locator('#take-dialog[open]').waitFor();
    expect(await page.locator('#take-dialog').textContent()).toContain(
      `${FAULT}; these sheets are of the plan before it.`,
    );
    expect(await page.locator('body[data-printed]').count()).toBe(0);
    // The browser's own menu asks nobody.
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    expect(await page.locator('#print').textContent()).toContain(FAULT);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await page.click('#take-print');
    await page.locator('body[data-printed]').waitFor({ state: 'attached' });
    await page.click('#take-close');
    await page.click('#link');
    await message(page)
      .filter({ hasText: `${FAULT}. The link holds the plan before it.` })
      .waitFor();
    const { bytes } = await download(page, '#save');
    expect(bytes.toString()).toBe(CHEST);
    await page.fill('#text', CHEST);
    expect(await page.locator('#unread').textContent()).toBe('');
    await page.context().close();
  });
});

describe('a message', () => {
  const refused = async (page: Page): Promise<void> => {
    await page.getByLabel('Opening, height').fill('12');
    await page.keyboard.press('Enter');
    await message(page).locator('.stop').waitFor();
  };

  it('goes with an edit that is accepted, with Undo, with another plan, and where the old value is typed again', async () => {
    const page = await there.open();
    const gone = (): Promise<void> => message(page).locator('.stop').waitFor({ state: 'detached' });
    const height = page.getByLabel('Opening, height');
    const before = await height.inputValue();
    await refused(page);
    await height.fill(before);
    await page.keyboard.press('Enter');
    await gone();
    await refused(page);
    await slider(page, 'lap').focus();
    await page.keyboard.press('ArrowUp');
    await gone();
    await refused(page);
    await page.click('#undo');
    await gone();
    await refused(page);
    await begun(page);
    await gone();
    await page.context().close();
  });

  it('names the part and the nearest value that works, and no key of the plan', async () => {
    const page = await there.open();
    await refused(page);
    const told = (await message(page).textContent()) ?? '';
    expect(told).toContain(
      '"Buttons": opening\'s height 12 mm does not work, the nearest that does is 39.2 mm',
    );
    expect(told).toContain('make the drawer higher, or lower the groove');
    expect(told).not.toMatch(/\[\d|\w\.\w+\)/u);
    await give(page, 'bad.yaml', Buffer.from('drawers: 3\njoints: [{kind: odd}]\n'));
    await message(page).filter({ hasText: 'was not opened' }).waitFor();
    const fault = (await message(page).textContent()) ?? '';
    expect(fault).toMatch(/corner 1, kind: .*, in "joints: \[\{kind: odd\}\]"/u);
    expect(fault).not.toMatch(/yaml:|joints\[/u);
    await give(page, 'none.yaml', Buffer.from(''));
    await message(page).filter({ hasText: 'press New for a plan to begin with' }).waitFor();
    await page.context().close();
  });

  it('leaves what it is about in sight on a phone', async () => {
    const page = await there.open({ viewport: { width: 390, height: 844 } });
    const field = page.getByLabel('Opening, height');
    await field.fill('12');
    // As low on the screen as it can be.
    await field.evaluate((node) => node.scrollIntoView({ block: 'end' }));
    await page.keyboard.press('Enter');
    await message(page).locator('.stop').waitFor();
    const [below, above] = [await field.boundingBox(), await message(page).boundingBox()];
    expect((below?.y ?? 0) + (below?.height ?? 0)).toBeLessThanOrEqual(above?.y ?? 0);
    expect(below?.y).toBeGreaterThan(0);
    await page.context().close();
  });
});

describe('a measure', () => {
  it('says at the hand what else follows it, and shows the pin where the widths are listed', async () => {
    const page = await there.open();
    await slider(page, 'groove, from the reference edge').focus();
    // The lowest tail's base begins 1 mm below the groove: 8 - 1 - 15/7 = 4.86.
    for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+ArrowDown');
    expect(await page.locator('.callout').textContent()).toMatch(
      /^groove from edge 8 mm .*; lower half pin 6 → 4\.86$/u,
    );
    await page.getByRole('button', { name: 'Lock tail 2' }).click();
    const pin = page.getByLabel('Corner, pin');
    expect(await pin.isDisabled()).toBe(true);
    expect(await pin.inputValue()).toBe('listed');
    await page.context().close();
  });
});
