import { rmSync } from 'node:fs';
import { dirname } from 'node:path';

/** Files to remove if the run is interrupted now: unfinished ones, and locks. */
const unfinished = new Set<string>();
/** Where this run has had such files. */
const folders = new Set<string>();

const SIGNALS = ['SIGHUP', 'SIGINT', 'SIGTERM'] as const;

/**
 * Does some work during which a file exists that must not outlast the run. Only then are signals handled, so that at any
 * other time they end the run by themselves, whatever it waits for.
 */
export const withTempFile = async (path: string, work: () => Promise<void>): Promise<void> => {
  if (unfinished.size === 0) for (const signal of SIGNALS) process.on(signal, endBy);
  unfinished.add(path);
  folders.add(dirname(path));
  try {
    await work();
  } finally {
    unfinished.delete(path);
    if (unfinished.size === 0) unhandle();
  }
};

const unhandle = (): void => {
  for (const signal of SIGNALS) process.off(signal, endBy);
};

/** Ends the run by the signal itself, as the shell expects, once nothing half written is left. */
const endBy = (signal: NodeJS.Signals): void => {
  unhandle();
  removeTempFiles();
  process.stderr.write('halfpin: stopped. No unfinished file was left.\n');
  process.kill(process.pid, signal);
};

/** Removes all of them, synchronously, for a run that is interrupted. */
export const removeTempFiles = (): void => {
  for (const path of unfinished) rmSync(path, { force: true });
};

/** Whether this run is writing a file now. */
export const isUnfinished = (path: string): boolean => unfinished.has(path);

/** The folders where this run has had such files since it was last asked. */
export const takeFolders = (): string[] => {
  const used = [...folders];
  folders.clear();
  return used;
};
