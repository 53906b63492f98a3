// The page under a finger, as Chromium sees touches: what takes hold, and what scrolls.
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
});
afterAll(() => there.close());

const scrolled = (): Promise<number> => page.evaluate(() => scrollY);

/** Where an element is seen. */
const boxOf = async (of: Locator) => {
  const box = await of.boundingBox();
  if (box === null) throw new Error('not seen');
  return box;
};
const grip = (name: string): Locator => page.getByRole('slider', { name, exact: true }).locator('.touch');
const middleOf = async (of: Locator): Promise<Point> => {
  const { x, y, width, height } = await boxOf(of);
  return [x + width / 2, y + height / 2];
};
type Point = readonly [x: number, y: number];

/** Draws a finger up over the page, slowly as a hand does, and rests before it lifts: nothing carries the page on. */
const swipe = async ([x, y]: Point, by: number): Promise<void> => {
  const touch = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) =>
    touch.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y]) => ({ x, y })) });
  await send('touchStart', [[x, y]]);
  for (const part of [0.2, 0.6, 1, 1, 1]) {
    await send('touchMove', [[x, y - by * part]]);
    await page.waitForTimeout(part < 1 ? 30 : 80);
  }
  await send('touchEnd', []);
  await touch.detach();
};
/** Waits until the drawing stays where it is: all of the page is laid out, and no swipe carries it on. */
const atRest = async (): Promise<void> => {
  await page.waitForFunction(async () => {
    const top = () => document.querySelector('#corner svg')?.getBoundingClientRect().top;
    const before = top();
    await new Promise((resolve) => setTimeout(resolve, 100));
    return top() === before;
  });
};
const centre = async (): Promise<void> => {
  await atRest();
  await page.locator('#corner').evaluate((node) => node.scrollIntoView({ block: 'center' }));
  await atRest();
};
/** Swipes up from a place, and sees the page scroll and the plan stay as it is. */
const expectScroll = async (from: Point): Promise<void> => {
  const before = await scrolled();
  await swipe(from, 100);
  await page.waitForFunction((before) => scrollY > before + 40, before);
  expect(await page.locator('#undo').isEnabled()).toBe(false);
};

describe('a finger on the drawing', () => {
  it('scrolls the page wherever it begins, also over a line and on a grip', async () => {
    await centre();
    const trace = await boxOf(page.getByRole('slider', { name: 'tail 2, lower edge' }).locator('.trace'));
    await expectScroll([trace.x + 8, trace.y + trace.height / 2]);
    for (const name of ['tail 2, lower edge', 'tail 1, upper edge', 'lap']) {
      await centre();
      await expectScroll(await middleOf(grip(name)));
    }
    // All down the middle, where the grips are.
    for (const part of [0.45, 0.55, 0.65]) {
      await centre();
      const { x, y, width, height } = await boxOf(page.locator('svg.corner'));
      await expectScroll([x + 0.6 * width, y + part * height]);
    }
  });

  it('takes hold of the grip that it has tapped, and of that alone', async () => {
    await centre();
    const [x, y] = await middleOf(grip('tail 2, lower edge'));
    await page.touchscreen.tap(x, y);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('tail 2, lower edge');
    const free = async (): Promise<number> => {
      const holding = await page.locator('.touch').evaluateAll((nodes) =>
        nodes
          .filter((node) => getComputedStyle(node).touchAction === 'none')
          .map((node) => node.getBoundingClientRect())
          .reduce((sum, { width, height }) => sum + width * height, 0),
      );
      const { width, height } = await boxOf(page.locator('svg.corner'));
      return 1 - holding / (width * height);
    };
    expect(await free()).toBeGreaterThan(0.95);
    await expectScroll(await middleOf(grip('tail 1, upper edge')));
    await centre();
    const before = await scrolled();
    await swipe(await middleOf(grip('tail 2, lower edge')), 20);
    await expect.poll(() => page.locator('#undo').isEnabled()).toBe(true);
    expect(await scrolled()).toBe(before);
    await page.locator('#undo').tap();
    await expect.poll(free).toBe(1);
  });

  it('finds grips of 44 px, or as large as their neighbours allow and 24 at least, none over another', async () => {
    // Five of them are of the rails of the cabinet, whose script is unpacked on demand.
    await page.locator('[data-rail]').first().waitFor();
    const boxes = await page.locator('.touch').evaluateAll((nodes) =>
      nodes.map((node) => {
        const { left, right, top, bottom } = node.getBoundingClientRect();
        return { left, right, top, bottom };
      }),
    );
    expect(boxes).toHaveLength(15);
    for (const [i, a] of boxes.entries()) {
      expect(a.right - a.left).toBeGreaterThan(43.5);
      expect(a.bottom - a.top).toBeGreaterThan(24);
      for (const b of boxes.slice(i + 1))
        expect(
          a.left < b.right - 0.2 &&
            b.left < a.right - 0.2 &&
            a.top < b.bottom - 0.2 &&
            b.top < a.bottom - 0.2,
        ).toBe(false);
    }
  });
});

