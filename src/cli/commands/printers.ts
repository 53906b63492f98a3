import type { Command } from 'commander';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { configFolder, loadPrinters, type Printers } from '../../files/printerStore.ts';
import type { Correction, PrinterError } from '../../paper/printerCorrection.ts';
import { printJson } from '../../render/json.ts';
import { table } from '../../render/table.ts';
import { quote } from '../../units/quote.ts';

/** `printers`: those that have been measured. */
export const addPrinters = (program: Command): void => {
  program
    .command('printers')
    .summary('list the printers that have been measured')
    .description(
      'Lists the printers that have been measured, how they err, and how long ago they were measured.',
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

const DAY = 24 * 60 * 60 * 1000;

export const printerRows = (printers: Printers, today: Date): string[] => {
  const entries = Object.entries(printers);
  if (entries.length === 0) return ['No printer has been measured yet. Begin with: halfpin proof'];
  return table(
    ['printer', 'across', 'up', 'skew', 'paper', 'measured', 'days ago'],
    entries.map(([name, { error, paper, measured }]) => [
      name,
      percent(error.x),
      percent(error.y),
      skewText(error),
      paper,
      measured,
      String(Math.max(0, Math.floor((today.getTime() - Date.parse(measured)) / DAY))),
    ]),
    [false, true, true, true, false, false, true],
  );
};

/** `−0.40 %` for a printer that prints short. */
export const percent = (factor: number): string => `${signed((factor - 1) * 100)} %`;

/** How far an upright line of 100 mm leans to the right. */
export const skewText = ({ skew }: PrinterError): string => `${signed(skew * 100)} mm in 100`;

const signed = (value: number): string => {
  const size = Math.abs(value).toFixed(2);
  return Number(size) === 0 ? size : `${value < 0 ? '−' : '+'}${size}`;
};
