// What a hand does on the page, and what an eye reads there.
import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';

export const slider = (page: Page, name: string): Locator => page.getByRole('slider', { name, exact: true });
export const told = async (handle: Locator): Promise<number> =>
  Number.parseFloat((await handle.getAttribute('aria-valuetext')) ?? '');
export const kept = (page: Page): Promise<string> =>
  page.evaluate(() => {
    // The page keeps its work a moment after it has changed, and at once when it is left.
    dispatchEvent(new Event('pagehide'));
    return JSON.parse(localStorage.getItem('halfpin') ?? '{"text":""}').text;
  });
export const message = (page: Page): Locator => page.locator('#messages');
export const give = (page: Page, name: string, buffer: Buffer): Promise<void> =>
  page.locator('#file').setInputFiles({ name, mimeType: 'application/octet-stream', buffer });

export const hasTitle = async (page: Page, name: string): Promise<void> => {
  await page.waitForFunction((name) => document.querySelector('input')?.value === name, name);
};

/** New, whose script is unpacked when it is first asked for. */
export const begun = async (page: Page): Promise<void> => {
  await page.click('#fresh');
  await hasTitle(page, 'My chest');
};

export const download = async (page: Page, button: string): Promise<{ name: string; bytes: Buffer }> => {
  const [file] = await Promise.all([page.waitForEvent('download'), page.click(button)]);
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
};

/** Presses a button of the page's head, which may be folded away. */
export const pressInHead = async (page: Page, button: string): Promise<void> => {
  if (await page.locator(button).isHidden()) await page.click('#more');
  await page.click(button);
};

/** The hand of one who fills in the page's fields, and unfolds its groups of keys. */
export const fieldsOf = (page: Page) => {
  const field = (name: string): Locator => page.getByLabel(name, { exact: true });
  return {
    field,
    typeIn: async (name: string, text: string): Promise<void> => {
      await field(name).fill(text);
      await page.keyboard.press('Enter');
    },
    unfold: async (title: string): Promise<void> => {
      const group = page.locator('.keys', { has: page.locator('summary', { hasText: title }) });
      if ((await group.getAttribute('open')) === null) await group.locator('summary').click();
      await group.locator('.keys-body').waitFor();
    },
  };
};
