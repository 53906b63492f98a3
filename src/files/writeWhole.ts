import { rmSync } from 'node:fs';
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Takes a part of a file. */
export type Write = (chunk: Uint8Array | string) => Promise<void>;

/** Files that are being written now, to be taken away where the run is broken off. */
const unfinished = new Set<string>();

/** Takes away what is half written. For a run that is being broken off: it does not wait. */
export const dropUnfinished = (): void => {
  for (const path of unfinished) rmSync(path, { force: true });
};

/** Makes a folder and those above it. Node's own way of doing so never ends on file systems that take no folders. */
export const ensureFolder = async (folder: string): Promise<void> => {
  try {
    await mkdir(folder);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    const above = dirname(folder);
    if (code === 'EEXIST' && (await stat(folder)).isDirectory()) return;
    if (code !== 'ENOENT' || above === folder) throw error;
    await ensureFolder(above);
    await mkdir(folder);
  }
};

/**
 * Writes a file whole or not at all: into a hidden file beside it, which takes its name when all is on the disk.
 * Folders on the way are made. Throws what the disk says.
 */
export const writeWhole = async (path: string, fill: (write: Write) => Promise<void>): Promise<void> => {
  const folder = dirname(path);
  await ensureFolder(folder);
  const part = join(folder, `.${basename(path)}.${process.pid}.part`);
  unfinished.add(part);
  try {
    const file = await open(part, 'w');
    try {
      await fill(async (chunk) => {
        await file.writeFile(chunk);
      });
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true }).catch(() => {
      // The first fault is the one to be told.
    });
    throw error;
  } finally {
    unfinished.delete(part);
  }
};
