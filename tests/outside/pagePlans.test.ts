// How plans come into the page in Debian's Chromium, and stay there.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CHEST } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { download, give, kept, message, slider, told } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
// Whatever went wrong inside the page, or asked for the network, comes to light here.
afterAll(() => there.close());

/** Gives a file that is no plan, and waits for what the page says of it: reading takes a moment. */
const refusalOf = async (page: Page, name: string, buffer: Buffer): Promise<string | null> => {
  await give(page, name, buffer);
  await message(page)
    .filter({ hasText: `"${name}" was not opened` })
    .waitFor();
  return message(page).textContent();
};

describe('what comes in', () => {
  it('is refused in words where it is no plan, and the work in hand is kept', async () => {
    const page = await there.open();
    await slider(page, 'tail 2, lower edge').press('ArrowUp');
    const inHand = await kept(page);
    const mistaken = await refusalOf(
      page,
      'chest.yaml',
      Buffer.from(CHEST.replace('slope: "1:7"', 'slope: "1:0"').replace('count: 2', 'count: two')),
    );
    expect(mistaken).toContain('"chest.yaml" was not opened; your open plan is unchanged.');
    expect(mistaken).toMatch(/slope: "1:0".*, in "[^"]*joint:/u);
    expect(mistaken).toMatch(/drawer 1, count: .*, in "- \{name: Buttons/u);
    // The first bytes of a JPEG, and noise.
    const noise = Buffer.from(Array.from({ length: 200_000 }, (_, i) => (i * 7919) % 256));
    const photograph = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), noise]);
    expect(await refusalOf(page, 'photograph.jpg', photograph)).toMatch(
      /"photograph\.jpg" was not opened.*this is not text/u,
    );
    expect(await kept(page)).toBe(inHand);
    await page.context().close();
  });

  it('may be dropped on the page, 50 MB too', async () => {
    const page = await there.open();
    const drop = (name: string, text: string, times: number) =>
      page.evaluate(
        ([name, text, times]) => {
          const data = new DataTransfer();
          data.items.add(new File([text.repeat(times)], name));
          dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
        },
        [name, text, times] as const,
      );
    await drop('huge.yaml', '# 50 MB of notes \n'.repeat(1000), 2778);
    await page.waitForFunction(() => /huge/u.test(document.getElementById('messages')?.textContent ?? ''));
    expect(await message(page).textContent()).toMatch(/the plan is 50 MB long/u);
    await drop(
      'small.yaml',
      'name: Small\njoints: [{name: A, kind: through, width: 60, tailBoard: 12, pinBoard: 12}]\n',
      1,
    );
    await page.waitForFunction(() => document.querySelector('input')?.value === 'Small');
    expect(await slider(page, 'lower half pin').count()).toBe(0);
    expect(await page.locator('#corner-name').textContent()).toBe('A');
    await page.context().close();
  });

  it('may come in a link, from which nothing is lost', async () => {
    const page = await there.open();
    await page.getByRole('slider', { name: 'tail 2, lower edge' }).press('ArrowUp');
    await page.click('#link');
    const changed = await kept(page);
    await page.waitForFunction(() => location.hash.startsWith('#plan='));
    const hash = await page.evaluate(() => location.hash);
    const other = await there.open({ hash });
    await other.waitForFunction(() => document.getElementById('undo')?.hasAttribute('disabled') === false);
    expect(await kept(other)).toBe(changed);
    // What is changed from then on is kept, and not put back by the address.
    await other.getByRole('slider', { name: 'tail 2, lower edge' }).press('ArrowDown');
    expect(await kept(other)).not.toBe(changed);
    const further = await kept(other);
    await other.reload();
    expect(await kept(other)).toBe(further);
    const damaged = await there.open({ hash: hash.slice(0, -20) });
    await damaged.waitForSelector('#messages .stop');
    expect(await message(damaged).textContent()).toContain('The plan in this link is damaged');
    for (const each of [page, other, damaged]) await each.context().close();
  });

  it('shows hostile names as the text they are', async () => {
    const names = [
      '<script>document.title="taken"</script>',
      `"'&quot;`,
      'مرحبا يا درج',
      '🪚🗄️',
      '<img src=x onerror=alert(1)>',
    ];
    const plan = {
      name: names[0],
      stock: { front: { thickness: 20 }, side: { thickness: 11 } },
      drawers: names.map((name) => ({ name, opening: { width: 300, height: 80, depth: 400 } })),
    };
    const page = await there.open();
    await give(page, 'names.json', Buffer.from(JSON.stringify(plan)));
    await page.waitForFunction(() => document.querySelectorAll('.member').length === 5);
    expect(await page.locator('.member .name').allTextContents()).toEqual(names);
    expect((await page.locator('.front text').allTextContents())[0]).toMatch(/^<script>document/u);
    for (const [i, name] of names.entries()) {
      await page.locator('.member').nth(i).click();
      expect(await page.locator('#corner-name').textContent()).toBe(name);
    }
    expect(await page.title()).toBe('Halfpin');
    expect(await page.locator('main img, main script').count()).toBe(0);
    // No font of the sheets has a picture of a saw.
    await page.click('#save-sheets');
    await page.click('#take-templates');
    await page.locator('#take-status.stop', { hasText: 'the fonts of the sheets lack the letter' }).waitFor();
    await page.click('#take-close');
    await page.locator('.member').nth(3).click();
    await page.getByRole('button', { name: 'Remove this drawer' }).click();
    await page.click('#save-sheets');
    expect((await download(page, '#take-templates')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
    await page.context().close();
  });
});

describe('between visits', () => {
  it('keeps the work in the browser', async () => {
    const page = await there.open();
    await slider(page, 'tail 2, lower edge').press('PageUp');
    const before = await kept(page);
    await page.reload();
    expect(await told(slider(page, 'tail 2, lower edge'))).toBe(29.67);
    expect(await kept(page)).toBe(before);
    await page.context().close();
  });

  it.each([
    ['full', 'QuotaExceededError'],
    ['forbidden', 'SecurityError'],
  ])('says that nothing is kept where storage is %s, and works on', async (_, name) => {
    const page = await there.open();
    await page.context().addInitScript((kind) => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('no', kind);
        },
      });
    }, name);
    await page.reload();
    await slider(page, 'tail 2, lower edge').press('PageUp');
    await page.waitForSelector('#messages .note');
    expect(await message(page).textContent()).toMatch(/does not keep your plan/u);
    expect(await told(slider(page, 'tail 2, lower edge'))).toBe(29.67);
    await page.context().close();
  });
});
