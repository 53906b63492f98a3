// `npm run faults`: what `npm test` does at some steps, at every one; and under every Node that is supported.
import { spawnSync } from 'node:child_process';

const { status } = spawnSync(
  'npx',
  ['vitest', 'run', '--config', 'tests/vitest.config.ts', 'tests/faults', 'tests/package'],
  {
    stdio: 'inherit',
    env: { ...process.env, HALFPIN_EVERY: 'yes' },
  },
);
process.exitCode = status ?? 1;
