import { constants, type Stats } from 'node:fs';
import { type FileHandle, open, stat } from 'node:fs/promises';

/** What something is that is no regular file, with its article; undefined for a regular file. */
export const otherThanFile = (found: Stats): string | undefined => {
  if (found.isFile()) return undefined;
  if (found.isDirectory()) return 'a folder';
  if (found.isFIFO()) return 'a named pipe';
  return found.isSocket() ? 'a socket' : 'a device';
};

/**
 * Opens a regular file to be read, and nothing else: to open a pipe may wait without end, and to open a device may do
 * something. Throws what the disk says.
 * @returns the open file; or what the path leads to instead
 */
export const openRegular = async (path: string): Promise<FileHandle | string> => {
  const other = otherThanFile(await stat(path));
  // Something else may be there by now: so it is opened without waiting.
  return other ?? open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
};
