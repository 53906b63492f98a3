// Makes examples/page.png, the README's picture of the page: wide and narrow, in light and in dark, while a tail is moved.
// Run after the build: node tests/page/pictures.mjs
import { writeFileSync } from 'node:fs';
import { launchChromium } from './launchChromium.mjs';

const PAGE = new URL('../../dist/halfpin.html', import.meta.url).href;
const VIEWS = [
  { width: 1440, height: 1000, colorScheme: 'light' },
  { width: 1024, height: 1000, colorScheme: 'dark' },
  { width: 390, height: 1000, colorScheme: 'light' },
];

const browser = await launchChromium();

/** The page as it looks while the second tail is made narrower. */
const pictureOf = async ({ width, height, colorScheme }) => {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme });
  await page.goto(PAGE);
  // Its script is unpacked on demand.
  await page.locator('[data-rail]').first().waitFor();
  const handle = page.getByRole('slider', { name: 'tail 2, lower edge', exact: true });
  if (width < 800) await page.locator('#tools').evaluate((node) => node.scrollIntoView());
  const box = await handle.locator('.grip').boundingBox();
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 12);
  // The numbers follow a moment after the corner.
  await page.waitForTimeout(500);
  const picture = await page.screenshot();
  await page.close();
  return `<img src="data:image/png;base64,${picture.toString('base64')}" alt="">`;
};

const pictures = [];
for (const view of VIEWS) pictures.push(await pictureOf(view));
const sheet = await browser.newPage({ viewport: { width: 1600, height: 600 } });
await sheet.setContent(`<style>
  body { margin: 0; padding: 20px; width: max-content; display: flex; gap: 20px; background: #8d867a }
  img { height: 540px; display: block }
</style>${pictures.join('')}`);
writeFileSync('examples/page.png', await sheet.locator('body').screenshot());
await browser.close();
