import { open } from 'node:fs/promises';
import { Failure, WRONG_INPUT } from './failure.ts';

/** The most of a file that is read, in bytes: far more than anyone writes, and soon reached in what never ends. */
const MOST = 1 << 24;

/**
 * A file that the user names. A name that leads to no file, and a file too large to be meant, are wrong input; what the
 * disk fails at is thrown as it is.
 */
export const readInput = async (path: string, what: string): Promise<Uint8Array> => {
  try {
    const file = await open(path);
    try {
      const chunks: Uint8Array[] = [];
      let length = 0;
      for await (const chunk of file.createReadStream({ end: MOST, autoClose: false })) {
        chunks.push(chunk);
        length += chunk.length;
      }
      if (length > MOST)
        throw new Failure(
          [`${path}: this holds more than ${MOST >> 20} MB, so it is not ${what}`],
          WRONG_INPUT,
        );
      return Buffer.concat(chunks);
    } finally {
      await file.close();
    }
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR')
      throw new Failure([`${path}: there is no such file to read as ${what}`], WRONG_INPUT);
    if (code === 'EISDIR') throw new Failure([`${path}: this is a folder, not ${what}`], WRONG_INPUT);
    throw error;
  }
};
