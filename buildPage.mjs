// Makes the page: one HTML file that holds its script, its style and all else, and asks no network for anything.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const read = (path) => readFileSync(here(path), 'utf8');

const bundle = async (entry, options = {}) => {
  const { outputFiles } = await build({
    entryPoints: [here(entry)],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    legalComments: 'none',
    logLevel: 'warning',
    ...options,
  });
  return outputFiles[0].text;
};

/** The page as text. */
export const buildPage = async () => {
  const script = await bundle('src/page/app.ts', {
    define: { HALFPIN_EXAMPLE: JSON.stringify(read('examples/haberdashery-chest.yaml')) },
  });
  const style = await bundle('src/page/page.css', { loader: { '.css': 'css' } });
  const parts = {
    '<!--head-->': `<style>${style}</style>`,
    '<!--script-->': `<script>${script.replaceAll('</script', '<\\/script')}</script>`,
  };
  return Object.entries(parts).reduce(
    (html, [mark, part]) => html.replace(mark, () => part),
    read('src/page/page.html'),
  );
};
