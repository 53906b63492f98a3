import type { Command } from 'commander';

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
      const { listPrinters } = await import('../actions/listPrinters.ts');
      await listPrinters(options.json === true);
    });
};
