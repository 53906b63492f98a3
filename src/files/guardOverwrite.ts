import { open } from 'node:fs/promises';
import { Failure, WRONG_INPUT } from './failure.ts';

/** Every file that the program writes has this word in it somewhere: a PDF before its list of pages, however long. */
const SIGNATURE = 'Halfpin';

/**
 * Refuses to write over files that the program did not make, all of them named at once; `force` allows it.
 * Files that are not there, and empty ones, are free to be written.
 */
export const guardOverwrite = async (paths: readonly string[], force: boolean): Promise<void> => {
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
    // A device has no size either, and may have no end.
    if ((await file.stat()).size === 0) return false;
    // A file of any size is read in parts; the word may begin in one and end in the next.
    let before = '';
    for await (const part of file.createReadStream({ encoding: 'latin1' })) {
      const text = `${before}${part}`;
      if (text.includes(SIGNATURE)) return false;
      before = text.slice(1 - SIGNATURE.length);
    }
    return true;
  } finally {
    await file.close();
  }
};
