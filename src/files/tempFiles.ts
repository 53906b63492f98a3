import { createHash, randomBytes } from 'node:crypto';
import { type Dirent, readlinkSync } from 'node:fs';
import { lstat, readdir, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { isUnfinished } from './unfinished.ts';

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
 * Clears away what killed runs left in some folders: unfinished files of processes that are no longer there, and those of
 * other machines after a day. What cannot be removed stays; the run's own work is done.
 */
export const clearLeftovers = async (folders: Iterable<string>): Promise<void> => {
  for (const folder of folders) {
    const entries: Dirent[] = await readdir(folder, { withFileTypes: true }).catch(() => []);
    for (const { name } of entries.filter((entry) => entry.isFile())) {
      const path = join(folder, name);
      const [, where, pid] = TEMP.exec(name) ?? [];
      if (pid === undefined || isUnfinished(path)) continue;
      const over = where === place() ? !isRunning(Number(pid)) : await isOld(path, folder);
      if (over) await rm(path, { force: true }).catch(() => {});
    }
  }
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
