import { basename } from 'node:path';
import { build } from 'esbuild';
import { BROWSER, fromRoot, insideHtml } from './bundling.mjs';
import { ON_DEMAND, startInOneFile } from './startup.mjs';

const IMPORT = /^import(?:\{([^}]*)\}from)?"[^"]+";/u;
const EXPORT = /export\{([^}]*)\};\s*$/u;

/** The names in an import or an export, where `a as b` is two, as the properties of an object: `{a:b}`, or `{b:a}`. */
const properties = (list, order = (pair) => pair) =>
  list
    .split(',')
    .filter((each) => each !== '')
    .map((each) => each.split(' as '))
    .map(([a, b = a]) => order([a, b]).join(':'))
    .join();

const exported = (list) => properties(list, ([own, name]) => [name, own]);

/** Modules ask for parts by their files, which a page does not have. */
const asking = (code) =>
  code.replace(/\bimport\("\.\/([^"]+)\.js"\)/gu, (_, id) => `pageParts.import("${id}")`);

/** What the script starts with; it keeps what parts import of it. */
const startOf = (code) =>
  `(()=>{"use strict";${asking(code).replace(EXPORT, (_, list) => `pageParts.shared={${exported(list)}};`)}})();`;

const partOf = (id, code) => {
  const [whole = '', given = ''] = IMPORT.exec(code) ?? [];
  const body = asking(code.slice(whole.length)).replace(EXPORT, (_, list) => `return{${exported(list)}};`);
  return `pageParts.add("${id}",shared=>{"use strict";const{${properties(given)}}=shared;${body}});`;
};

/**
 * A script for a page as `src/page/browser/pageParts.ts` needs it: what it starts with, its parts that are loaded on demand,
 * by their ids, and the files that are bundled in them. Parts import what it starts with, and nothing of each other.
 */
export const scriptInParts = async (entry, options = {}) => {
  const { outputFiles, metafile } = await build({
    ...BROWSER,
    absWorkingDir: fromRoot('.'),
    entryPoints: [entry],
    outdir: 'dist',
    format: 'esm',
    splitting: true,
    chunkNames: 'part-[name]-[hash]',
    plugins: [startInOneFile(fromRoot(entry))],
    ...options,
  });
  const code = new Map(outputFiles.map(({ path, text }) => [`dist/${basename(path)}`, text]));
  const entries = Object.entries(metafile.outputs).filter(([, { entryPoint }]) => entryPoint !== undefined);
  const parts = entries.filter(([, { entryPoint }]) => entryPoint.startsWith(ON_DEMAND));
  const files = new Set(entries.flatMap(([, { imports }]) => imports.map(({ path }) => path)));
  const [start, ...others] = files;
  if (others.length > 0)
    throw new Error(`Parts of ${entry} share ${others.join()}, which it does not start with`);
  return {
    start: insideHtml(startOf(code.get(start))),
    parts: new Map(
      parts.map(([path]) => {
        const id = basename(path, '.js');
        return [id, partOf(id, code.get(path))];
      }),
    ),
    inputs: Object.keys(metafile.inputs),
  };
};
