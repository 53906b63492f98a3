// The page in Debian's Chromium, driven through Playwright: opened from a file, with the network cut.
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readProject } from '../../src/project/readProject.ts';
import { EXAMPLE } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { kept, slider, told } from '../page/steering.ts';

let there: Visit;
beforeAll(async () => {
  there = await visit();
});
// Whatever went wrong inside the page, or asked for the network, comes to light here.
afterAll(() => there.close());

/** Takes hold of a handle's mark and moves it by so many px, as a hand does. */
const dragBy = async (page: Page, handle: Locator, dx: number, dy: number): Promise<void> => {
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.locator('.grip').boundingBox();
  if (box === null) throw new Error('no grip');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i++) await page.mouse.move(x + (dx * i) / 8, y + (dy * i) / 8);
  await page.evaluate(() => new Promise(requestAnimationFrame));
};

/** px to the mm of the corner's drawing: between two of its lines lie so many mm. */
const scaleOf = async (page: Page): Promise<number> => {
  const heights = await Promise.all(
    ['tail 1, lower edge', 'tail 3, upper edge'].map(async (name) => {
      const box = await slider(page, name).locator('.grip').boundingBox();
      return box === null ? Number.NaN : box.y + box.height / 2;
    }),
  );
  const [low = 0, high = 0] = heights;
  return (low - high) / (69 - 6);
};

describe('the page', () => {
  it('holds the example chest for who has never been there, and paints it in half a second', async () => {
    // Other programs can make one visit slow, not every one.
    let paint = Number.POSITIVE_INFINITY;
    for (let visits = 0; visits < 6 && paint >= 500; visits++) {
      const page = await there.open();
      expect(await page.getByRole('button', { name: /^Cloth, 573 wide, 189 high, 6 tails$/u }).count()).toBe(
        1,
      );
      paint = await page.evaluate(
        () =>
          new Promise<number>((resolve) => {
            new PerformanceObserver((list) => {
              for (const { name, startTime } of list.getEntries())
                if (name === 'first-contentful-paint') resolve(startTime);
            }).observe({ type: 'paint', buffered: true });
          }),
      );
      await page.context().close();
    }
    expect(paint).toBeLessThan(500);
  });

  it('is under 300 kB gzipped before what it unpacks: dialogs, boards, a new plan, and what makes sheets', () => {
    const html = readFileSync('dist/halfpin.html', 'utf8');
    const first = html.replace(
      /<script type="text\/plain" id="(?:worker|font-\w+|part-[\w-]+)">.*?<\/script>/gsu,
      '',
    );
    expect(first.length).toBeLessThan(html.length / 2);
    expect(first).toContain('id="packed-licences"');
    expect(gzipSync(first).length).toBeLessThan(300_000);
  });

  it('shows the licence of everything that is in it', async () => {
    const page = await there.open();
    await page.getByRole('button', { name: 'Licences' }).click();
    const text = page.locator('#licences-text');
    await text.filter({ hasText: 'Permission is hereby granted' }).waitFor();
    const shown = (await text.textContent()) ?? '';
    expect(shown.startsWith(readFileSync('LICENSE', 'utf8'))).toBe(true);
    for (const name of [
      '@fontsource/alegreya-sans',
      'dejavu-fonts-ttf',
      '@svgdotjs/svg.js',
      'lit-html',
      'yaml',
      'zod',
      'pdfkit',
    ])
      expect(shown).toMatch(new RegExp(`^${name} \\d[\\d.]* \\(.+\\)\\n\\n\\S`, 'mu'));
    expect(shown).toContain('SIL OPEN FONT LICENSE Version 1.1');
    await page.keyboard.press('Escape');
    expect(await text.isVisible()).toBe(false);
    await page.context().close();
  });
});

