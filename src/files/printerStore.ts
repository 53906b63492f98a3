import { lstat, open, rm } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { parsePaper } from '../paper/paperSizes.ts';
import type { PrinterError } from '../paper/printerCorrection.ts';
import { isPrinterName } from '../paper/printerName.ts';
import { MOST_ERROR } from '../paper/readProof.ts';
import { EPSILON } from '../units/epsilon.ts';
import { quote } from '../units/quote.ts';
import { DEVICE_FAILED, Failure } from './failure.ts';
import { ioMessage } from './ioMessage.ts';
import { readRegular } from './readInput.ts';
import { withTempFile } from './unfinished.ts';
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

/** The folder of a user's settings on this system; `HALFPIN_CONFIG_DIR` overrides it. */
export const configFolder = (environment: NodeJS.ProcessEnv, platform: NodeJS.Platform): string => {
  const { HALFPIN_CONFIG_DIR, XDG_CONFIG_HOME, APPDATA } = environment;
  if (HALFPIN_CONFIG_DIR) return HALFPIN_CONFIG_DIR;
  if (platform === 'win32') return join(APPDATA || join(homedir(), 'AppData', 'Roaming'), 'Halfpin');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Halfpin');
  return join(XDG_CONFIG_HOME || join(homedir(), '.config'), 'halfpin');
};

const fileIn = (folder: string): string => join(folder, 'printers.json');

/** Every saved printer. Throws a Failure where the file is damaged, and leaves it as it is. */
export const loadPrinters = async (folder: string): Promise<Printers> => {
  const path = fileIn(folder);
  let text: string;
  try {
    text = new TextDecoder().decode(await readRegular(path, 'a file of printers'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return {};
    throw error;
  }
  const printers = parsePrinters(text);
  if (printers === undefined)
    throw new Failure(
      [
        `${path}: this file of printers is damaged, and is unchanged; correct it, or move it away and measure the printers again`,
      ],
      DEVICE_FAILED,
    );
  return printers;
};

/** Reads a file of printers; undefined where it is damaged. */
export const parsePrinters = (text: string): Printers | undefined => {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
    const sound = Object.entries(value).every(([name, printer]) => isPrinterName(name) && isStored(printer));
    return sound ? (value as Printers) : undefined;
  } catch {
    return undefined;
  }
};

const isStored = (value: unknown): value is StoredPrinter => {
  if (typeof value !== 'object' || value === null) return false;
  const { error, paper, measured } = value as Record<keyof StoredPrinter, unknown>;
  if (typeof paper !== 'string' || !parsePaper(paper).ok) return false;
  if (typeof measured !== 'string' || !isDay(measured)) return false;
  if (typeof error !== 'object' || error === null) return false;
  const { x, y, skew } = error as Record<keyof PrinterError, unknown>;
  return isNear(x, 1) && isNear(y, 1) && isNear(skew, 0);
};

/** Whether a text as `2026-05-31` is a day of the calendar: JavaScript reads 30 February as a day of March. */
const isDay = (text: string): boolean => {
  if (!/^\d{4}-\d\d-\d\d$/u.test(text)) return false;
  const day = new Date(text);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

/** Whether a proof sheet can give this value: a file that was changed by hand must not spoil a front. */
const isNear = (value: unknown, wanted: number): boolean =>
  typeof value === 'number' && Math.abs(value - wanted) <= MOST_ERROR + EPSILON;

/**
 * Adds or replaces a printer; of two runs that save at once the second waits for the first, for half a minute at most.
 * Throws a Failure where it cannot be saved; what was saved before is unchanged.
 */
export const savePrinter = async (folder: string, name: string, printer: StoredPrinter): Promise<void> => {
  const path = fileIn(folder);
  try {
    await ensureFolder(folder);
    await locked(`${path}.lock`, async () => {
      const printers = { ...(await loadPrinters(folder)), [name]: printer };
      await writeWhole(path, (write) => write(`${JSON.stringify(printers, null, 2)}\n`));
    });
  } catch (error) {
    if (error instanceof Failure) throw error;
    throw new Failure(
      [
        `--save: ${quote(name)} could not be kept: ${ioMessage(error as NodeJS.ErrnoException)}; nothing that was kept before is changed`,
      ],
      DEVICE_FAILED,
    );
  }
};

const PAUSE = 50;
/** A lock this old, in milliseconds, was left behind by a run that was killed. */
const STALE = 10_000;
/** The most pauses before a run that waits for others gives up: half a minute. */
const MOST_PAUSES = 30_000 / PAUSE;

const locked = async (lock: string, work: () => Promise<void>): Promise<void> => {
  for (let pauses = 0; !(await taken(lock)); pauses++) {
    if (pauses > MOST_PAUSES)
      throw new Failure(
        [`--save: another run has kept ${lock} for too long; remove this file when no other run is saving`],
        DEVICE_FAILED,
      );
    const age = await ageOf(lock);
    if (age !== undefined && Math.abs(age) > STALE) await rm(lock, { force: true });
    await setTimeout(PAUSE);
  }
  await withTempFile(lock, async () => {
    try {
      await work();
    } finally {
      await rm(lock, { force: true });
    }
  });
};

/** Makes the lock, unless another run has it. */
const taken = async (lock: string): Promise<boolean> => {
  try {
    await (await open(lock, 'wx')).close();
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
};

/** Undefined where the lock has been released meanwhile. */
const ageOf = async (lock: string): Promise<number | undefined> => {
  const found = await lstat(lock).catch(() => undefined);
  return found && Date.now() - found.mtimeMs;
};
