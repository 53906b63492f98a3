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
export const deviceFault = ({ code = '', path, message }: NodeJS.ErrnoException): string =>
  [...(path === undefined ? ['halfpin'] : [path]), WORDS[code] ?? message.split('\n')[0]].join(': ');
