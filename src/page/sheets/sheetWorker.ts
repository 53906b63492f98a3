import * as z from 'zod';
import { makeSheets } from './makeSheets.ts';
import type { JobEnd, JobNews, SheetJob } from './sheetJob.ts';

/** What the page hands to the worker that this script is started in. */
export interface WorkerOrder {
  readonly job: SheetJob;
  readonly fonts: { readonly regular: Blob; readonly bold: Blob };
  /** Takes the news of the job, then its end. */
  readonly port: MessagePort;
}

// The page's security policy holds here too.
z.config({ jitless: true });

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

const work = async ({ job, fonts, port }: WorkerOrder): Promise<void> => {
  const tell = (what: JobNews | JobEnd): void => port.postMessage(what);
  try {
    const [regular, bold] = await Promise.all([bytesOf(fonts.regular), bytesOf(fonts.bold)]);
    tell(await makeSheets(job, { regular, bold }, tell));
  } catch (error) {
    tell({ is: 'failed', says: error instanceof Error ? error.message : String(error) });
  }
};

addEventListener('message', ({ data }: MessageEvent<WorkerOrder>) => void work(data));
