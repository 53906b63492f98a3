// What the page keeps: plans that others took the place of, the work of two tabs, what is typed when it is saved.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';
import { begun, hasTitle } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
afterAll(() => there.close());

const title = (page: Page): Promise<string> => page.locator('#title').inputValue();
const named = async (page: Page, name: string): Promise<void> => {
  await page.fill('#title', name);
  await page.locator('#title').press('Enter');
};
const kept = async (page: Page): Promise<string[]> => {
  await page.click('#kept');
  await page.locator('#kept-dialog').waitFor();
  return page.locator('#kept-body .name').allTextContents();
};
const opened = async (page: Page, name: string): Promise<void> => {
  const text = `name: ${name}\njoints: [{name: A, kind: through, width: 60, tailBoard: 12, pinBoard: 12}]\n`;
  await page
    .locator('#file')
    .setInputFiles({ name: 'p.yaml', mimeType: 'text/plain', buffer: Buffer.from(text) });
  await hasTitle(page, name);
};
const saved = async (page: Page, save: () => Promise<void>): Promise<string> => {
  const [file] = await Promise.all([page.waitForEvent('download'), save()]);
  return readFileSync(await file.path(), 'utf8');
};

describe('earlier plans', () => {
  it('are kept where New or Open takes their place, the latest first, and come back after a reload too', async () => {
    const page = await there.open();
    expect(await kept(page)).toEqual([]);
    expect(await page.locator('#kept-body').textContent()).toContain('There are none yet');
    await page.keyboard.press('Escape');
    await named(page, 'Sewing table');
    await begun(page);
    await opened(page, 'Other');
    expect(await kept(page)).toEqual(['My chest', 'Sewing table']);
    await page.reload();
    expect(await kept(page)).toEqual(['My chest', 'Sewing table']);
    await page.getByRole('button', { name: 'Bring it back' }).last().click();
    expect(await title(page)).toBe('Sewing table');
    // Nothing is kept twice in a row.
    expect(await kept(page)).toEqual(['Other', 'My chest', 'Sewing table']);
    await page.context().close();
  });

  it('are told apart by their drawers and their last edit; the untouched example is none', async () => {
    const page = await there.open();
    await begun(page);
    expect(await kept(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByLabel('Opening, height').fill('80');
    await page.keyboard.press('Enter');
    await opened(page, 'My chest');
    await opened(page, 'Third');
    await kept(page);
    const words = await page.locator('#kept-body .quiet:not(time)').allTextContents();
    expect(words).toEqual([
      '1 single corner; last: opening of "p.yaml"',
      "3 drawers; last: opening's height, Pencils",
    ]);
    await page.context().close();
  });

  it('give way to what was asked for last, however long a new plan takes to be made', async () => {
    const page = await there.open();
    await page.evaluate(() => {
      const chosen = new DataTransfer();
      const text =
        'name: Other\njoints: [{name: A, kind: through, width: 60, tailBoard: 12, pinBoard: 12}]\n';
      chosen.items.add(new File([text], 'p.yaml'));
      const chooser = document.querySelector<HTMLInputElement>('#file');
      document.querySelector<HTMLElement>('#fresh')?.click();
      if (chooser !== null) chooser.files = chosen.files;
      chooser?.dispatchEvent(new Event('change'));
    });
    await hasTitle(page, 'Other');
    await begun(page);
    // Nothing came between them.
    expect(await kept(page)).toEqual(['Other']);
    await page.context().close();
  });

  it('are kept where the page is left before the database has answered', async () => {
    const page = await there.open();
    await named(page, 'Sewing table');
    await page.evaluate(() => {
      IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
    });
    await begun(page);
    await page.reload();
    await hasTitle(page, 'My chest');
    expect(await kept(page)).toEqual(['Sewing table']);
    await page.reload();
    expect(await kept(page)).toEqual(['Sewing table']);
    expect(await page.evaluate(() => localStorage.getItem('halfpin pending'))).toBeNull();
    await page.context().close();
  });

  it('are thirty at the most', async () => {
    const page = await there.open();
    for (let i = 1; i <= 33; i++) await opened(page, `Plan ${i}`);
    const names = await kept(page);
    expect(names).toHaveLength(30);
    expect(names[0]).toBe('Plan 32');
    expect(names.at(-1)).toBe('Plan 3');
    await page.context().close();
  });
});

describe('two tabs', () => {
  const two = async (): Promise<[Page, Page]> => {
    const one = await there.open();
    await named(one, 'Ours');
    await one.waitForFunction(() => localStorage.getItem('halfpin')?.includes('name: Ours'));
    const other = await one.context().newPage();
    await other.goto(one.url());
    await other.locator('#messages').filter({ hasText: 'open in another tab too' }).waitFor();
    await named(other, 'Theirs');
    await one.locator('#other-tab').filter({ hasText: 'a newer plan, "Theirs"' }).waitFor();
    return [one, other];
  };

  it('tell each other of a newer plan, which may be taken; the one that is left is kept', async () => {
    const [one] = await two();
    await one.click('text=Take that one');
    expect(await title(one)).toBe('Theirs');
    expect(await one.locator('#other-tab').textContent()).toBe('');
    expect(await kept(one)).toEqual(['Ours']);
    await one.context().close();
  });

  it('lose nothing where the other is not taken, or is not answered', async () => {
    const [one, other] = await two();
    await one.click('text=Keep mine');
    await other.locator('#other-tab').filter({ hasText: 'a newer plan, "Ours"' }).waitFor();
    expect(await kept(one)).toEqual(['Theirs']);
    await named(other, 'Theirs, further');
    await one.locator('#other-tab').filter({ hasText: 'Theirs, further' }).waitFor();
    expect(await other.locator('#other-tab').textContent()).toBe('');
    expect(await kept(other)).toEqual(['Ours', 'Theirs']);
    await one.context().close();
  });
});

describe('Save', () => {
  it('takes what is being typed', async () => {
    const page = await there.open();
    await page.fill('#title', 'Typed');
    expect(await saved(page, () => page.keyboard.press('Control+s'))).toContain('name: Typed\n');
    await page.getByLabel('Opening, height').fill('80');
    expect(await saved(page, () => page.click('#save'))).toContain('heights: [80,');
    await page.context().close();
  });

  it('says that the file holds the last valid plan where what is being typed is not valid, and why', async () => {
    const page = await there.open();
    const message = page.locator('#messages');
    await page.getByLabel('Opening, height').fill('8 feet');
    expect(await saved(page, () => page.keyboard.press('Control+s'))).toContain('heights: [76,');
    expect(await message.textContent()).toMatch(/The file holds the last valid plan.*8 feet/su);
    await page.click('#text-panel summary');
    await page.fill('#text', 'name: 1\n');
    expect(await saved(page, () => page.click('#save'))).toContain('heights: [76,');
    expect(await message.textContent()).toMatch(/The file holds the last valid plan.*Line 1: name/su);
    await page.context().close();
  });
});

describe('a browser that stores nothing', () => {
  it('is told of beside Save, and asks before it is left with what is in no file', async () => {
    const page = await there.open();
    expect(await page.locator('#unkept').textContent()).toBe('');
    await page.context().addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('no', 'SecurityError');
        },
      });
    });
    await page.reload();
    expect(await page.locator('#unkept').textContent()).toMatch(/keeps nothing/u);
    const asked: string[] = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await named(page, 'Mine');
    await page.reload();
    expect(asked).toEqual(['beforeunload']);
    await named(page, 'Mine');
    await saved(page, () => page.click('#save'));
    await page.reload();
    expect(asked).toHaveLength(1);
    await page.context().close();
  });

  const unkept = (page: Page): Promise<string | null> => page.locator('#unkept').textContent();

  it('because it is full is told of until there is room', async () => {
    const page = await there.open();
    await page.evaluate(() => {
      for (let size = 4e6; size >= 1; size = Math.floor(size / 2))
        try {
          for (let i = 0; ; i++) localStorage.setItem(`filler ${size} ${i}`, 'x'.repeat(size));
        } catch {
          // Half of it may fit.
        }
    });
    await named(page, 'Longer than the room that there is');
    await expect.poll(() => unkept(page)).toMatch(/keeps nothing/u);
    await named(page, 'Longer than the room that there is still');
    await page.waitForTimeout(600);
    expect(await unkept(page)).toMatch(/keeps nothing/u);
    // What another takes the place of is kept in the database all the same.
    await begun(page);
    expect(await kept(page)).toEqual(['Longer than the room that there is still']);
    await page.keyboard.press('Escape');
    await page.evaluate(() => {
      for (const key of Object.keys(localStorage)) if (key.startsWith('filler')) localStorage.removeItem(key);
    });
    await named(page, 'Shorter');
    await expect.poll(() => unkept(page)).toBe('');
    await page.context().close();
  });

  it.each([
    ['refuses', 'no'],
    ['has no room for', 'full'],
  ])('in a database that %s them keeps earlier plans beside the present one', async (_, how) => {
    const page = await there.open();
    await page.context().addInitScript((how) => {
      if (how === 'no')
        Object.defineProperty(window, 'indexedDB', {
          get: () => {
            throw new DOMException('no', 'SecurityError');
          },
        });
      else
        IDBObjectStore.prototype.add = function () {
          this.transaction.abort();
          throw new DOMException('full', 'QuotaExceededError');
        };
    }, how);
    await page.reload();
    await named(page, 'Sewing table');
    await begun(page);
    expect(await kept(page)).toEqual(['Sewing table']);
    await page.reload();
    expect(await kept(page)).toEqual(['Sewing table']);
    expect(await unkept(page)).toBe('');
    await page.keyboard.press('Escape');
    await page.evaluate(() => {
      const set = Storage.prototype.setItem;
      Storage.prototype.setItem = function (key, value) {
        if (key === 'halfpin pending') throw new DOMException('full', 'QuotaExceededError');
        set.call(this, key, value);
      };
    });
    await opened(page, 'Other');
    await expect
      .poll(() => unkept(page))
      .toBe('This browser keeps no earlier plans: save before you open another.');
    await page.context().close();
  });
});
