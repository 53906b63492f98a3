import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { DEVICE_FAILED, Failure } from './failure.ts';

const run = promisify(execFile);

/**
 * Sends a PDF to a print queue of CUPS at full size: one side, no scaling, on the paper that it is drawn for.
 * Throws a Failure where there is no CUPS, no such queue, or the queue refuses.
 * @param media the paper as the queue knows it
 */
export const sendToQueue = async (queue: string, file: string, media: string): Promise<void> => {
  // Options come before names, so that no name can be taken for one.
  const options = ['print-scaling=none', `media=${media}`, 'sides=one-sided'].flatMap((option) => [
    '-o',
    option,
  ]);
  try {
    await run('lp', ['-d', queue, ...options, '--', file]);
  } catch (error) {
    const { code, stderr } = error as NodeJS.ErrnoException & { stderr?: string };
    if (code === 'ENOENT')
      throw new Failure(
        [`--send: there is no lp here, so no print queue of CUPS; print ${file} by hand, at 100 %`],
        DEVICE_FAILED,
      );
    const said = (stderr ?? '').trim().split('\n')[0]?.replace(/^lp: /u, '') ?? '';
    throw new Failure([`--send: the queue ${queue} did not take ${file}: ${said}`], DEVICE_FAILED);
  }
};
