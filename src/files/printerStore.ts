import { open, readFile, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { PrinterError } from '../paper/correction.ts';
import { parsePaper } from '../paper/sizes.ts';
import { DEVICE_FAILED, Failure } from './failure.ts';
import { withUnfinished } from './unfinished.ts';
import { ensureFolder, writeWhole } from './writeWhole.ts';

/** A printer that has been measured. */
export interface StoredPrinter {
  readonly error: PrinterError;
  /** The paper that was measured. */
  readonly paper: string;
  /** The day it was measured, as `2026-05-31`. */
  readonly measured: string;
}

export type Printers = Readonly<Record<string, StoredPrinter>>;

const fileIn = (folder: string): string => join(folder, 'printers.json');

/** Every printer that has been saved; none where nothing has been saved yet. A damaged file is a Failure, and is left as it is. */
export const loadPrinters = async (folder: string): Promise<Printers> => {
  const path = fileIn(folder);
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return {};
    throw error;
  }
  const printers = parse(text);
  if (printers === undefined)
    throw new Failure(
      [
        `${path}: this file of printers is damaged; it has been left as it is. Mend it, or move it away and measure the printers again`,
      ],
      DEVICE_FAILED,
    );
  return printers;
};

const parse = (text: string): Printers | undefined => {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
    const sound = Object.entries(value).every(([name, printer]) => isPrinterName(name) && isStored(printer));
    return sound ? (value as Printers) : undefined;
  } catch {
    return undefined;
  }
};

/** No printer errs by so much of a length. */
const NO_PRINTER = 0.1;

/** A printer's name is something to type again. */
export const isPrinterName = (text: string): boolean =>
  /^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._-]{0,39}$/u.test(text);

const isStored = (value: unknown): value is StoredPrinter => {
  if (typeof value !== 'object' || value === null) return false;
  const { error, paper, measured } = value as Record<keyof StoredPrinter, unknown>;
  if (typeof paper !== 'string' || !parsePaper(paper).ok) return false;
  if (typeof measured !== 'string' || !/^\d{4}-\d\d-\d\d$/u.test(measured)) return false;
  if (Number.isNaN(Date.parse(measured))) return false;
  if (typeof error !== 'object' || error === null) return false;
  const { x, y, skew } = error as Record<keyof PrinterError, unknown>;
  const near = (part: unknown, right: number) =>
    typeof part === 'number' && Math.abs(part - right) < NO_PRINTER;
  return near(x, 1) && near(y, 1) && near(skew, 0);
};

/** Adds a printer, or measures it anew; of two runs that save at once the second waits for the first. */
export const savePrinter = async (folder: string, name: string, printer: StoredPrinter): Promise<void> => {
  const path = fileIn(folder);
  await ensureFolder(folder);
  await locked(`${path}.lock`, async () => {
    const printers = { ...(await loadPrinters(folder)), [name]: printer };
    await writeWhole(path, (write) => write(`${JSON.stringify(printers, null, 2)}\n`));
  });
};

const PATIENCE = 50;
const PAUSE = 100;
/** A lock this old, in milliseconds, was left behind by a run that was killed. */
const STALE = 10_000;

const locked = async (lock: string, work: () => Promise<void>): Promise<void> => {
  for (let tries = 0; ; tries++) {
    try {
      await (await open(lock, 'wx')).close();
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      const left = await stat(lock).catch(() => undefined);
      if (left === undefined) continue;
      if (Date.now() - left.mtimeMs > STALE) await rm(lock, { force: true });
      else if (tries > PATIENCE)
        throw new Failure(
          [`${lock}: another run is saving a printer; try again when it is done`],
          DEVICE_FAILED,
        );
      else await setTimeout(PAUSE);
    }
  }
  await withUnfinished(lock, async () => {
    try {
      await work();
    } finally {
      await rm(lock, { force: true });
    }
  });
};
