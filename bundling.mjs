import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8'));

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
    pdfkit: fileURLToPath(new URL('node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)),
  },
  // Bundled CommonJS modules ask for Node's own modules this way.
  banner: {
    js: "import{createRequire as halfpinRequire}from'node:module';const require=halfpinRequire(import.meta.url);",
  },
  logLevel: 'warning',
};
