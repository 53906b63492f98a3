import { brokenOut } from '../../drawer/blanks/brokenOut.ts';
import { decode } from '../../plan/read/decode.ts';
import { readProject } from '../../project/readProject.ts';
import type { Breakout } from '../../stock/breakout.ts';
import { type PriceRow, priceTable } from '../model/fingers/priceTable.ts';
import { fileFaultWords } from '../text/plainWords.ts';
import { makeSheets } from './makeSheets.ts';
import type { BoardsJob, Job, JobEnd, JobNews, PriceJob, ReadJob } from './sheetJob.ts';

/** What the page hands to the worker that this script is started in. */
export interface WorkerOrder {
  readonly job: Job;
  readonly fonts: { readonly regular: Blob; readonly bold: Blob };
  /** Takes the news of the job, then its end. */
  readonly port: MessagePort;
}

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

const readFile = async ({ read }: ReadJob): Promise<JobEnd> => {
  const bytes = await bytesOf(read);
  const reading = readProject(bytes);
  return reading.ok
    ? { is: 'made', says: '' }
    : {
        is: 'refused',
        says: reading.complaints.map((fault) => fileFaultWords(fault, reading.units, decode(bytes).text)),
      };
};

const pricesOf = ({ prices }: PriceJob): PriceRow[] => {
  const reading = readProject(prices);
  return reading.ok ? priceTable(reading.value.set) : [];
};

/** Tells how far the search is, and each layout once; what is missing, and what would do, only of the last. */
const layBoards = ({ boards: { work, sawing } }: BoardsJob, tell: (news: JobNews) => void): void => {
  let known: Breakout | undefined;
  const { breakout, toBuy } = brokenOut(work, sawing, {
    onProgress: (share, best) => {
      if (share === 1) return;
      tell({ is: 'boards', ...(best !== known && { laid: { breakout: best, toBuy: [] } }), share });
      known = best;
    },
  });
  tell({ is: 'boards', laid: { breakout, toBuy }, share: 1 });
};

const work = async ({ job, fonts, port }: WorkerOrder): Promise<void> => {
  const tell = (what: JobNews | JobEnd): void => port.postMessage(what);
  try {
    if ('read' in job) {
      tell(await readFile(job));
      return;
    }
    if ('prices' in job) {
      tell({ is: 'prices', rows: pricesOf(job) });
      tell({ is: 'made', says: '' });
      return;
    }
    if ('boards' in job) {
      layBoards(job, tell);
      tell({ is: 'made', says: '' });
      return;
    }
    const [regular, bold] = await Promise.all([bytesOf(fonts.regular), bytesOf(fonts.bold)]);
    tell(await makeSheets(job, { regular, bold }, tell));
  } catch (error) {
    tell({ is: 'failed', says: error instanceof Error ? error.message : String(error) });
  }
};

addEventListener('message', ({ data }: MessageEvent<WorkerOrder>) => void work(data));
