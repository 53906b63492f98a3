import { mkdir, open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** Takes a part of a file. */
export type Write = (chunk: Uint8Array | string) => Promise<void>;

/**
 * Writes a file whole or not at all: into a hidden file beside it, which takes its name when all is on the disk.
 * Folders on the way are made. Throws what the disk says.
 */
export const writeWhole = async (path: string, fill: (write: Write) => Promise<void>): Promise<void> => {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true });
  const unfinished = join(folder, `.${basename(path)}.${process.pid}.part`);
  try {
    const file = await open(unfinished, 'w');
    try {
      await fill(async (chunk) => {
        await file.writeFile(chunk);
      });
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(unfinished, path);
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
};
