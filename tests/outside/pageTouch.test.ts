// The page under a finger, as Chromium sees touches: what takes hold, and what scrolls.
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { type Visit, visit } from '../page/chromium.ts';

vi.setConfig({ testTimeout: 20_000 });

let there: Visit;
let page: Page;
beforeAll(async () => {
  there = await visit();
  page = await there.open({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
}, 60_000);
afterAll(() => there.close());

const undoable = (): Promise<boolean> => page.locator('#undo').isEnabled();
const scrolled = (): Promise<number> => page.evaluate(() => scrollY);

describe('a finger on the drawing', () => {
  it('scrolls the page wherever no grip is, also over a line', async () => {
    await page.locator('#corner').evaluate((node) => node.scrollIntoView({ block: 'center' }));
    const [trace, before] = await Promise.all([
      page.getByRole('slider', { name: 'tail 2, lower edge' }).locator('.trace').boundingBox(),
      scrolled(),
    ]);
    if (trace === null) throw new Error('no line');
    // On the tail board's face, some px from the baseline: on the line itself.
    const [x, y] = [trace.x + 8, trace.y + trace.height / 2];
    const touch = await page.context().newCDPSession(page);
    for (const [type, at] of [
      ['touchStart', y],
      ['touchMove', y - 20],
      ['touchMove', y - 60],
      ['touchMove', y - 100],
    ] as const) {
      await touch.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x, y: at }] });
      await page.waitForTimeout(30);
    }
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await page.waitForFunction((from) => scrollY > from + 40, before);
    expect(await undoable()).toBe(false);
  });

  it('finds grips of 44 px, or as large as their neighbours allow and 24 at least, none over another', async () => {
    const boxes = await page.locator('.touch').evaluateAll((nodes) =>
      nodes.map((node) => {
        const { left, right, top, bottom } = node.getBoundingClientRect();
        return { left, right, top, bottom };
      }),
    );
    expect(boxes).toHaveLength(10);
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
    const drawing = await page.locator('svg.corner').boundingBox();
    const taken = boxes.reduce(
      (sum, { left, right, top, bottom }) => sum + (right - left) * (bottom - top),
      0,
    );
    expect(taken).toBeLessThan(0.25 * (drawing?.width ?? 0) * (drawing?.height ?? 0));
    const actions = await page
      .locator('#drawing :is(svg, svg *)')
      .evaluateAll((nodes) =>
        nodes.flatMap((node) =>
          getComputedStyle(node).touchAction === 'auto' ? [] : [node.getAttribute('class')],
        ),
      );
    expect(actions).toEqual(Array(10).fill('touch'));
  });
});

describe('a mouse', () => {
  it('beside a touchscreen takes the line that it is on, also where the grip of another is near', async () => {
    await page.locator('#corner').evaluate((node) => node.scrollIntoView({ block: 'center' }));
    // The drawing stays where it is only when all of the page is laid out.
    await page.waitForFunction(async () => {
      const top = () => document.querySelector('#corner svg')?.getBoundingClientRect().top;
      const before = top();
      await new Promise((resolve) => setTimeout(resolve, 150));
      return top() === before;
    });
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
