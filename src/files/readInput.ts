import { readFile } from 'node:fs/promises';
import { Failure, WRONG_INPUT } from './failure.ts';

/** A file that the user names. A name that leads to no file is wrong input; what the disk fails at is thrown as it is. */
export const readInput = async (path: string, what: string): Promise<Uint8Array> => {
  try {
    return await readFile(path);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR')
      throw new Failure([`${path}: there is no such file to read as ${what}`], WRONG_INPUT);
    if (code === 'EISDIR') throw new Failure([`${path}: this is a folder, not ${what}`], WRONG_INPUT);
    throw error;
  }
};
