// Boards on the page, in Debian's Chromium: what comes out of each, and boards and defects drawn by mouse, finger and keys.
import { readFileSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RULES, axeFaults, COLOUR_RULES } from '../page/axeFaults.ts';
import { EXAMPLE, inInches } from '../page/chest.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { roomFaults } from '../page/roomFaults.ts';
import { give, kept, slider } from '../page/steering.ts';

const CHEST_OF_BOARDS = readFileSync('examples/haberdashery-chest-boards.yaml', 'utf8');
/** The same in inches; a second try is no length. */
const INCHES = inInches(CHEST_OF_BOARDS.replace(/ {2}spare: .*\n/u, ''));
/** The narrow fronts alone, out of two boards: quickly laid out. */
const FEW = `name: Two boards
stock: {front: {thickness: 20, species: "Cherry, black"}, side: {thickness: 11}, bottom: {thickness: 5}}
groove: {offset: 11, width: 5, depth: 5}
joint: {pin: 5, halfPin: 6, lap: 5}
boards:
  - name: Cherry 1 # the best
    stock: front
    thickness: 26
    length: 1000
    width: 200
    defects:
      - {kind: knot, at: [500, 150], size: [40, 30]} # by the window
  - {name: Cherry 2, stock: front, thickness: 26, size: 1200 x 150}
drawers:
  - {name: Buttons, count: 2, opening: {width: 280, height: 76, depth: 420}}
  - {name: Patches, opening: {width: 574, height: 110, depth: 420}}
`;

let there: Visit;
let page: Page;
let touch: CDPSession;
beforeAll(async () => {
  there = await visit();
  page = await there.open({ hasTouch: true });
  touch = await page.context().newCDPSession(page);
});
afterAll(() => there.close());

const body = () => page.locator('#stock-body');
const laidOut = (): Promise<void> => page.locator('#stock-body .progress').waitFor({ state: 'hidden' });
const openPlan = async (text: string): Promise<void> => {
  await give(page, 'boards.yaml', Buffer.from(text));
  await laidOut();
};
const plankButton = (name: string) => page.locator('.plank-name', { hasText: name });
const field = (label: string) => page.getByRole('textbox', { name: label, exact: true });
const type = async (label: string, text: string): Promise<void> => {
  await field(label).fill(text);
  await field(label).press('Enter');
};
const middleOf = async (selector: string): Promise<[number, number]> => {
  await page.locator(selector).evaluate((node) => node.scrollIntoView({ block: 'center' }));
  const box = await page.locator(selector).boundingBox();
  if (box === null) throw new Error(`no ${selector}`);
  return [box.x + box.width / 2, box.y + box.height / 2];
};
const dragBy = async ([x, y]: [number, number], by: [number, number]): Promise<void> => {
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by[0] / 2, y + by[1] / 2);
  await page.mouse.move(x + by[0], y + by[1]);
  await page.mouse.up();
};
const undoIs = () => page.locator('#undo-board').getAttribute('title');

describe('the boards of a plan', () => {
  it('begin with one that is listed, and say what is missing as a board to buy, which can be listed too', async () => {
    await page.click('#at-boards');
    expect(await page.locator('#corner').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'List this board' }).click();
    expect(await kept(page)).toMatch(/\nboards:\n {2}- \{name: Cherry 1, stock: front, thickness: 22, /u);
    await laidOut();
    const missing = body().locator('.missing');
    expect(await missing.textContent()).toMatch(
      /One more board for fronts of at least [\d.]+ x [\d.]+ x 22 mm would do\./u,
    );
    await missing.getByRole('button', { name: 'List it' }).click();
    await laidOut();
    expect(await missing.count()).toBe(0);
    expect(await body().textContent()).toMatch(/2 of 2 boards are cut into/u);
    await page.click('#undo-board');
    await page.click('#undo-board');
    expect(await kept(page)).toBe(EXAMPLE);
  });

  it('show what comes out of each and why, on fronts too; an older layout stays and is said to be old', async () => {
    await openPlan(FEW);
    expect(await body().textContent()).toMatch(/1 of 2 boards are cut into; fewer would not do/u);
    const rows = await page.locator('.broken-out tbody tr').allTextContents();
    expect(rows.map((row) => row.trim().split(/\s{2,}/u)[1])).toEqual([
      'Buttons front 1',
      'Buttons front 2',
      'Patches front 1',
    ]);
    const fronts = await page.locator('svg[aria-label^="The fronts"]').getAttribute('aria-label');
    expect(fronts?.match(/Buttons from Cherry \d/gu)).toHaveLength(2);
    await plankButton('Cherry 2').click();
    await type('Cherry 2, width at left', '140');
    expect(await page.locator('.stock-board.old').count()).toBe(2);
    expect(await body().textContent()).toContain('What is shown is old.');
    expect(await page.locator('.broken-out tbody tr').count()).toBe(3);
    await laidOut();
    expect(await kept(page)).toBe(FEW.replace('1200 x 150', '1200 x 140'));
  });

  it('are laid out beside the page, with progress; the search can be stopped, and begun again', async () => {
    await give(page, 'chest.yaml', Buffer.from(CHEST_OF_BOARDS));
    await body().getByRole('button', { name: 'Stop', exact: true }).click();
    expect(await body().textContent()).toContain('Stopped.');
    await body().getByRole('button', { name: 'Break out', exact: true }).click();
    await laidOut();
    expect(await body().textContent()).toContain('6 of 9 boards are cut into');
    expect(await page.locator('.broken-out tbody tr').count()).toBe(39);
  });
});

