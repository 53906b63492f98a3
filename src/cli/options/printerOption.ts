import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { configFolder, loadPrinters } from '../../files/printerStore.ts';
import type { Correction } from '../../paper/printerCorrection.ts';
import { quote } from '../../units/quote.ts';

/** Where this user's printers are stored. */
export const userFolder = (): string => configFolder(process.env, process.platform);

/** The correction of a printer that has been measured. Throws a Failure that lists the known ones where it has not. */
export const loadCorrection = async (name: string): Promise<Correction> => {
  const printers = await loadPrinters(userFolder());
  const printer = Object.hasOwn(printers, name) ? printers[name] : undefined;
  if (printer !== undefined) return { printer: name, error: printer.error };
  const known = Object.keys(printers);
  const list = known.length === 0 ? 'none has been measured yet' : `known: ${known.map(quote).join(', ')}`;
  throw new Failure(
    [`--printer: no printer is called ${quote(name)}; ${list}; try halfpin proof to measure one`],
    WRONG_INPUT,
  );
};
