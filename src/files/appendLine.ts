import { open } from 'node:fs/promises';
import { dirname } from 'node:path';
import { ensureFolder } from './writeWhole.ts';

/** Adds one line to a file, whole or not at all: in a single write, undone where the disk had room for a part only. */
export const appendLine = async (path: string, line: string): Promise<void> => {
  await ensureFolder(dirname(path));
  const file = await open(path, 'a');
  try {
    const { size } = await file.stat();
    const bytes = Buffer.from(line);
    const { bytesWritten } = await file.write(bytes);
    if (bytesWritten < bytes.length) {
      await file.truncate(size);
      throw Object.assign(new Error('no room'), { code: 'ENOSPC', path });
    }
    await file.sync();
  } finally {
    await file.close();
  }
};
