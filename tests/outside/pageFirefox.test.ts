// The page in Debian's Firefox, opened from a file, with the network cut: what it needs of a browser is not one browser's own.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, onTestFinished, vi } from 'vitest';
import { parse } from 'yaml';
import { said } from '../cli/program.ts';
import { type Firefox, startFirefox } from '../page/firefox.ts';

let firefox: Firefox;
beforeAll(async () => {
  firefox = await startFirefox();
  await firefox.say('WebDriver:SetWindowRect', { width: 1440, height: 1000 });
  await firefox.say('WebDriver:Navigate', { url: pathToFileURL('dist/halfpin.html').href });
});
afterAll(() => firefox.close());

const HANDLE = `document.querySelector('[role=slider][aria-label="tail 2, lower edge"]')`;
const told = (): Promise<number> => firefox.read(`parseFloat(${HANDLE}.getAttribute('aria-valuetext'))`);

/** What is kept of the plan, when the page is left. */
const kept = (): Promise<string> =>
  firefox.read(
    `(dispatchEvent(new Event('pagehide')), JSON.parse(localStorage.getItem('halfpin') ?? '{"text":""}').text)`,
  );

/** A press at the handle's grip, the moves from there in px, and the release. */
const drag = async (...moves: readonly (readonly [number, number])[]): Promise<void> => {
  const [x, y] = await firefox.read<[number, number]>(
    `(() => { const b = ${HANDLE}.querySelector('.grip').getBoundingClientRect(); return [b.x + b.width / 2, b.y + b.height / 2]; })()`,
  );
  const to = ([dx, dy]: readonly [number, number]) => ({
    type: 'pointerMove',
    duration: 20,
    x: Math.round(x + dx),
    y: Math.round(y + dy),
  });
  await firefox.say('WebDriver:PerformActions', {
    actions: [
      {
        type: 'pointer',
        id: 'mouse',
        parameters: { pointerType: 'mouse' },
        actions: [
          to([0, 0]),
          { type: 'pointerDown', button: 0 },
          ...moves.map(to),
          { type: 'pointerUp', button: 0 },
        ],
      },
    ],
  });
};

const press = async (...keys: readonly string[]): Promise<void> => {
  await firefox.say('WebDriver:PerformActions', {
    actions: [
      {
        type: 'key',
        id: 'keys',
        actions: [
          ...keys.map((value) => ({ type: 'keyDown', value })),
          ...[...keys].reverse().map((value) => ({ type: 'keyUp', value })),
        ],
      },
    ],
  });
};
const CONTROL = '\uE009';
const ESCAPE = '\uE00C';
const UP = '\uE013';

describe('the page in Firefox', () => {
  it('fits its window, narrow and wide', async () => {
    for (const width of [500, 820, 1440]) {
      await firefox.say('WebDriver:SetWindowRect', { width, height: 1000 });
      expect(
        await firefox.read('document.documentElement.scrollWidth - document.documentElement.clientWidth'),
      ).toBe(0);
    }
  });

  it('makes the templates of the program, byte for byte', { timeout: 40_000 }, async () => {
    const out = mkdtempSync(join(tmpdir(), 'halfpin-page-'));
    onTestFinished(() => rmSync(out, { recursive: true }));
    said('draw', 'examples/haberdashery-chest.yaml', '--out', out);
    await firefox.read(`document.querySelector('#save-sheets').click()`);
    await firefox.read(`document.querySelector('#take-templates').click()`);
    const name = 'haberdashery-chest-templates.pdf';
    await vi.waitFor(() => expect(readdirSync(firefox.downloads)).toEqual([name]), 30_000);
    expect(readFileSync(join(firefox.downloads, name)).equals(readFileSync(join(out, name)))).toBe(true);
    await press(ESCAPE);
  });

  it('moves a line by hand and by key, takes it back in one step, and keeps it', async () => {
    expect(await told()).toBe(28.67);
    await drag([0, -6], [0, -12]);
    const moved = await told();
    expect(moved).toBeGreaterThan(29);
    expect(parse(await kept()).drawers[0].joint.tails[1]).toBeCloseTo(17.67 - (moved - 28.67), 1);
    await press(CONTROL, 'z');
    expect(await told()).toBe(28.67);
    await firefox.read(`${HANDLE}.focus()`);
    await press(UP);
    expect(await told()).toBeCloseTo(28.77, 6);
    await press(CONTROL, 'z');
    expect(await told()).toBe(28.67);
  });
});
