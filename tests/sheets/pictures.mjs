// Makes the README's pictures of sheets, examples/*.png, each of a few pages side by side. Needs poppler, as the tests do.
// Run after the build: node tests/sheets/pictures.mjs
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launchChromium } from '../page/launchChromium.mjs';

/** Each picture's plan, the command that makes its sheets, the name in the sheets' files where that is another, and the pages that it shows. */
const PICTURES = [
  {
    plan: 'haberdashery-chest',
    command: 'draw',
    pages: [
      ['templates', 2],
      ['bench', 1],
      ['comparison', 1],
    ],
  },
  {
    plan: 'haberdashery-chest-fingers',
    command: 'draw',
    pages: [
      ['guides', 1],
      ['guides', 2],
    ],
  },
  {
    plan: 'haberdashery-chest-boards',
    command: 'breakout',
    pages: [
      ['board-sheets', 1],
      ['board-sheets', 2],
      ['board-sheets', 5],
    ],
  },
  {
    plan: 'button-boxes',
    command: 'draw',
    pages: [
      ['templates', 3],
      ['bench', 1],
      ['bench', 2],
    ],
  },
  {
    plan: 'corners',
    command: 'draw',
    options: ['--sheets', 'corners'],
    named: 'every-kind',
    pages: [
      ['corners', 1],
      ['corners', 2],
    ],
  },
];
const HEIGHT = 752;

const browser = await launchChromium();
const out = mkdtempSync(join(tmpdir(), 'halfpin-pictures-'));
for (const { plan, command, options = [], named = plan, pages } of PICTURES) {
  const args = ['dist/halfpin.js', command, `examples/${plan}.yaml`, ...options, '--out', out];
  execFileSync(process.execPath, args, { stdio: 'ignore' });
  const images = pages.map(([kind, number]) => {
    const page = ['-f', number, '-l', number, '-singlefile'].map(String);
    const size = ['-scale-to-x', -1, '-scale-to-y', HEIGHT].map(String);
    execFileSync('pdftoppm', [
      ...page,
      ...size,
      '-png',
      join(out, `${named}-${kind}.pdf`),
      join(out, 'page'),
    ]);
    return `<img src="data:image/png;base64,${readFileSync(join(out, 'page.png'), 'base64')}" alt="">`;
  });
  const sheet = await browser.newPage({ viewport: { width: 1800, height: 800 } });
  await sheet.setContent(`<style>
    body { margin: 0; padding: 14px; width: max-content; display: flex; gap: 14px; background: #e9e7df }
    img { box-shadow: 0 1px 4px #0004 }
  </style>${images.join('')}`);
  writeFileSync(`examples/${plan}.png`, await sheet.locator('body').screenshot());
  await sheet.close();
}
rmSync(out, { recursive: true });
await browser.close();
