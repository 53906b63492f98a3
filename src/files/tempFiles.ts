import { rmSync } from 'node:fs';

/** Files to remove if the run is interrupted now: unfinished ones, and locks. */
const unfinished = new Set<string>();

/** Does some work during which a file exists that must not outlast the run. */
export const withTempFile = async (path: string, work: () => Promise<void>): Promise<void> => {
  unfinished.add(path);
  try {
    await work();
  } finally {
    unfinished.delete(path);
  }
};

/** Removes all of them, synchronously, for a run that is interrupted. */
export const removeTempFiles = (): void => {
  for (const path of unfinished) rmSync(path, { force: true });
};