describe('a board', () => {
  it('is made shorter at its right end and wider at its upper edge by a mouse, each as one step of undo', async () => {
    await openPlan(FEW);
    await plankButton('Cherry 1').click();
    await dragBy(await middleOf('[data-grip="length"] .grip'), [-120, 0]);
    const length = Number(/length: (\d+)\n/u.exec(await kept(page))?.[1]);
    expect(length).toBeGreaterThan(800);
    expect(length).toBeLessThan(950);
    expect(await kept(page)).toBe(FEW.replace('length: 1000', `length: ${length}`));
    expect(await undoIs()).toBe('size of a board, the plan');
    await page.click('#undo-board');
    await dragBy(await middleOf('[data-grip="width"] .grip'), [0, -20]);
    const width = Number(/width: (\d+)\n/u.exec(await kept(page))?.[1]);
    expect(width).toBeGreaterThan(205);
    expect(await kept(page)).toBe(FEW.replace('width: 200', `width: ${width}`));
    await page.click('#undo-board');
    expect(await kept(page)).toBe(FEW);
  });

  it('is changed by keys, a run of them as one step, and by its fields; what cannot be is said', async () => {
    await slider(page, 'Cherry 1, length').focus();
    for (const key of ['ArrowLeft', 'ArrowLeft', 'Shift+ArrowLeft']) await page.keyboard.press(key);
    expect(await kept(page)).toBe(FEW.replace('length: 1000', 'length: 988'));
    expect(await slider(page, 'Cherry 1, length').getAttribute('aria-valuetext')).toBe('988 mm');
    await page.click('#undo-board');
    expect(await kept(page)).toBe(FEW);
    await type('Cherry 1, quantity', '2');
    await page.getByRole('checkbox', { name: 'sides' }).first().check();
    expect(await kept(page)).toBe(
      FEW.replace('stock: front\n', 'stock: [front, side]\n')
        .replace('width: 200\n', 'width: 200\n')
        .replace('# by the window\n', '# by the window\n    count: 2\n'),
    );
    await page.click('#undo-board');
    await page.click('#undo-board');
    await type('Cherry 1, thickness', '12');
    expect(await page.locator('#messages .stop').textContent()).toMatch(/12 mm thick, too thin/u);
    expect(await field('Cherry 1, thickness').inputValue()).toBe('12');
    await page.keyboard.press('Escape');
    expect(await field('Cherry 1, thickness').inputValue()).toBe('26');
    expect(await page.locator('#messages .stop').count()).toBe(0);
  });
});

