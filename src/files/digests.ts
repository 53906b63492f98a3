import { createHash } from 'node:crypto';
import { openRegular } from './regularFile.ts';

/** A digest of what each file holds, by its path; none of those that are not there or cannot be read. */
export const digestsOf = async (paths: Iterable<string>): Promise<Map<string, string>> => {
  const found = new Map<string, string>();
  for (const path of paths) {
    const digest = await digestOf(path).catch(() => undefined);
    if (digest !== undefined) found.set(path, digest);
  }
  return found;
};

const digestOf = async (path: string): Promise<string | undefined> => {
  const file = await openRegular(path);
  if (typeof file === 'string') return undefined;
  try {
    const hash = createHash('sha256');
    for await (const chunk of file.createReadStream({ autoClose: false })) hash.update(chunk);
    return hash.digest('hex');
  } finally {
    await file.close();
  }
};
