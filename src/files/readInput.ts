import { open } from 'node:fs/promises';
import { Failure, WRONG_INPUT } from './failure.ts';

/** The most of a file that is read, in bytes: far more than any input has, and soon reached in an endless device. */
const MOST = 1 << 24;

/**
 * The bytes of a file that the user names. Throws a Failure (wrong input) where there is no such file, or it is larger
 * than 16 MB; an error of the disk is thrown as it is.
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
