import { constants, copyFile, link, mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { Failure, WRONG_INPUT } from './failure.ts';
import { tempFileIn } from './tempFiles.ts';
import { withTempFile } from './unfinished.ts';

/** Writes a part of a file. */
export type Write = (chunk: Uint8Array | string) => Promise<void>;

/** Makes a folder and those above it. Node's recursive mkdir never ends on file systems that hold no folders. */
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
 * Writes a file whole or not at all: into a hidden file beside it, which is renamed when all is on the disk. A file
 * of that name is replaced. Folders on the way are made. Throws what the disk says, of the file as it is to be called.
 */
export const writeWhole = async (path: string, fill: (write: Write) => Promise<void>): Promise<void> =>
  inPlace(path, fill, (part) => rename(part, path));

/** Writes a file whole where there is none yet. Throws a Failure where there is one, which is the user's and stays. */
export const writeNew = async (path: string, text: string): Promise<void> => {
  const moveInto = async (part: string): Promise<void> => {
    // Unlike a renamed file, a linked one never replaces another. Some disks know no links.
    await link(part, path).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'EEXIST') throw error;
      return copyFile(part, path, constants.COPYFILE_EXCL);
    });
    await rm(part);
  };
  try {
    await inPlace(path, (write) => write(text), moveInto);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new Failure([`${path}: there is a file of this name already; choose another name`], WRONG_INPUT);
    throw error;
  }
};

const inPlace = async (
  path: string,
  fill: (write: Write) => Promise<void>,
  settle: (part: string) => Promise<void>,
): Promise<void> => {
  const folder = dirname(path);
  await ensureFolder(folder);
  const part = tempFileIn(folder);
  await withTempFile(part, async () => {
    try {
      const file = await open(part, 'wx');
      try {
        await fill(async (chunk) => {
          await file.writeFile(chunk);
        });
        await file.sync();
      } finally {
        await file.close();
      }
      await settle(part);
    } catch (error) {
      await rm(part, { force: true }).catch(() => {
        // The first error is the one to report.
      });
      throw isOfDisk(error) ? Object.assign(error, { path }) : error;
    }
  });
};

const isOfDisk = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && 'errno' in error;
