import type { Command } from 'commander';
import { addPaperOptions, type PaperOptions } from '../options/paperOptions.ts';

/** The options of `proof`, as typed. */
export interface ProofOptions extends PaperOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly units?: string;
  readonly measuredX?: string;
  readonly measuredY?: string;
  readonly measuredD1?: string;
  readonly measuredD2?: string;
  readonly save?: string;
  readonly printer?: string;
  readonly force?: boolean;
}

/** `proof`: a printer's error, measured and saved. */
export const addProof = (program: Command): void => {
  const command = program
    .command('proof')
    .summary('measure a printer error, and keep its correction')
    .description(
      'Draws a proof sheet to print and measure. Enter the measured lengths to find the printer error; kept under a name, it corrects every sheet drawn with --printer.',
    )
    .option('--out <folder>', 'where to write the sheet (templates-out)')
    .option('--json', 'print the lengths on the sheet as JSON, in mm')
    .option('--units <unit>', 'mm or in: what a bare number means, and what is shown')
    .option('--measured-x <length>', 'the check bar at the foot, as it was measured')
    .option('--measured-y <length>', 'the check bar at the left, as it was measured')
    .option('--measured-d1 <length>', 'the diagonal from the lower left corner to the upper right')
    .option('--measured-d2 <length>', 'the diagonal from the upper left corner to the lower right')
    .option('--save <name>', "keep the correction under the printer's name")
    .option('--printer <name>', 'draw the sheet corrected for this printer, to check the correction')
    .option('--force', 'write over a file that halfpin did not make');
  addPaperOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  halfpin proof --paper A4
  halfpin proof --paper A4 --measured-x 149.4 --measured-y 200.6 --save office
`,
    )
    .action(async (options: ProofOptions) => {
      const { provePrinter } = await import('../actions/provePrinter.ts');
      await provePrinter(options);
    });
};
