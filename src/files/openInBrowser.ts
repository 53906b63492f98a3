import { spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { DEVICE_FAILED, Failure } from './failure.ts';

/** The command of each system that opens a file in the user's preferred program. */
const OPENERS: Readonly<Partial<Record<NodeJS.Platform, readonly string[]>>> = {
  darwin: ['open'],
  // What `start` does, without a shell that would read the file's name.
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
};
const OF_ALL_OTHERS = ['xdg-open'];

/** Some commands end at once, others with the browser; after so many ms the file is assumed to be open. */
const PATIENCE = 3000;

/** Opens a file in the desktop's browser. Throws a Failure where there is none. */
export const openInBrowser = async (path: string, platform: NodeJS.Platform): Promise<void> => {
  const [opener = '', ...before] = OPENERS[platform] ?? OF_ALL_OTHERS;
  const failed = (why: string): Failure =>
    new Failure([`--open: ${why}; the page is in ${path}, open it in a browser yourself`], DEVICE_FAILED);
  await new Promise<void>((done, fail) => {
    const child = spawn(opener, [...before, resolve(path)], { detached: true, stdio: 'ignore' });
    const waited = setTimeout(done, PATIENCE);
    child.unref();
    child.on('error', () => {
      clearTimeout(waited);
      fail(failed(`there is no ${opener} here to find a browser`));
    });
    child.on('exit', (status) => {
      clearTimeout(waited);
      if (status === 0) done();
      else fail(failed(`${opener} found no browser`));
    });
  });
};
