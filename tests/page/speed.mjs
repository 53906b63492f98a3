// How long the page takes from a move of the pointer until it is painted, in Chromium, for chests of 12 and of 60 drawers, at
// full speed and at a fourth of it: by the clock, and by the work of the processor for the page, which other programs do not
// disturb. The browser hands moves over just before it makes its next picture, up to 1/60 s later; that wait, which an empty
// page has too, is told apart. Then the longest freeze while a PDF is made, and what a thousand edits leave in memory.
// Run by itself: node tests/page/speed.mjs
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { launchChromium } from './launchChromium.mjs';
import { watchTasks } from './longTasks.mjs';

/** As the build has made it. */
const PAGE = new URL('../../dist/halfpin.html', import.meta.url);

/** How many times slower a slow machine is. */
const SLOWED = 4;

/** How often each gesture moves the pointer. */
const MOVES = 150;
/** As many are enough where each takes longer. */
const SLOW_MOVES = 60;

/** The example has six. */
const chestOf = (drawers) => {
  const example = readFileSync(new URL('../../examples/haberdashery-chest.yaml', import.meta.url), 'utf8');
  const more = Array.from(
    { length: drawers - 6 },
    (_, i) => `  - {name: Spare ${i + 1}, opening: {width: 574, height: ${90 + 17 * (i % 6)}, depth: 420}}\n`,
  );
  return example + more.join('');
};

/** What is dragged, and how far in px each way from where it is. */
const GESTURES = {
  'a tail edge': ['tail 2, lower edge', 0, 12],
  'a tail edge, beyond its stop': ['tail 2, lower edge', 0, 60],
  'the lap of all drawers': ['lap', 9, 0],
  'the groove of all drawers': ['groove, from the reference edge', 0, 10],
};

const percentile = (sorted, share) =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;

/** What the page's main thread has worked since it began, in ms. */
const workOf = async (page) => {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration').value * 1000;
  };
};

/** A mouse without the driver's own, which has the page run a script at every move of a drag. */
const mouseOf = async (page) => {
  const session = await page.context().newCDPSession(page);
  const send = (type, more) => (x, y) =>
    session.send('Input.dispatchMouseEvent', { type, x, y, button: 'left', clickCount: 1, ...more });
  return {
    press: send('mousePressed', { buttons: 1 }),
    move: send('mouseMoved', { buttons: 1 }),
    release: send('mouseReleased', { buttons: 0 }),
  };
};

const measureGesture = async (page, worked, moves, [name, dx, dy]) => {
  const mouse = await mouseOf(page);
  const handle = page.getByRole('slider', { name, exact: true });
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.locator('.grip').boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.evaluate(() => {
    globalThis.taken = [];
    globalThis.listener = ({ timeStamp }) => {
      const given = performance.now();
      requestAnimationFrame(() => {
        // A message waits until the picture has been painted.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () =>
          globalThis.taken.push({ wait: given - timeStamp, took: performance.now() - given });
        port2.postMessage(null);
      });
    };
    addEventListener('pointermove', globalThis.listener);
  });
  await page.mouse.move(x, y);
  await mouse.press(x, y);
  const works = [];
  let before = await worked();
  for (let i = 0; i < moves; i++) {
    const way = Math.sin((i / moves) * 6 * Math.PI);
    await mouse.move(x + dx * way, y + dy * way);
    const after = await worked();
    works.push(after - before);
    before = after;
  }
  await page.waitForTimeout(100);
  const taken = await page.evaluate(() => {
    removeEventListener('pointermove', globalThis.listener);
    return globalThis.taken;
  });
  await mouse.release(x, y);
  await page.keyboard.press('Control+z');
  // The first moves find the script cold, as they do for a visitor; they count.
  const ascending = (figures) => figures.sort((a, b) => a - b);
  const sorted = ascending(taken.map(({ took }) => took));
  const waits = ascending(taken.map(({ wait }) => wait));
  return {
    moves: sorted.length,
    p50: percentile(sorted, 0.5),
    p95: percentile(sorted, 0.95),
    worst: sorted.at(-1),
    worked: percentile(ascending(works), 0.95),
    wait: percentile(waits, 0.5),
  };
};

const openChest = async (browser, drawers) => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(PAGE.href);
  await page.locator('#file').setInputFiles({
    name: 'chest.yaml',
    mimeType: 'text/yaml',
    buffer: Buffer.from(chestOf(drawers)),
  });
  await page.waitForFunction((count) => document.querySelectorAll('.member').length === count, drawers);
  return page;
};

