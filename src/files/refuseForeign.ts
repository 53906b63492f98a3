import { open } from 'node:fs/promises';
import { Failure, WRONG_INPUT } from './failure.ts';

/** Every file that the program writes has this word at its beginning or near its end. */
const SIGNATURE = 'Halfpin';
const LOOKED_AT = 1 << 14;

/**
 * Refuses to write over files that the program did not make, all of them named at once; `force` allows it.
 * Files that are not there, and empty ones, are free to be written.
 */
export const refuseForeign = async (paths: readonly string[], force: boolean): Promise<void> => {
  if (force) return;
  const foreign: string[] = [];
  for (const path of paths) if (await isForeign(path)) foreign.push(path);
  if (foreign.length > 0)
    throw new Failure(
      foreign.map(
        (path) =>
          `${path}: this file was not made by halfpin, so it is left as it is; try another --out, or --force`,
      ),
      WRONG_INPUT,
    );
};

const isForeign = async (path: string): Promise<boolean> => {
  let file: Awaited<ReturnType<typeof open>>;
  try {
    file = await open(path, 'r');
  } catch (error) {
    // What cannot be read for another reason will fail to be written, and say why.
    return (error as NodeJS.ErrnoException).code === 'EACCES';
  }
  try {
    const { size } = await file.stat();
    if (size === 0) return false;
    const ends = await Promise.all(
      [0, Math.max(0, size - LOOKED_AT)].map(async (position) => {
        const { buffer, bytesRead } = await file.read({ buffer: Buffer.alloc(LOOKED_AT), position });
        return buffer.toString('latin1', 0, bytesRead);
      }),
    );
    return !ends.some((end) => end.includes(SIGNATURE));
  } finally {
    await file.close();
  }
};
