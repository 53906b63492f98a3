// Every view of the page in windows as narrow as a phone's, in Debian's Chromium, with every example: the browser, which
// tells of each size that is no size, has nothing to say of any.
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';
import { give, pressInHead } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
// What the browser says of the page fails here.
afterAll(() => there.close());

const PLANS = readdirSync('examples').filter((name) => name.endsWith('.yaml'));

it.each([320, 390])('at %i px no view logs an error', async (width) => {
  const page = await there.open({ viewport: { width, height: 800 } });
  const openAll = async (): Promise<void> => {
    for (const plan of PLANS) {
      const text = readFileSync(`examples/${plan}`, 'utf8');
      await give(page, plan, Buffer.from(text));
      const name = /^name: (.*)$/mu.exec(text)?.[1] ?? '';
      await page.waitForFunction(
        (wanted) => document.querySelector<HTMLInputElement>('#title')?.value === wanted,
        name,
      );
      await page.evaluate(async () => {
        for (const member of document.querySelectorAll<HTMLElement>('.member')) {
          member.click();
          document.querySelector<HTMLElement>('#which button:last-child')?.click();
        }
        await new Promise(requestAnimationFrame);
      });
    }
  };
  await openAll();
  // The corners are hidden here, and have no room.
  await page.click('#at-boards');
  await openAll();
  await page.click('#at-corners');
  for (const dialog of ['bench', 'take', 'save-sheets', 'kept', 'licences']) {
    await pressInHead(page, `#${dialog}`);
    await page.locator('dialog[open]').waitFor();
    await page.keyboard.press('Escape');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
  }
  await page.context().close();
});
