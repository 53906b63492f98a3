import { readFileSync, readlinkSync } from 'node:fs';

const SHELL = /^(?:ba|da|k|mk|z|fi)?sh\n$/u;

/**
 * Whether the shell that started the program had closed its output: `halfpin lay >&-`. Node then puts the null device in
 * its place, open to be read as well. A shell's own `> /dev/null` is open for writing only, but programs that ignore what
 * they start open it like Node, so it counts only below a shell whose own output is elsewhere. Known on Linux only.
 */
export const outputWasClosed = (): boolean => {
  try {
    return (
      isNullToRead('self') &&
      SHELL.test(readFileSync(`/proc/${process.ppid}/comm`, 'utf8')) &&
      !isNullToRead(process.ppid)
    );
  } catch {
    return false;
  }
};

const isNullToRead = (pid: number | 'self'): boolean =>
  readlinkSync(`/proc/${pid}/fd/1`) === '/dev/null' &&
  /^flags:\s*\d*2$/mu.test(readFileSync(`/proc/${pid}/fdinfo/1`, 'utf8'));
