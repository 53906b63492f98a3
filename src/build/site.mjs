// Makes what a site has beside the page, so that a phone can install it and open it without a network.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { bundle, fromRoot, hash } from './bundling.mjs';

/** Of the page's paper, which is the icon's ground too. */
const PAPER = '#faf7f0';

/** Sizes in px that phones ask for: on the home screen, and while the page opens. */
const ICONS = [192, 512];

/** Length, type, data and checksum, as PNG has them. */
const pngChunk = (type, data) => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

/** Signature and header of a PNG: what the mark of its maker follows. */
const PNG_HEAD = 33;

const icon = (width) => {
  const svg = readFileSync(fromRoot('src/page/site/icon.svg'), 'utf8');
  const png = new Resvg(svg, { fitTo: { mode: 'width', value: width } }).render().asPng();
  const mark = pngChunk('tEXt', Buffer.from('Software\0Halfpin', 'latin1'));
  return Buffer.concat([png.subarray(0, PNG_HEAD), mark, png.subarray(PNG_HEAD)]);
};

const iconName = (width) => `icon-${width}.png`;

const manifest = JSON.stringify({
  name: 'Halfpin',
  short_name: 'Halfpin',
  description: 'Sets out dovetailed drawers, and prints full-size templates for them.',
  lang: 'en',
  id: './',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: PAPER,
  theme_color: PAPER,
  icons: ICONS.map((width) => ({
    src: iconName(width),
    sizes: `${width}x${width}`,
    type: 'image/png',
    purpose: 'any maskable',
  })),
});

/** Where there is none, as over plain http from another machine, the page works all the same. */
const REGISTER = "navigator.serviceWorker?.register('worker.js').catch(() => {});";

/**
 * The files of a site by name, the page itself apart; and what stands in the place of the page's own policy, which
 * allows these files in addition.
 * @param page the page as one file
 * @param policy its security policy
 */
export const buildSite = async (page, policy) => {
  const allowed = {
    'script-src': hash(REGISTER),
    'worker-src': "'self'",
    'img-src': "'self'",
  };
  const wider = Object.entries(allowed).reduce(
    (text, [key, source]) => text.replace(`${key} `, () => `${key} ${source} `),
    `${policy}; manifest-src 'self'`,
  );
  const head = [
    `<meta http-equiv="Content-Security-Policy" content="${wider}">`,
    '<link rel="manifest" href="manifest.webmanifest">',
    ...['icon', 'apple-touch-icon'].map((rel) => `<link rel="${rel}" href="${iconName(ICONS[0])}">`),
    `<meta name="theme-color" content="${PAPER}">`,
    `<script>${REGISTER}</script>`,
  ].join('\n');
  const files = new Map([
    ['manifest.webmanifest', manifest],
    ...ICONS.map((width) => [iconName(width), icon(width)]),
  ]);
  const version = createHash('sha256').update(page).update(head);
  for (const file of files.values()) version.update(file);
  const { code } = await bundle('src/page/site/siteWorker.ts', {
    banner: { js: '// Halfpin' },
    define: {
      SITE_FILES: JSON.stringify(['./', ...files.keys()]),
      SITE_VERSION: JSON.stringify(version.digest('hex').slice(0, 16)),
    },
  });
  files.set('worker.js', code);
  return { files, head };
};
