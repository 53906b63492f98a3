import { resolve, sep } from 'node:path';

/** The system's error codes in plain words. */
const WORDS: Readonly<Record<string, string>> = {
  EACCES: 'this may not be read or written here',
  EPERM: 'this may not be read or written here',
  EROFS: 'this disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'what should be a folder on the way is a file',
  EISDIR: 'there is a folder of this name',
  EEXIST: 'there is a file where a folder should be',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EFBIG: 'the file is larger than this disk or your limits allow',
  ELOOP: 'the links on the way lead back to themselves',
  EBADF: 'the output is closed, or may only be read',
  EBUSY: 'another program is using this',
  ESTALE: 'the network disk is no longer there',
  ETIMEDOUT: 'the network disk does not answer',
  ERR_FS_EISDIR: 'there is a folder of this name',
  EIO: 'the device failed',
  ENAMETOOLONG: 'the name is too long for this disk',
};

/** One line about an error of the disk or a device, with the file's name where it is known. */
export const ioMessage = ({ code = '', path, message }: NodeJS.ErrnoException): string =>
  [path === undefined ? 'halfpin' : path || '""', WORDS[code] ?? message.split('\n')[0]].join(': ');

/** Error codes of a place that cannot be written to, however much space is free. */
const NO_PLACE = new Set(['EACCES', 'EPERM', 'EROFS', 'ENOTDIR', 'EEXIST']);

/** The end of an error's sentence that suggests another --out, where its folder cannot be written to; else empty. */
export const suggestOutFolder = ({ code = '', path }: NodeJS.ErrnoException, out: unknown): string => {
  if (path === undefined || typeof out !== 'string' || !NO_PLACE.has(code)) return '';
  const [at, wished] = [resolve(path), resolve(out)];
  return holds(wished, at) || holds(at, wished) ? '; choose another --out' : '';
};

const holds = (above: string, path: string): boolean => `${path}${sep}`.startsWith(`${above}${sep}`);