describe('setting out by hand', () => {
  it('puts a line where it is dragged: so many mm further up the board, to a tenth', async () => {
    const page = await there.open();
    const handle = slider(page, 'tail 2, lower edge');
    const scale = await scaleOf(page);
    expect(await told(handle)).toBe(28.67);
    await dragBy(page, handle, 0, -2.33 * scale);
    await page.mouse.up();
    expect(await told(handle)).toBe(31);
    // Half pin 6, tail and pin as they were but for the pin, which grew by what the tail lost.
    expect(parse(await kept(page)).drawers[0].joint).toEqual({
      tails: [17.67, 15.33, 17.67],
      pins: [7.33, 5],
      halfPin: [6, 6],
    });
    await page.context().close();
  });

  it('stops a line where the joint could not be cut, says why beside it, and comes back', async () => {
    const page = await there.open();
    const handle = slider(page, 'tail 2, lower edge');
    await dragBy(page, handle, 0, 300);
    // Tail 1 ends at 23.67; a pin keeps 1 mm.
    expect(await told(handle)).toBe(24.7);
    const callout = page.locator('.callout');
    expect(await callout.textContent()).toMatch(/pin 1 is 0\.93 mm; it must be 1 mm/u);
    const [near, line] = await Promise.all([callout.boundingBox(), handle.locator('.grip').boundingBox()]);
    if (near === null || line === null) throw new Error('not shown');
    expect(Math.abs(near.y - line.y)).toBeLessThan(40);
    expect(Math.max(line.x - (near.x + near.width), near.x - (line.x + line.width))).toBeLessThan(40);
    // No size is under it: they are written between the boards, where the grip is.
    for (const size of await page.locator('svg.corner .sizes text:not(.names text)').all()) {
      const box = await size.boundingBox();
      if (box === null) continue;
      const isClear =
        box.x + box.width <= near.x ||
        box.x >= near.x + near.width ||
        box.y + box.height <= near.y ||
        box.y >= near.y + near.height;
      expect(isClear, (await size.textContent()) ?? '').toBe(true);
    }
    await page.mouse.up();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await told(handle)).toBe(28.67);
    await page.context().close();
  });

  it('moves the lap and the groove of all drawers; the tails are as long as the front less the lap', async () => {
    const page = await there.open();
    const scale = await scaleOf(page);
    await dragBy(page, slider(page, 'lap'), 1.5 * scale, 0);
    await page.mouse.up();
    await dragBy(page, slider(page, 'groove, from the reference edge'), 0, -0.7 * scale);
    await page.mouse.up();
    const plan = readProject(await kept(page));
    if (!plan.ok) throw new Error('no plan');
    for (const { front, spec } of plan.value.set.drawers) {
      expect(front.pinBoard.lap).toBe(6.5);
      expect(front.depth).toBe(13.5);
      expect(spec.groove.offset).toBe(11.7);
    }
    await page.context().close();
  });

  it('lets a finger drag the grip that it has tapped, and scroll beside it', async () => {
    const page = await there.open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const handle = slider(page, 'tail 2, lower edge');
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.locator('.grip').boundingBox();
    if (box === null) throw new Error('no grip');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const touch = await page.context().newCDPSession(page);
    /** A finger's way from one height to others, as slow as a hand's, so that the browser has time to scroll. */
    const swipe = async (x: number, from: number, ...to: number[]): Promise<void> => {
      const touchAt = (type: 'touchStart' | 'touchMove', y: number) =>
        touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] });
      await touchAt('touchStart', from);
      for (const y of to) {
        await touchAt('touchMove', y);
        await page.waitForTimeout(30);
      }
    };
    const lift = () => touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    const scrolled = () => page.evaluate(() => scrollY);
    await page.touchscreen.tap(x, y);
    const before = [await told(handle), await scrolled()] as const;
    await swipe(x, y, ...[-5, -10, -20, -40, -60, -80].map((by) => y + by));
    await page.locator('.callout').waitFor();
    const [reason, line] = await Promise.all([
      page.locator('.callout').boundingBox(),
      handle.locator('.grip').boundingBox(),
    ]);
    // A finger would hide what stands below.
    expect((reason?.y ?? 0) + (reason?.height ?? 0)).toBeLessThan(line?.y ?? 0);
    await lift();
    expect(await told(handle)).toBeGreaterThan(before[0] + 8);
    expect(await scrolled()).toBe(before[1]);
    // On the front's inside, where nothing can be taken hold of.
    await swipe(365, y, y - 20, y - 60, y - 100);
    await lift();
    await page.waitForFunction((from) => scrollY > from + 40, before[1]);
    await page.context().close();
  });

  it('returns to the start after 200 random edits and as many undos', async () => {
    const page = await there.open();
    // A small generator with a fixed seed (Park and Miller, 1988), so that a failure comes again.
    let seed = 20_260_531;
    const random = (below: number): number => {
      seed = (seed * 48_271) % 2_147_483_647;
      return seed % below;
    };
    const before = await page.locator('#family').textContent();
    const edits = Array.from({ length: 200 }, () => [random(10), random(1000), random(1000)] as const);
    const steps = await page.evaluate((all) => {
      const keys = ['ArrowUp', 'ArrowDown', 'PageUp', 'PageDown', 'ArrowLeft', 'ArrowRight'];
      const pick = (selector: string, i: number): Element | undefined => {
        const found = [...document.querySelectorAll(selector)];
        return found[i % found.length];
      };
      const click = (selector: string, i: number): void =>
        void pick(selector, i)?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
      for (const [what, i, j] of all) {
        if (what < 6)
          pick('.handle', i)?.dispatchEvent(
            new KeyboardEvent('keydown', { key: keys[j % keys.length] ?? '', shiftKey: j % 3 === 0 }),
          );
        else if (what < 8) click('#tools button', i);
        else if (what < 9) click('.member', i);
        else click('.widths .mini', i);
      }
      const undo = document.getElementById('undo');
      let count = 0;
      while (undo instanceof HTMLButtonElement && !undo.disabled) {
        undo.click();
        count++;
      }
      return count;
    }, edits);
    expect(steps).toBeGreaterThan(100);
    expect(await kept(page)).toBe(EXAMPLE);
    expect(await page.locator('#family').textContent()).toBe(before);
    await page.context().close();
  });
});

