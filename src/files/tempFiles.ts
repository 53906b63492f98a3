import { createHash, randomBytes } from 'node:crypto';
import { type Dirent, readlinkSync, rmSync } from 'node:fs';
import { lstat, readdir, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { dirname, join } from 'node:path';

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

/** A name for an unfinished file in a folder: that of the process that writes it, and one that nobody can foresee. */
export const tempFileIn = (folder: string): string =>
  join(folder, `.halfpin-${place()}-${process.pid}-${randomBytes(16).toString('hex')}.part`);

const TEMP = /^\.halfpin-([0-9a-f]{8})-(\d+)-[0-9a-f]{32}\.part$/u;

/** This machine and space of process numbers: elsewhere a number belongs to another process. */
const place = (): string => {
  let space = '';
  try {
    space = readlinkSync('/proc/self/ns/pid');
  } catch {
    // Only Linux has several.
  }
  return createHash('sha256').update(`${hostname()} ${space}`).digest('hex').slice(0, 8);
};

/** No run writes to one file for a day, in ms. */
const DAY = 24 * 60 * 60 * 1000;

/**
 * Clears away what killed runs left in the folders that this run has written to: unfinished files of processes that are no
 * longer there, and those of other machines after a day. What cannot be removed stays; the run's own work is done.
 */
export const clearLeftovers = async (): Promise<void> => {
  for (const folder of folders) {
    const entries: Dirent[] = await readdir(folder, { withFileTypes: true }).catch(() => []);
    for (const { name } of entries.filter((entry) => entry.isFile())) {
      const path = join(folder, name);
      const [, where, pid] = TEMP.exec(name) ?? [];
      if (pid === undefined || unfinished.has(path)) continue;
      const over = where === place() ? !isRunning(Number(pid)) : await isOld(path, folder);
      if (over) await rm(path, { force: true }).catch(() => {});
    }
  }
  folders.clear();
};

const isRunning = (pid: number): boolean => {
  // Its own files are known; others of this number were left by an earlier process.
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
};

/** By the clock of the disk, which has just written into the folder: this machine's may be wrong. */
const isOld = async (path: string, folder: string): Promise<boolean> => {
  const [file, now] = await Promise.all([lstat(path), stat(folder)]).catch(() => []);
  return file !== undefined && now !== undefined && now.mtimeMs - file.mtimeMs > DAY;
};
