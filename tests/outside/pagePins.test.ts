// Parts pinned by hand on the page, in Debian's Chromium: dragged, moved by keys and fingers, refused, set free.
import type { CDPSession, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AXE_RULES, axeFaults, COLOUR_RULES } from '../page/axeFaults.ts';
import { type Visit, visit } from '../page/chromium.ts';
import { roomFaults } from '../page/roomFaults.ts';
import { give, kept } from '../page/steering.ts';

/** Three fronts, which one board holds, and another: quickly laid out. */
const FEW = `name: Two boards
stock: {front: {thickness: 20, species: "Cherry, black"}, side: {thickness: 11}, bottom: {thickness: 5}}
groove: {offset: 11, width: 5, depth: 5}
joint: {pin: 5, halfPin: 6, lap: 5}
boards:
  - name: Cherry 1
    stock: front
    thickness: 26
    length: 1000
    width: 200
    defects:
      - {kind: knot, at: [500, 150], size: [40, 30]}
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
  await page.click('#at-boards');
  await give(page, 'boards.yaml', Buffer.from(FEW));
  await laidOut();
});
afterAll(() => there.close());

const laidOut = (): Promise<void> => page.locator('#stock-body .progress').waitFor({ state: 'hidden' });
const grip = (name: string): Locator => page.locator(`.part-grip[aria-label*=" ${name},"]`);
const board = (name: string): Locator => page.locator(`.stock-board[aria-label^="${name} "]`);
const callout = (): Locator => page.locator('#stock-body .callout');
const pinsOf = async (): Promise<string[]> => (await kept(page)).match(/\{part: [^}]*\}/gu) ?? [];
const undo = async (): Promise<void> => {
  await page.click('#undo-board');
  await laidOut();
};
const boxOf = async (node: Locator) => {
  const box = await node.boundingBox();
  if (box === null) throw new Error('not shown');
  return box;
};
/** The boards' sizes in the plan, in mm. */
const SIZES: Readonly<Record<string, readonly [number, number]>> = {
  'Cherry 1': [1000, 200],
  'Cherry 2': [1200, 150],
};
/** Where a hand takes a part, and where it takes it so that its lower left corner lies at a place on a board, in px. */
const way = async (
  name: string,
  to: string,
  [x, y]: readonly [number, number],
): Promise<readonly [from: Pair, to: Pair]> => {
  await grip(name).evaluate((node) => node.scrollIntoView({ block: 'center' }));
  const part = await boxOf(grip(name).locator('.edge'));
  const wood = await boxOf(board(to).locator('.wood'));
  const [length, width] = SIZES[to] ?? [1, 1];
  const corner: Pair = [wood.x + (x / length) * wood.width, wood.y + wood.height - (y / width) * wood.height];
  const held: Pair = [12, 8];
  return [
    [part.x + held[0], part.y + held[1]],
    [corner[0] + held[0], corner[1] - part.height + held[1]],
  ];
};
type Pair = readonly [number, number];
/** By the mouse, which does not let go yet. */
const carry = async (name: string, to: string, place: Pair): Promise<void> => {
  const [[x, y], end] = await way(name, to, place);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move((x + end[0]) / 2, (y + end[1]) / 2);
  await page.mouse.move(end[0], end[1]);
  await callout().waitFor();
};
/** Boards that are chosen have fields between them. */
const fold = async (): Promise<void> => {
  const open = page.locator('.plank-name[aria-expanded="true"]');
  if ((await open.count()) > 0) await open.click();
};

describe('a part', () => {
  it('is dragged to another board, pinned there, and the rest laid out anew; undo is one step', async () => {
    expect(await page.locator('#stock-body').textContent()).toMatch(/1 of 2 boards are cut into/u);
    await carry('Patches front 1', 'Cherry 2', [300, 20]);
    expect(await callout().textContent()).toMatch(/^\w+ Patches front 1: \d+, \d+ on Cherry 2$/u);
    await page.mouse.up();
    expect(await page.locator('#undo-board').getAttribute('title')).toBe('place of a part, the plan');
    const [pin = '', ...more] = await pinsOf();
    expect(more).toEqual([]);
    expect(pin).toMatch(/^\{part: Patches front 1, board: Cherry 2, at: \[\d+, \d+\]\}$/u);
    await laidOut();
    expect(await page.locator('.broken-out tr', { hasText: 'Patches front 1' }).textContent()).toMatch(
      /Cherry 2\s+pinned here/u,
    );
    expect(await page.locator('.pins').textContent()).toContain('One part is pinned by hand');
    expect(await board('Cherry 2').locator('.pin-sign').count()).toBe(1);
    expect(await grip('Patches front 1').getAttribute('aria-label')).toMatch(/, pinned$/u);
    await undo();
    expect(await kept(page)).toBe(FEW);
    expect(await page.locator('.pin-sign').count()).toBe(0);
  });

  it('held over a knot is refused beside the pointer, and lies where it was when it is let go', async () => {
    await fold();
    await carry('Buttons front 1', 'Cherry 1', [400, 100]);
    expect(await page.locator('.callout.stopped').textContent()).toMatch(
      /It lies on a defect that it may not have there: the loose knot at 500 mm, 150 mm\./u,
    );
    expect(await page.locator('.held.stopped').count()).toBe(1);
    await page.mouse.up();
    expect(await callout().count()).toBe(0);
    expect(await kept(page)).toBe(FEW);
    await carry('Buttons front 1', 'Cherry 2', [100, 20]);
    await page.keyboard.press('Escape');
    expect(await callout().count()).toBe(0);
    await page.mouse.up();
    expect(await kept(page)).toBe(FEW);
  });

  it('is moved by keys, put back by Escape, taken to another board by B, pinned by Enter and set free by Delete', async () => {
    await grip('Buttons front 2').focus();
    const press = async (...keys: string[]) => {
      for (const key of keys) await page.keyboard.press(key);
    };
    await press('Shift+ArrowRight', 'ArrowUp');
    expect(await callout().count()).toBe(1);
    await press('Escape');
    expect(await callout().count()).toBe(0);
    expect(await kept(page)).toBe(FEW);
    await press('b', ...Array.from({ length: 14 }, () => 'Shift+ArrowDown'), 'Enter');
    expect(await page.locator('.callout.stopped').textContent()).toMatch(
      /on Cherry 2It does not lie inside "Cherry 2" with its ends cut off\./u,
    );
    expect(await kept(page)).toBe(FEW);
    for (let i = 0; i < 14 && (await page.locator('.callout.stopped').count()) > 0; i++)
      await press('Shift+ArrowUp');
    await press('Enter');
    expect(await pinsOf()).toEqual([
      expect.stringMatching(/^\{part: Buttons front 2, board: Cherry 2, at: /u),
    ]);
    await laidOut();
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(
      /Buttons front 2, .*, pinned$/u,
    );
    await press('Delete');
    expect(await kept(page)).toBe(FEW);
    await laidOut();
  });

  it('is chosen in the list of parts, placed by numbers, turned, pinned to a board, and all are set free at once', async () => {
    await page.locator('.part-name', { hasText: 'Buttons front 1' }).click();
    const field = page.getByRole('textbox', { name: /Buttons front 1, from left end$/u });
    await field.fill('300');
    await field.press('Enter');
    await page.getByRole('button', { name: 'Turn it round' }).click();
    expect(await pinsOf()).toEqual([
      expect.stringMatching(/^\{part: Buttons front 1, board: Cherry 1, at: \[300, \d+\], turned: true\}$/u),
    ]);
    await laidOut();
    await page
      .getByRole('combobox', { name: /Buttons front 1, board$/u })
      .selectOption({ label: 'Cherry 2' });
    expect(await pinsOf()).toEqual(['{part: Buttons front 1, board: Cherry 2}']);
    await laidOut();
    await page.getByRole('button', { name: 'Set all free' }).click();
    expect(await kept(page)).toBe(FEW);
    await laidOut();
  });

  it('moves under a finger that has tapped it', async () => {
    await fold();
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    const [[tapX, tapY]] = await way('Buttons front 1', 'Cherry 1', [655, 105]);
    await page.touchscreen.tap(tapX, tapY);
    await page.waitForFunction(() => document.activeElement?.classList.contains('part-grip'));
    const [from, to] = await way('Buttons front 1', 'Cherry 1', [655, 105]);
    const points = [
      ['touchStart', ...from],
      ['touchMove', to[0] - 20, to[1] - 5],
      ['touchMove', ...to],
    ] as const;
    for (const [type, x, y] of points) {
      await touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y }] });
      await page.waitForTimeout(30);
    }
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await expect
      .poll(pinsOf)
      .toEqual([expect.stringMatching(/^\{part: Buttons front 1, board: Cherry 1, at: \[65\d/u)]);
    await laidOut();
  });
});

describe('with a part pinned and chosen', () => {
  it('there is room for everything, at any width', async () => {
    const found: string[] = [];
    for (const width of [320, 390, 820, 1440]) {
      await page.setViewportSize({ width, height: 900 });
      await page.evaluate(async () => {
        scrollTo(0, 0);
        await new Promise((resolve) => setTimeout(resolve, 150));
      });
      found.push(...(await roomFaults(page)).map((fault) => `${width} px: ${fault}`));
    }
    expect(found).toEqual([]);
  });

  it('there is nothing for axe-core to find, in any colours', async () => {
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