describe('the keyboard alone', () => {
  it('chooses a drawer, moves a tail, types a width in inches, locks it, takes it all back; begins another plan, saves and prints it', async () => {
    const page = await there.open();
    const press = (...keys: string[]) =>
      keys.reduce((done, key) => done.then(() => page.keyboard.press(key)), Promise.resolve());
    const tabTo = async (name: RegExp): Promise<void> => {
      for (let i = 0; i < 200; i++) {
        await page.keyboard.press('Tab');
        const label = await page.evaluate(
          () =>
            document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '',
        );
        if (name.test(label)) return;
      }
      throw new Error(`the keyboard does not reach ${name}`);
    };
    await tabTo(/^Notions, /u);
    await press('Enter');
    expect(await page.locator('#corner-name').textContent()).toBe('Notions');
    await tabTo(/^tail 3, upper edge$/u);
    const handle = slider(page, 'tail 3, upper edge');
    const before = await told(handle);
    await press('ArrowUp', 'ArrowUp', 'ArrowDown', 'PageUp');
    expect(await told(handle)).toBeCloseTo(before + 1.1, 2);
    expect(await page.locator('#spoken').textContent()).toBe(`${await told(handle)} mm`);
    await tabTo(/^tail 2, width$/u);
    await page.keyboard.type('3/4in');
    await press('Enter');
    expect(await page.getByRole('textbox', { name: 'tail 2, width' }).inputValue()).toBe('19.05');
    await press('Tab', 'Space');
    expect(await page.getByRole('button', { name: 'Lock tail 2' }).getAttribute('aria-pressed')).toBe('true');
    for (let i = 0; i < 6; i++) await press('Control+z');
    expect(await kept(page)).toBe(EXAMPLE);

    await tabTo(/^Begin your own, in mm$/u);
    await press('Tab', 'Enter');
    await tabTo(/^Name of the plan$/u);
    await press('Control+a');
    await page.keyboard.type('Seed box');
    await press('Enter');
    await tabTo(/^tail 2, upper edge$/u);
    await press('ArrowDown');
    const [saved] = await Promise.all([page.waitForEvent('download'), press('Control+s')]);
    expect(saved.suggestedFilename()).toBe('seed-box.yaml');
    const text = readFileSync(await saved.path(), 'utf8');
    expect(text).toBe(await kept(page));
    expect(parse(text)).toMatchObject({ name: 'Seed box', units: 'in' });
    expect(parse(text).drawers[0].joint.tails).toHaveLength(3);
    await tabTo(/^Save sheets$/u);
    await press('Enter');
    await tabTo(/^Templates, PDF$/u);
    const [pdf] = await Promise.all([page.waitForEvent('download'), press('Enter')]);
    expect(pdf.suggestedFilename()).toBe('seed-box-templates.pdf');
    await page.context().close();
  });

  it('keeps its place, and what is being typed there, while all else is shown anew', async () => {
    const page = await there.open();
    const box = (name: string): Locator => page.getByRole('textbox', { name, exact: true });
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    await box('upper half pin, width').fill('3/4');
    await slider(page, 'tail 1, lower edge').dispatchEvent('keydown', { key: 'ArrowUp' });
    expect(await box('lower half pin, width').inputValue()).toBe('6.1');
    expect(await box('upper half pin, width').inputValue()).toBe('3/4');
    expect(await focused()).toBe('upper half pin, width');
    await page.keyboard.press('Escape');
    expect(await box('upper half pin, width').inputValue()).toBe('6');
    for (const name of ['One tail more', 'Lock tail 2', 'Remove tail 1']) {
      await page.getByRole('button', { name, exact: true }).press('Enter');
      expect(await focused()).toBe(name);
    }
    await page.context().close();
  });
});
