// What is printed on every control of the page and its dialogs, in Debian's Chromium: the trade's words, and no plan's keys.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { planKeys, valuesIn } from '../../src/page/model/fields/planKeys.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { give } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

/** Those that are words of no language. */
const KEYS = [...new Set(valuesIn(planKeys()).flatMap(({ at }) => at.map(String)))].filter((key) =>
  /[a-z][A-Z]/u.test(key),
);

/** Everything that is printed on a control, or said of it; of each once. */
const labels = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLElement>('details:not([open]) > summary')) fold.click();
    const found = document.querySelectorAll(
      'button, label, legend, summary, option, input, select, textarea, h2, h3, th, dt, caption, .quiet, [aria-label], [role]',
    );
    return [...found].flatMap((node) => [
      ...['aria-label', 'title', 'placeholder', 'aria-valuetext'].map(
        (name) => node.getAttribute(name) ?? '',
      ),
      ...[...node.childNodes].map((child) => (child instanceof Text ? child.data : '')),
    ]);
  });

it('no control has a key of the plan, or a place in it, for a label', async () => {
  expect(KEYS).toContain('tailBoard');
  const page = await there.open();
  const seen = new Set<string>();
  const look = async (): Promise<void> => {
    for (const label of await labels(page)) seen.add(label.trim());
  };
  for (const plan of ['fingers', 'cabinet', 'boards']) {
    await give(page, plan, readFileSync(`examples/haberdashery-chest-${plan}.yaml`));
    await page.waitForFunction(
      (word) => document.querySelector<HTMLInputElement>('#title')?.value.includes(word),
      plan,
    );
    // Folds are drawn when they are open.
    await look();
    await look();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await look();
    await page.click('#at-boards');
    await look();
    await page.click('#at-corners');
    for (const dialog of ['bench', 'take', 'save-sheets', 'kept', 'licences']) {
      await page.click(`#${dialog}`);
      await page.locator('dialog[open]').waitFor();
      await look();
      await page.keyboard.press('Escape');
    }
  }
  await page.getByRole('button', { name: 'Add a single corner' }).click();
  await look();
  await look();
  expect(seen.size).toBeGreaterThan(300);
  const raw = new RegExp(`\\b(?:${KEYS.join('|')})\\b|\\w\\[\\d|\\b[a-z]{3,}\\.[a-z]|NaN|undefined`, 'u');
  expect([...seen].filter((label) => raw.test(label))).toEqual([]);
  await page.context().close();
});
