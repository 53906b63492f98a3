import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

/** The path of a file, from its name relative to the project's top folder. */
export const fromRoot = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

const { version } = JSON.parse(readFileSync(fromRoot('package.json'), 'utf8'));

/** Libraries that others import and we never need. */
const UNUSED = ['@noble/ciphers/aes', 'brotli/decompress.js', 'image-size', 'linebreak', 'png-js'];

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
    // The builds for browsers: they depend on no part of Node.
    fflate: fromRoot('node_modules/fflate/esm/browser.js'),
    pdfkit: fromRoot('node_modules/pdfkit/js/pdfkit.browser.mjs'),
    'unicode-properties': fromRoot('src/build/unicodeProperties.mjs'),
    'unicode-trie': fromRoot('src/build/lazyTrie.mjs'),
    ...Object.fromEntries(UNUSED.map((name) => [name, fromRoot('src/build/unused.mjs')])),
  },
  // Bundled CommonJS modules import Node's own modules this way.
  banner: { js: 'const require=process.getBuiltinModule;' },
  logLevel: 'warning',
};

/** How esbuild bundles what runs in a browser. */
export const BROWSER = {
  bundle: true,
  write: false,
  metafile: true,
  minify: true,
  platform: 'browser',
  target: 'es2022',
  legalComments: 'none',
  logLevel: 'warning',
};

/** A script as it may stand in HTML. */
export const insideHtml = (code) => code.replaceAll('</script', '<\\/script');

/** A script or a style for browsers as text, and the files that are bundled in it. */
export const bundle = async (entry, options = {}) => {
  const { outputFiles, metafile } = await build({
    ...BROWSER,
    entryPoints: [fromRoot(entry)],
    format: 'iife',
    ...options,
  });
  return { code: insideHtml(outputFiles[0].text), inputs: Object.keys(metafile.inputs) };
};

/** A script as a security policy names it. */
export const hash = (script) => `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
