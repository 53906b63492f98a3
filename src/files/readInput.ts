import { createReadStream, existsSync, fstatSync } from 'node:fs';
import { dirname } from 'node:path';
import { Failure, WRONG_INPUT } from './failure.ts';
import { openRegular } from './regularFile.ts';

/** The most of a file that is read, in bytes: far more than any input has, and soon reached in an endless stream. */
const MOST = 1 << 24;

/**
 * The bytes of what the user names: a regular file, standard input as `-`, or a pipe that is open already, as
 * `/dev/fd/63`. Throws a Failure (wrong input) where there is none, it is something else, or it is larger than `most` bytes, 16 MB unless given; an
 * error of the disk is thrown as it is.
 */
export const readInput = async (path: string, what: string, most = MOST): Promise<Uint8Array> => {
  const stream = openStream(path);
  if (stream !== undefined) return upToMost(stream, path, what, most);
  try {
    return await readRegular(path, what, most);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code !== 'ENOENT' && code !== 'ENOTDIR') throw error;
    const folder = absentFolder(path);
    const why = folder === undefined ? 'there is' : `there is no folder ${folder}, so`;
    throw new Failure([`${path || '""'}: ${why} no such file to read as ${what}`], WRONG_INPUT);
  }
};

/** The bytes of a regular file. Throws a Failure where it is anything else, or too large; else what the disk says. */
export const readRegular = async (path: string, what: string, most = MOST): Promise<Uint8Array> => {
  const file = await openRegular(path);
  if (typeof file === 'string') throw new Failure([`${path}: this is ${file}, not ${what}`], WRONG_INPUT);
  try {
    return await upToMost(file.createReadStream({ end: most, autoClose: false }), path, what, most);
  } finally {
    await file.close();
  }
};

const upToMost = async (
  stream: AsyncIterable<Uint8Array>,
  path: string,
  what: string,
  most: number,
): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > most)
      throw new Failure(
        [`${path}: this holds more than ${most >> 20} MB, so it is not ${what}`],
        WRONG_INPUT,
      );
  }
  return Buffer.concat(chunks);
};

/** What is open already under this name; to open it anew may wait without end. */
const openStream = (path: string): AsyncIterable<Uint8Array> | undefined => {
  if (path === '-' || path === '/dev/stdin') return process.stdin;
  const fd = Number(/^\/dev\/fd\/(\d{1,6})$/u.exec(path)?.[1]);
  if (fd === 0) return process.stdin;
  return isPipe(fd) ? createReadStream(path, { fd }) : undefined;
};

const isPipe = (fd: number): boolean => {
  try {
    const found = fstatSync(fd);
    return found.isFIFO() || found.isSocket();
  } catch {
    return false;
  }
};

/** The highest folder of a path that is not there. */
const absentFolder = (path: string): string | undefined => {
  const folder = dirname(path);
  return existsSync(folder) ? undefined : (absentFolder(folder) ?? folder);
};
