import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const unused = fileURLToPath(new URL('unused.mjs', import.meta.url));

/**
 * Makes esbuild put all that the program starts with into one file, as Node needs half a millisecond to find and read
 * each. It does so for modules that every part imports; so each part that is loaded on demand is made to import the
 * whole program, which runs by then.
 * @param program the module that the program starts with; it must not wait for what it loads on demand
 */
export const startInOneFile = (program) => ({
  name: 'start in one file',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) =>
      kind === 'dynamic-import' ? { path: resolve(resolveDir, path), namespace: 'on-demand' } : undefined,
    );
    // Commander starts other programs for commands that are programs of their own; we have none.
    onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      importer.includes('/commander/') ? { path: unused } : undefined,
    );
    onLoad({ filter: /./, namespace: 'on-demand' }, ({ path }) => ({
      contents: `import ${JSON.stringify(resolve(program))};\nexport * from ${JSON.stringify(path)};\n`,
      resolveDir: '.',
    }));
  },
});
