import { rmSync } from 'node:fs';

/** Files that are in the way if a run is broken off now: half written ones, and locks. */
const unfinished = new Set<string>();

/** Does its work while a file is there that must not outlast the run. */
export const withTempFile = async (path: string, work: () => Promise<void>): Promise<void> => {
  unfinished.add(path);
  try {
    await work();
  } finally {
    unfinished.delete(path);
  }
};

/** Takes away what is unfinished. For a run that is being broken off: it does not wait. */
export const removeTempFiles = (): void => {
  for (const path of unfinished) rmSync(path, { force: true });
};
