// The page by keyboard, in Chromium: where the focus is, what Escape, Home and End do, and what is told.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { activeElement: at } = document;
    if (at === null || at === document.body) return 'nothing';
    return at.getAttribute('aria-label') ?? at.textContent ?? '';
  });
const press = async (page: Page, ...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};
const slider = (page: Page, name: string) => page.getByRole('slider', { name, exact: true });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

describe('the focus', () => {
  it('goes to a neighbour where what had it is gone, and never to nothing', async () => {
    const page = await there.open();
    const found: string[] = [];
    const by = async (name: string, ...keys: string[]): Promise<void> => {
      await button(page, name).focus();
      await press(page, ...(keys.length > 0 ? keys : ['Enter']));
      await page.waitForFunction(() => document.querySelector('dialog[open]') === null);
      found.push(await focused(page));
    };
    await by('Remove tail 3');
    // Its row is gone; the next below it is the upper half pin's now.
    expect(found.at(-1)).toBe('upper half pin, width');
    await by('Remove tail 2');
    // The only tail left cannot be removed.
    await by('Undo');
    await by('Undo');
    // Nothing is left to undo.
    expect(found.at(-1)).toBe('Redo');
    await by('Redo');
    await by('Redo');
    expect(found.at(-1)).toBe('Undo');
    await by('Copy this drawer');
    await by('Remove this drawer');
    await by('Remove this drawer');
    await button(page, 'Print').focus();
    await press(page, 'Enter');
    // It opens a moment after the key.
    await page.locator('#take-dialog[open]').waitFor();
    await press(page, 'Escape');
    await page.waitForFunction(() => document.querySelector('dialog[open]') === null);
    expect(await focused(page)).toBe('Print');
    await by('At the bench', 'Enter', 'Escape');
    expect(found.at(-1)).toBe('At the bench');
    await by('Begin your own, in mm');
    expect(found).not.toContain('nothing');
    await page.context().close();
  });

  it('comes back from a message that is closed; Escape closes it from anywhere', async () => {
    const page = await there.open();
    const count = page.getByRole('textbox', { name: 'How many' });
    const wrong = async (): Promise<void> => {
      await count.fill('two');
      await press(page, 'Enter');
      await page.locator('.message').waitFor();
    };
    await wrong();
    await press(page, 'Escape');
    expect(await page.locator('.message').count()).toBe(0);
    expect(await focused(page)).toBe('How many');
    await wrong();
    await page.evaluate(() => document.querySelector<HTMLElement>('.message .close')?.focus());
    await press(page, 'Enter');
    expect(await page.locator('.message').count()).toBe(0);
    expect(await focused(page)).toBe('How many');
    await page.context().close();
  });

  it('is never hidden by a message or by the head of a dialog (WCAG 2.2, 2.4.11)', async () => {
    const page = await there.open({ viewport: { width: 390, height: 700 } });
    await page
      .locator('#file')
      .setInputFiles({ name: 'x.txt', mimeType: 'text/plain', buffer: Buffer.from('?') });
    await page.locator('.message').waitFor();
    /** Goes through all that can have the focus, and names what lies wholly under something fixed. */
    const hidden = (cover: string): Promise<string[]> =>
      page.evaluate((over) => {
        const within = document.querySelector('dialog[open]') ?? document;
        const cover = document.querySelector(over);
        const all = [
          ...within.querySelectorAll<HTMLElement>('button, input, summary, select, [tabindex="0"]'),
        ];
        return all.flatMap((each) => {
          each.focus();
          if (cover === null || document.activeElement !== each || cover.contains(each)) return [];
          const [a, b] = [each.getBoundingClientRect(), cover.getBoundingClientRect()];
          const isUnder =
            a.top >= b.top - 1 && a.bottom <= b.bottom + 1 && a.left >= b.left - 1 && a.right <= b.right + 1;
          return isUnder ? [each.getAttribute('aria-label') ?? each.textContent ?? ''] : [];
        });
      }, cover);
    expect(await hidden('#messages')).toEqual([]);
    await press(page, 'Escape');
    await page.click('#take');
    await page.locator('#take-dialog summary').click();
    expect(await hidden('#take-dialog .dialog-head')).toEqual([]);
    await page.context().close();
  });
});

