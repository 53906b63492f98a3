import { lstat } from 'node:fs/promises';
import { readMark } from '../render/mark.ts';
import { Failure, WRONG_INPUT } from './failure.ts';
import { openRegular } from './regularFile.ts';

/**
 * Refuses to write over what the program did not make, all of it named at once; `force` allows it for files and links
 * to them, never for folders, devices and pipes. What is not there, and empty files, are free to be written.
 */
export const guardOverwrite = async (paths: readonly string[], force: boolean): Promise<void> => {
  const refused: string[] = [];
  for (const path of paths) refused.push(...(await refusal(path, force)));
  if (refused.length > 0) throw new Failure(refused, WRONG_INPUT);
};

const refusal = async (path: string, force: boolean): Promise<string[]> => {
  const foreign = force
    ? []
    : [
        `${path}: this file was not made by halfpin, so it is unchanged; choose another --out, or add --force`,
      ];
  try {
    const file = await markedFile(path);
    if (file.other !== undefined)
      return [`${path}: this is ${file.other}, which is never written over; choose another --out`];
    return file.size === 0 || file.mark !== undefined ? [] : foreign;
  } catch (error) {
    const { code, errno } = error as NodeJS.ErrnoException;
    // Not of the disk but of the program, which then knows nothing of the file, and must not write over it.
    if (errno === undefined) throw error;
    // What cannot be read for another reason will fail to be written, and say why.
    if (code === 'EACCES') return foreign;
    return (code === 'ENOENT' || code === 'ELOOP') && (await isLink(path)) ? foreign : [];
  }
};

/** A link that leads to nothing is somebody's too. */
const isLink = async (path: string): Promise<boolean> =>
  lstat(path).then(
    (found) => found.isSymbolicLink(),
    () => false,
  );

/** A file's size and the mark that it carries, if any; or what it is instead of a regular file. Throws what the disk says. */
export const markedFile = async (path: string): Promise<{ size: number; mark?: string; other?: string }> => {
  const file = await openRegular(path);
  if (typeof file === 'string') return { size: 0, other: file };
  try {
    const { size } = await file.stat();
    const mark = await readMark(size, async (from, length) => {
      // Most files are shorter than what is asked for, and a folder may hold thousands of them.
      const rest = Math.min(length, Math.max(0, size - from));
      const { buffer, bytesRead } = await file.read(Buffer.alloc(rest), 0, rest, from);
      return buffer.subarray(0, bytesRead);
    });
    return { size, ...(mark !== undefined && { mark }) };
  } finally {
    await file.close();
  }
};
