// Makes the page: one HTML file that holds its script, its style and all else, and asks no network for anything.
import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { BUNDLING, bundle, fromRoot, hash } from './bundling.mjs';
import { font } from './fonts.mjs';
import { thirdParty } from './licences.mjs';
import { scriptInParts } from './scriptInParts.mjs';

/** Of Node, svgdom imports the paths of files. */
const NO_PATHS = Object.fromEntries(
  ['path', 'node:path', 'node:url'].map((name) => [name, fromRoot('src/build/unused.mjs')]),
);

const read = (path) => readFileSync(fromRoot(path), 'utf8');

/** Inert data for the script. */
const packed = (id, data) =>
  `<script type="text/plain" id="${id}">${deflateRawSync(data, { level: 9 }).toString('base64')}</script>`;

/** The page as text, its security policy, and the files that are bundled in it. */
export const buildPage = async () => {
  const script = await scriptInParts('src/page/main.ts', {
    define: { HALFPIN_EXAMPLE: JSON.stringify(read('examples/haberdashery-chest.yaml')) },
  });
  const [worker, css] = await Promise.all([
    bundle('src/page/sheets/sheetWorker.ts', {
      alias: { ...BUNDLING.alias, ...NO_PATHS },
      // A worker made of a blob has no URL; pdfkit derives a name from it.
      define: { 'import.meta.url': '"https://example.org/"' },
    }),
    bundle('src/page/page.css', { loader: { '.css': 'css', '.woff2': 'dataurl' } }),
  ]);
  const inputs = [script, worker, css].flatMap((each) => each.inputs);
  const policy = [
    "default-src 'none'",
    `script-src ${[script.start, ...script.parts.values()].map(hash).join(' ')}`,
    'worker-src blob:',
    "style-src 'unsafe-inline'",
    'font-src data:',
    'img-src data: blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const sheets = [
    ...[...script.parts].map(([id, part]) => packed(id, part)),
    packed('worker', worker.code),
    packed('font-regular', font('DejaVuSansCondensed')),
    packed('font-bold', font('DejaVuSansCondensed-Bold')),
    packed('packed-licences', `${read('LICENSE')}\n${thirdParty(inputs)}`),
  ].join('\n');
  const parts = {
    '<!--head-->': `<meta http-equiv="Content-Security-Policy" content="${policy}"><style>${css.code}</style>`,
    '<!--version-->': JSON.parse(read('package.json')).version,
    '<!--script-->': `<script>${script.start}</script>`,
    '<!--sheets-->': sheets,
  };
  const html = Object.entries(parts).reduce(
    (html, [mark, part]) => html.replace(mark, () => part),
    read('src/page/page.html'),
  );
  return { html, policy, inputs };
};
