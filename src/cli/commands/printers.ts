import type { Command } from 'commander';
import { loadPrinters } from '../../files/printerStore.ts';
import { printJson } from '../../render/json.ts';
import { userFolder } from '../options/printerOption.ts';
import { printerRows } from '../report/printerText.ts';

/** `printers`: those that have been measured. */
export const addPrinters = (program: Command): void => {
  program
    .command('printers')
    .summary('list the printers that have been measured')
    .description(
      'Lists the printers that have been measured, the error of each, and how long ago it was measured.',
    )
    .option('--json', 'print one JSON object')
    .addHelpText('after', '\nExample:\n  halfpin printers\n')
    .action(async (options: { json?: boolean }) => {
      const folder = userFolder();
      const printers = await loadPrinters(folder);
      process.stdout.write(
        options.json ? printJson({ printers }) : `${printerRows(printers, new Date()).join('\n')}\n`,
      );
    });
};
