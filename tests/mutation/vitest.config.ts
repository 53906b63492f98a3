import { defineConfig } from 'vitest/config';

/** The tests of the pure folders need no built program. Stryker itself ends what goes on for too long. */
export default defineConfig({ test: { include: ['**/*.test.ts'], testTimeout: 60_000 } });