/** Milliseconds from input to painted for each gesture. @param slowed how many times slower than it is the processor is made */
const measureGestures = async (page, slowed) => {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const worked = await workOf(page);
  const moves = slowed > 1 ? SLOW_MOVES : MOVES;
  const gestures = {};
  for (const [name, gesture] of Object.entries(GESTURES))
    gestures[name] = await measureGesture(page, worked, moves, gesture);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return gestures;
};

/** The longest freeze in ms while templates are made as PDF; 0 where the browser reports none of 50 ms or more. */
const measureFreeze = async (page) => {
  const longest = await watchTasks(page);
  await page.click('#save-sheets');
  await Promise.all([page.waitForEvent('download'), page.click('#take-templates')]);
  const found = await longest();
  await page.keyboard.press('Escape');
  return found;
};

/** Edits of the number of tails, and the heap in MB after them. */
const heapAfter = async (page, edits) => {
  await page.evaluate(async (count) => {
    const { promise, resolve } = Promise.withResolvers();
    let done = 0;
    const edit = () => {
      document.querySelector(`[aria-label="One tail ${done % 2 === 0 ? 'more' : 'fewer'}"]`).click();
      done++;
      if (done < count) setTimeout(edit);
      else resolve();
    };
    edit();
    await promise;
  }, edits);
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return usedSize / 1e6;
};

/** Milliseconds to the first paint, and the size of the page in kB gzipped. */
const measureStart = async (browser) => {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(PAGE.href);
  const firstPaint = await page.evaluate(
    () =>
      new Promise((resolve) => {
        new PerformanceObserver((list) => {
          for (const { name, startTime } of list.getEntries())
            if (name === 'first-contentful-paint') resolve(startTime);
        }).observe({ type: 'paint', buffered: true });
      }),
  );
  await page.close();
  const first = readFileSync(PAGE, 'utf8').replace(
    /<script type="text\/plain" id="(?:worker|font-\w+|part-[\w-]+)">.*?<\/script>/gsu,
    '',
  );
  return { firstPaint, kilobytes: gzipSync(first).length / 1000 };
};

/** All of it, for one number of drawers. */
export const measurePage = async (drawers) => {
  const browser = await launchChromium();
  try {
    const start = await measureStart(browser);
    const page = await openChest(browser, drawers);
    const gestures = await measureGestures(page, 1);
    const slowed = await measureGestures(page, SLOWED);
    const freeze = await measureFreeze(page);
    return { ...start, gestures, slowed, freeze };
  } finally {
    await browser.close();
  }
};

/** Code that the browser compiles while it runs lies on the heap too, up to 1 MB, and is nothing that the page keeps. */
const UNCOMPILED = '--js-flags=--no-sparkplug --no-maglev --no-turbofan';

/** The heap after a thousand edits, to that after a hundred. */
export const measureHeap = async (drawers) => {
  const browser = await launchChromium(UNCOMPILED);
  try {
    const page = await openChest(browser, drawers);
    const hundred = await heapAfter(page, 100);
    const thousand = await heapAfter(page, 900);
    return { hundred, thousand };
  } finally {
    await browser.close();
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const tell = (pace, gestures) => {
    for (const [name, { moves, p50, p95, worst, worked, wait }] of Object.entries(gestures))
      console.log(
        `${pace}, ${name}: ${moves} moves, half under ${p50.toFixed(1)} ms, 95 % under ${p95.toFixed(1)} ms, worst ${worst.toFixed(1)} ms; 95 % take the processor under ${worked.toFixed(1)} ms; the browser waits ${wait.toFixed(1)} ms before it hands a move over`,
      );
  };
  for (const drawers of [12, 60]) {
    const { firstPaint, kilobytes, gestures, slowed, freeze } = await measurePage(drawers);
    console.log(
      `${drawers} drawers: first paint ${firstPaint.toFixed(0)} ms; before sheets ${kilobytes.toFixed(0)} kB gzipped; longest freeze while a PDF is made ${freeze === 0 ? 'under 50' : freeze.toFixed(0)} ms`,
    );
    tell('full speed', gestures);
    tell('a fourth', slowed);
    const { hundred, thousand } = await measureHeap(drawers);
    console.log(`heap ${hundred.toFixed(1)} MB after 100 edits, ${thousand.toFixed(1)} MB after 1,000`);
  }
}
