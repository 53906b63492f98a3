// Makes dist/: the program and the library, each one bundled file with what is heavy in parts loaded on demand.
import { cpSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const { version } = JSON.parse(readFileSync('package.json', 'utf8'));

rmSync('dist', { recursive: true, force: true });
await build({
  entryPoints: { halfpin: 'src/cli/halfpin.ts', index: 'src/index.ts' },
  outdir: 'dist',
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
    pdfkit: fileURLToPath(new URL('./node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)),
  },
  // Bundled CommonJS modules ask for Node's own modules this way.
  banner: {
    js: "import{createRequire as halfpinRequire}from'node:module';const require=halfpinRequire(import.meta.url);",
  },
  logLevel: 'warning',
});
mkdirSync('dist/fonts', { recursive: true });
for (const font of ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf'])
  cpSync(`node_modules/dejavu-fonts-ttf/ttf/${font}`, `dist/fonts/${font}`);
cpSync('node_modules/dejavu-fonts-ttf/LICENSE', 'dist/fonts/LICENSE');
