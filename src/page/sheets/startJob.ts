import { unpack } from '../browser/unpack.ts';
import type { Job, JobEnd, JobNews } from './sheetJob.ts';
import type { WorkerOrder } from './sheetWorker.ts';

/** A job that is being done. */
export interface RunningJob {
  readonly end: Promise<JobEnd>;
  /** Ends it at once, with nothing made. */
  readonly stop: () => void;
}

const load = async () => {
  // One after the other, so that the page can do other things between.
  const script = await unpack('worker', 'text/javascript');
  const regular = await unpack('font-regular');
  const bold = await unpack('font-bold');
  return { script: URL.createObjectURL(script), fonts: { regular, bold } };
};

/** The script that makes sheets is several times larger than all the rest of the page: it is unpacked when first needed. */
let loaded: ReturnType<typeof load> | undefined;

/** Has a job done in a worker of its own, so that the page is free meanwhile; `tell` is not called once the job has ended. */
export const startJob = (job: Job, tell: (news: JobNews) => void): RunningJob => {
  loaded ??= load();
  let finish: (end: JobEnd) => void = () => {};
  const end = new Promise<JobEnd>((resolve) => {
    finish = resolve;
  });
  let isOver = false;
  const { port1: here, port2: port } = new MessageChannel();
  let worker: Worker | undefined;
  const close = (how: JobEnd): void => {
    isOver = true;
    here.close();
    worker?.terminate();
    finish(how);
  };
  here.onmessage = ({ data }: MessageEvent<JobNews | JobEnd>): void => {
    if (isOver) return;
    switch (data.is) {
      case 'made':
      case 'refused':
      case 'failed':
      case 'stopped':
        close(data);
        break;
      default:
        tell(data);
    }
  };
  const fail = (error: unknown): void =>
    close({ is: 'failed', says: error instanceof Error ? error.message : 'the browser stopped it' });
  loaded
    .then(({ script, fonts }) => {
      if (isOver) return;
      worker = new Worker(script);
      worker.onerror = fail;
      const order: WorkerOrder = { job, fonts, port };
      worker.postMessage(order, [port]);
    })
    .catch(fail);
  return { end, stop: () => close({ is: 'stopped' }) };
};