describe('a mouse', () => {
  it('beside a touchscreen takes the line that it is on, also where the grip of another is near', async () => {
    await page.locator('#corner').evaluate((node) => node.scrollIntoView({ block: 'center' }));
    await atRest();
    const at = (name: string) => page.getByRole('slider', { name }).locator('.grip').boundingBox();
    const [lower, upper] = [await at('tail 2, lower edge'), await at('tail 1, upper edge')];
    // Under the grip of the line above, at the height of the line below it.
    await page.mouse.move((lower?.x ?? 0) - 40, upper?.y ?? 0);
    await page.mouse.move((lower?.x ?? 0) + 4, (upper?.y ?? 0) + 6, { steps: 2 });
    await page.mouse.down();
    expect(await page.locator('.callout').textContent()).toMatch(/^tail 1 upper edge/u);
    await page.mouse.up();
  });

  it('takes hold of the line itself, and edits nothing within 3 px', async () => {
    const desk = await there.open();
    const slider = desk.getByRole('slider', { name: 'tail 2, lower edge' });
    const trace = await slider.locator('.trace').boundingBox();
    if (trace === null) throw new Error('no line');
    const [x, y] = [trace.x + 12, trace.y + trace.height / 2];
    await desk.mouse.move(x, y);
    await desk.mouse.down();
    const callout = desk.locator('.callout');
    expect(await callout.textContent()).toBe(
      'tail 2 lower edge 28.67 mm, front corners of these two drawers',
    );
    await desk.mouse.move(x, y - 2);
    await desk.mouse.up();
    expect(await desk.locator('#undo').isEnabled()).toBe(false);
    await desk.mouse.down();
    await desk.mouse.move(x, y - 12, { steps: 3 });
    await expect
      .poll(() => callout.textContent())
      .toMatch(/^tail 2 lower edge [\d.]+ mm \(\+[\d.]+\), front corners/u);
    await desk.mouse.up();
    expect(await desk.locator('#undo').isEnabled()).toBe(true);
    expect(await callout.count()).toBe(0);
    await desk.context().close();
  });

  it('sees at the back whom it changes, may choose this drawer alone, and stays there in another drawer', async () => {
    const desk = await there.open();
    await desk.getByRole('button', { name: 'Back', exact: true }).click();
    const box = await desk
      .getByRole('slider', { name: /^baseline of the tails/u })
      .locator('.grip')
      .boundingBox();
    const hold = async (): Promise<string | null> => {
      await desk.mouse.move((box?.x ?? 0) + 4, (box?.y ?? 0) + 3);
      await desk.mouse.down();
      const words = await desk.locator('.callout').textContent();
      await desk.mouse.up();
      return words;
    };
    expect(await hold()).toBe('thickness of the back 11 mm, all nine drawers');
    await desk.getByRole('button', { name: 'these two drawers' }).click();
    expect(await hold()).toBe('thickness of the back 11 mm, these two drawers');
    const back = desk.getByRole('button', { name: 'Back', exact: true, pressed: true });
    await desk.getByLabel('Which drawer', { exact: true }).selectOption({ index: 3 });
    expect(await back.count()).toBe(1);
    await desk.locator('.cabinet .front').first().click();
    expect(await back.count()).toBe(1);
    await desk.locator('.member').nth(2).click();
    expect(await back.count()).toBe(1);
    await desk.context().close();
  });
});
