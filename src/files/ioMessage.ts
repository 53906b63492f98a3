import { resolve, sep } from 'node:path';

/** What the system says of its devices, in plain words. */
const WORDS: Readonly<Record<string, string>> = {
  EACCES: 'this may not be read or written here',
  EPERM: 'this may not be read or written here',
  EROFS: 'this disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  ENOENT: 'its folder is not there, or no longer',
  ENOTDIR: 'what should be a folder on the way is a file',
  EISDIR: 'there is a folder of this name',
  EEXIST: 'there is a file where a folder should be',
  EMFILE: 'too many files are open',
  EIO: 'the device failed',
  ENAMETOOLONG: 'the name is too long for this disk',
};

/** One line for a fault of the disk or a device, with the file's name where it is known. */
export const ioMessage = ({ code = '', path, message }: NodeJS.ErrnoException): string =>
  [...(path === undefined ? ['halfpin'] : [path]), WORDS[code] ?? message.split('\n')[0]].join(': ');

/** What the system says of a place that will never do, however much room there is made on its disk. */
const NO_PLACE = new Set(['EACCES', 'EPERM', 'EROFS', 'ENOTDIR', 'EEXIST']);

/** What to try where a fault is one of the place that is written to, as the end of its sentence; else nothing. */
export const suggestOutFolder = ({ code = '', path }: NodeJS.ErrnoException, out: unknown): string => {
  if (path === undefined || typeof out !== 'string' || !NO_PLACE.has(code)) return '';
  const [at, wished] = [resolve(path), resolve(out)];
  return holds(wished, at) || holds(at, wished) ? '; try another --out' : '';
};

const holds = (above: string, path: string): boolean => `${path}${sep}`.startsWith(`${above}${sep}`);
