import { chmodSync, mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * Gives all temporary files of a run a folder of their own and takes it away at the end: what a test would take away
 * itself as its process ends is left where that process is killed.
 */
export default (): (() => Promise<void>) => {
  const scratch = mkdtempSync(join(tmpdir(), 'halfpin-tests-'));
  // A print queue works under another user's name.
  chmodSync(scratch, 0o755);
  process.env.TMPDIR = scratch;
  // A browser ends a moment after the thread of its tests, and writes there until then.
  return () => rm(scratch, { recursive: true, force: true, maxRetries: 20 });
};
