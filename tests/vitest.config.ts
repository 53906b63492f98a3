import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: {
    alias: {
      // The build for browsers, as in src/build/bundling.mjs: its output depends on no part of Node.
      pdfkit: fileURLToPath(new URL('../node_modules/pdfkit/js/pdfkit.browser.mjs', import.meta.url)),
    },
  },
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/built.ts', 'tests/scratch.ts'],
    setupFiles: ['tests/failFast.ts'],
    // What starts programs and browsers takes long on a machine that is busy with other things.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 60_000 } },
    // No test leaves anything behind in a module, so modules are loaded once a worker, not once a file.
    isolate: false,
    pool: 'forks',
    // Much of the time goes by waiting for programs, so no core is kept free.
    maxWorkers: '100%',
  },
});
