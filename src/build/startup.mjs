import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const unused = fileURLToPath(new URL('unused.mjs', import.meta.url));

/** Where esbuild looks for what is loaded on demand. */
export const ON_DEMAND = 'on-demand';

/**
 * Makes esbuild put all that the program starts with into one file, as Node needs a third of a millisecond to find and
 * read each. It does so for modules that every part imports; so each part that is loaded on demand is made to import the
 * whole program, which runs by then.
 * @param start the module that the program starts with; it must not wait for what it loads on demand
 * @param along the modules that it, and each part, is to import in addition, by their paths
 */
export const startInOneFile = (start, along = new Map()) => ({
  name: 'start in one file',
  setup({ onResolve, onLoad }) {
    const program = resolve(start);
    const importing = (paths = []) => paths.map((path) => `import ${JSON.stringify(path)};\n`).join('');
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) =>
      kind === 'dynamic-import' ? { path: resolve(resolveDir, path), namespace: ON_DEMAND } : undefined,
    );
    // Commander starts other programs for commands that are programs of their own; we have none.
    onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      importer.includes('/commander/') ? { path: unused } : undefined,
    );
    onLoad({ filter: /./, namespace: ON_DEMAND }, ({ path }) => ({
      contents: `${importing([program])}export * from ${JSON.stringify(path)};\n${importing(along.get(path))}`,
      resolveDir: '.',
    }));
    onLoad({ filter: /\.ts$/ }, ({ path }) =>
      path === program
        ? { contents: readFileSync(path, 'utf8') + importing(along.get(path)), loader: 'ts' }
        : undefined,
    );
  },
});
