import { loadPrinters } from '../../files/printerStore.ts';
import { printJson } from '../../render/json.ts';
import { userFolder } from '../options/printerOption.ts';
import { printerRows } from '../report/printerText.ts';

/** Prints the printers that have been measured. */
export const listPrinters = async (json: boolean): Promise<void> => {
  const printers = await loadPrinters(userFolder());
  process.stdout.write(json ? printJson({ printers }) : `${printerRows(printers, new Date()).join('\n')}\n`);
};
