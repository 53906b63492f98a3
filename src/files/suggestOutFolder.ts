import { resolve, sep } from 'node:path';

/** What the system says of a place that will never do, however much room there is made on its disk. */
const NO_PLACE = new Set(['EACCES', 'EPERM', 'EROFS', 'ENOTDIR', 'EEXIST']);

/** What to try where a fault is one of the place that is written to, as the end of its sentence; else nothing. */
export const elsewhere = ({ code = '', path }: NodeJS.ErrnoException, out: unknown): string => {
  if (path === undefined || typeof out !== 'string' || !NO_PLACE.has(code)) return '';
  const [at, wished] = [resolve(path), resolve(out)];
  return holds(wished, at) || holds(at, wished) ? '; try another --out' : '';
};

const holds = (above: string, path: string): boolean => `${path}${sep}`.startsWith(`${above}${sep}`);