describe('a defect', () => {
  it('is drawn by pressing and dragging on the board, moved and removed', async () => {
    await page.getByRole('combobox', { name: 'Kind of the next defect' }).selectOption('sound knot');
    await page.getByRole('button', { name: 'Draw it' }).click();
    await dragBy(await middleOf('.surface'), [60, 30]);
    const drawn =
      /- \{kind: knot, sound: true, at: \[([\d.]+), ([\d.]+)\], size: \[([\d.]+), ([\d.]+)\]\}/u.exec(
        await kept(page),
      );
    const [x, y, long, wide] = (drawn ?? []).slice(1).map(Number);
    expect((x ?? 0) - (long ?? 0) / 2).toBeCloseTo(500, -0.5);
    expect((y ?? 0) + (wide ?? 0) / 2).toBeCloseTo(100, -0.5);
    expect(await undoIs()).toBe('sound knot on a board, the plan');
    await page.keyboard.press('Escape');
    expect(await page.locator('.surface').count()).toBe(0);
    await dragBy(await middleOf('[data-grip="defect 1"] .edge'), [-100, 0]);
    const moved = Number(/sound: true, at: \[([\d.]+)/u.exec(await kept(page))?.[1]);
    expect(moved).toBeLessThan((x ?? 0) - 50);
    await page.locator('[data-grip="defect 1"]').focus();
    await page.keyboard.press('Delete');
    expect(await kept(page)).toBe(FEW);
  });

  it('is added, placed and removed by keys alone', async () => {
    await page.getByRole('button', { name: 'Add it by numbers' }).focus();
    await page.keyboard.press('Enter');
    await type('b sound knot, from left end', '300');
    await type('b sound knot, width', '25');
    expect(await kept(page)).toContain('      - {kind: knot, sound: true, at: [300, 100], size: [40, 25]}\n');
    await page.locator('[data-grip="defect 1"]').focus();
    for (const key of ['ArrowRight', 'ArrowUp', 'Shift+ArrowRight']) await page.keyboard.press(key);
    expect(await kept(page)).toContain('at: [311, 101]');
    await page.click('#undo-board');
    expect(await kept(page)).toContain('at: [300, 100]');
    await page.getByRole('button', { name: 'Remove this sound knot' }).press('Enter');
    expect(await kept(page)).toBe(FEW);
  });

  it('moves under a finger that has tapped it; a swipe over it scrolls the page', async () => {
    await page.setViewportSize({ width: 390, height: 600 });
    const grip = page.locator('[data-grip="defect 0"]');
    await grip.evaluate((node) => {
      (document.activeElement as HTMLElement).blur();
      node.scrollIntoView({ block: 'center' });
    });
    const area = await grip.locator('.touch').boundingBox();
    if (area === null) throw new Error('no target');
    expect([area.width, area.height].map(Math.round)).toEqual([44, 44]);
    const swipe = async ([x, y]: [number, number], [dx, dy]: [number, number]): Promise<void> => {
      for (const [type, share] of [
        ['touchStart', 0],
        ['touchMove', 0.5],
        ['touchMove', 1],
      ] as const) {
        await touch.send('Input.dispatchTouchEvent', {
          type,
          touchPoints: [{ x: x + share * dx, y: y + share * dy }],
        });
        await page.waitForTimeout(30);
      }
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    const before = await page.evaluate(() => scrollY);
    await swipe(await middleOf('[data-grip="defect 0"] .touch'), [0, -90]);
    await page.waitForFunction((y) => scrollY > y + 40, before);
    expect(await kept(page)).toBe(FEW);
    await grip.evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const [x, y] = await middleOf('[data-grip="defect 0"] .touch');
    await page.touchscreen.tap(x, y);
    await page.waitForFunction(() => document.activeElement?.getAttribute('data-grip') === 'defect 0');
    await swipe(await middleOf('[data-grip="defect 0"] .touch'), [40, 0]);
    await expect.poll(() => kept(page)).not.toBe(FEW);
    expect(await undoIs()).toBe('place of a defect, the plan');
    await page.setViewportSize({ width: 1440, height: 900 });
  });
});

describe('with boards there is room for everything, and nothing for axe-core to find', () => {
  it.each([
    ['mm', CHEST_OF_BOARDS, 16],
    ['in', INCHES, 32],
  ] as const)('in %s', async (_, text, standard) => {
    await touch.send('Page.setFontSizes', { fontSizes: { standard } });
    await give(page, 'chest.yaml', Buffer.from(text));
    await page.locator('.broken-out[aria-busy="false"]').waitFor();
    if ((await plankButton('Ash 2').getAttribute('aria-expanded')) === 'false')
      await plankButton('Ash 2').click();
    await page.locator('.defect').first().click();
    const found: string[] = [];
    for (const width of [320, 390, 820, 1440, 2560]) {
      await page.setViewportSize({ width, height: 900 });
      await page.evaluate(async () => {
        scrollTo(0, 0);
        await new Promise((resolve) => setTimeout(resolve, 150));
      });
      found.push(...(await roomFaults(page)).map((fault) => `${width} px: ${fault}`));
    }
    expect(found).toEqual([]);
  });

  it('in any colours', async () => {
    expect(await axeFaults(page, AXE_RULES)).toEqual([]);
    for (const colours of [
      { colorScheme: 'dark', forcedColors: 'none' },
      { colorScheme: 'light', forcedColors: 'active' },
    ] as const) {
      await page.emulateMedia(colours);
      expect(await axeFaults(page, COLOUR_RULES, '#stock')).toEqual([]);
    }
  });
});