describe('a handle by keys', () => {
  it('goes to its limits, back where it began, and is one step of undo, which says what it is', async () => {
    const page = await there.open();
    const line = slider(page, 'tail 2, lower edge');
    const value = () => line.getAttribute('aria-valuetext');
    const spoken = () => page.locator('#spoken').textContent();
    await page.locator('.member').nth(1).click();
    await line.focus();
    await press(page, 'Home');
    // A pin of 1 mm above tail 1, to the hundredth of what even tails leave.
    expect(await value()).toBe('24.7 mm');
    expect(await spoken()).toMatch(/pin 1 is 0\.93 mm; it must be 1 mm/u);
    await press(page, 'Escape');
    expect(await value()).toBe('28.67 mm');
    expect(await page.locator('#undo').isDisabled()).toBe(true);
    expect(await page.locator('.callout').count()).toBe(0);

    await press(page, 'ArrowUp', 'ArrowUp', 'PageUp');
    expect(await page.locator('.callout').textContent()).toBe(
      'tail 2 lower edge 29.87 mm (+1.2), front corners of these two drawers',
    );
    await press(page, 'Tab');
    await press(page, 'Control+z');
    expect(await value()).toBe('28.67 mm');
    expect(await spoken()).toBe('undone: tail 2 lower edge, Thread');
    expect(await page.locator('#undo').isDisabled()).toBe(true);
    await press(page, 'Control+y');
    expect(await spoken()).toBe('redone: tail 2 lower edge, Thread');
    expect(await line.getAttribute('aria-description')).toBe('changes front corners of these two drawers');
    await page.context().close();
  });

  it('is put back by Escape while it is dragged', async () => {
    const page = await there.open();
    const line = slider(page, 'tail 2, lower edge');
    const box = await line.locator('.grip').boundingBox();
    const [x, y] = [(box?.x ?? 0) + 4, (box?.y ?? 0) + 5];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 20, { steps: 3 });
    await expect.poll(() => line.getAttribute('aria-valuetext')).not.toBe('28.67 mm');
    await press(page, 'Escape');
    expect(await line.getAttribute('aria-valuetext')).toBe('28.67 mm');
    await page.mouse.up();
    expect(await page.locator('#undo').isDisabled()).toBe(true);
    await page.context().close();
  });
});

describe.each(['light', 'dark'] as const)('the border of a field in %s', (colorScheme) => {
  it('has a contrast of 3:1 to what is inside it and outside it (WCAG 2.2, 1.4.11)', async () => {
    const page = await there.open({ colorScheme });
    const pairs = await page.evaluate(() =>
      [...document.querySelectorAll('input:not([type="file"]), textarea, select')].flatMap((field) => {
        const { borderBottomColor, backgroundColor } = getComputedStyle(field);
        return [
          [borderBottomColor, backgroundColor],
          [borderBottomColor, getComputedStyle(document.documentElement).backgroundColor],
        ];
      }),
    );
    expect(pairs.length).toBeGreaterThan(20);
    for (const [a = '', b = ''] of pairs)
      if (!b.startsWith('rgba')) expect(contrast(a, b)).toBeGreaterThan(3);
    await page.context().close();
  });
});

/** The contrast of two colours as WCAG 2.2 defines it. */
const contrast = (a: string, b: string): number => {
  const luminance = (colour: string): number => {
    const [r = 0, g = 0, blue = 0] = (colour.match(/\d+/gu) ?? []).map((each) => {
      const c = Number(each) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
  };
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

describe('what a phone folds away', () => {
  it('is reached by keys, and gives a finger 44 px; a dialog asked for there leaves the focus on its button', async () => {
    const page = await there.open({ viewport: { width: 390, height: 700 } });
    const items = page.locator('#more-items');
    expect(await items.isVisible()).toBe(false);
    await page.locator('#more').focus();
    await press(page, 'Enter', 'ArrowDown');
    expect(await focused(page)).toBe('New');
    const boxes = await items
      .locator('button')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBe(6);
    for (const { width, height, left, right } of boxes) {
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
      expect([left >= 0, right <= 390]).toEqual([true, true]);
    }
    await press(page, 'ArrowUp', 'ArrowUp');
    expect(await focused(page)).toBe('Save sheets');
    await press(page, 'ArrowUp', 'ArrowUp', 'Enter');
    await page.locator('#kept-dialog[open]').waitFor();
    expect(await items.isVisible()).toBe(false);
    await press(page, 'Escape');
    await page.waitForFunction(() => document.querySelector('dialog[open]') === null);
    expect(await focused(page)).toBe('More');
    await page.context().close();
  });

  it('is closed by Escape, which closes nothing else with it', async () => {
    const page = await there.open({ viewport: { width: 390, height: 700 } });
    const file = { name: 'x.txt', mimeType: 'text/plain', buffer: Buffer.from('?') };
    await page.locator('#file').setInputFiles(file);
    await page.locator('.message').waitFor();
    await page.locator('#more').focus();
    await press(page, ' ');
    await page.locator('#more-items').waitFor();
    await press(page, 'Escape');
    expect(await page.locator('#more-items').isVisible()).toBe(false);
    expect(await focused(page)).toBe('More');
    expect(await page.locator('.message').count()).toBe(1);
    await press(page, 'Escape');
    expect(await page.locator('.message').count()).toBe(0);
    await page.context().close();
  });
});
