import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { mediaName } from '../paper/paperSizes.ts';
import type { Size } from '../paper/printable.ts';
import { quote } from '../units/quote.ts';
import { DEVICE_FAILED, Failure } from './failure.ts';

const run = promisify(execFile);

/**
 * Sends a PDF to a print queue of CUPS at full size: one side, no scaling, on the paper that it is drawn for; where the
 * size of its pages changes, as on a roll, each run of equal pages as a job of its own.
 * Throws a Failure where there is no CUPS, no such queue, or the queue refuses.
 * @param pages the size of each page
 */
export const sendToQueue = async (queue: string, file: string, pages: readonly Size[]): Promise<void> => {
  for (const { media, from, to } of runsOf(pages)) {
    const range = from === 1 && to === pages.length ? [] : [`page-ranges=${from}-${to}`];
    await print(queue, file, ['print-scaling=none', `media=${media}`, 'sides=one-sided', ...range]);
  }
};

interface Run {
  readonly media: string;
  /** The numbers of its pages, both included. */
  readonly from: number;
  readonly to: number;
}

/** Pages in a row on the same paper. */
const runsOf = (pages: readonly Size[]): Run[] => {
  const runs: Run[] = [];
  pages.forEach((size, i) => {
    const media = mediaName(size);
    const last = runs.at(-1);
    if (last?.media === media) runs[runs.length - 1] = { ...last, to: i + 1 };
    else runs.push({ media, from: i + 1, to: i + 1 });
  });
  return runs;
};

const print = async (queue: string, file: string, options: readonly string[]): Promise<void> => {
  try {
    // Options come before names, so that no name can be read as one.
    await run('lp', ['-d', queue, ...options.flatMap((option) => ['-o', option]), '--', file]);
  } catch (error) {
    const { code, stderr = '' } = error as NodeJS.ErrnoException & { stderr?: string };
    if (code === 'ENOENT')
      throw new Failure(
        [
          `--send: there is no program lp, so no print queue (CUPS, the printing system of Linux and macOS); print ${file} yourself, at 100 %`,
        ],
        DEVICE_FAILED,
      );
    const [said = ''] = stderr.replace(/^lp: (?:Error - )?/u, '').split(/\.?\n/u);
    throw new Failure(
      [`--send: the queue ${quote(queue)} did not take ${file}: ${said}; ${await knownQueues()}`],
      DEVICE_FAILED,
    );
  }
};

const knownQueues = async (): Promise<string> => {
  const { stdout } = await run('lpstat', ['-e']).catch(() => ({ stdout: '' }));
  const names = stdout.split('\n').filter((name) => name !== '');
  return names.length === 0
    ? 'CUPS has no queue here, or is not running'
    : `known queues: ${names.map(quote).join(', ')}`;
};
