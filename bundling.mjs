import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));

const fileBeside = (path) => fileURLToPath(new URL(path, import.meta.url));

/** Libraries that others ask for, whose work we never ask of them. */
const UNUSED = [
  '@noble/ciphers/aes',
  'brotli/decompress.js',
  'dfa',
  'image-size',
  'linebreak',
  'png-js',
  'unicode-properties',
  'unicode-trie',
];

/** How esbuild bundles what runs in Node: the program, the library, and what the bench runs in process. */
export const BUNDLING = {
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  minify: true,
  legalComments: 'linked',
  chunkNames: 'part-[hash]',
  define: { HALFPIN_VERSION: JSON.stringify(version) },
  alias: {
    // The build for browsers: its output depends on no part of Node.
    pdfkit: fileBeside('node_modules/pdfkit/js/pdfkit.browser.mjs'),
    ...Object.fromEntries(UNUSED.map((name) => [name, fileBeside('unused.mjs')])),
  },
  // Bundled CommonJS modules ask for Node's own modules this way.
  banner: { js: 'const require=process.getBuiltinModule;' },
  logLevel: 'warning',
};
