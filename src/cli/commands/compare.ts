import type { Command } from 'commander';
import { addJointOptions, type JointOptions } from '../options/jointOptions.ts';
import { addPaperOptions, FONT_OPTION, type PaperOptions } from '../options/paperOptions.ts';

/** The options of `compare`, as typed. */
export interface CompareOptions extends JointOptions, PaperOptions {
  readonly widths?: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly font?: string;
  readonly force?: boolean;
}

/** `compare`: the front corners of a set side by side. */
export const addCompare = (program: Command): void => {
  const command = program
    .command('compare')
    .summary('see a whole set together, narrow and wide')
    .description(
      'Compares the front corners of a set: a table here, and with --out a sheet of the fronts in rows and columns, and of every corner to one scale.',
    )
    .argument('[plan]', 'a plan file, or - for standard input')
    .option('--widths <lengths>', 'bare widths instead of a plan: 60,90,140,200')
    .option('--json', 'print one JSON object, lengths in mm')
    .option('--out <folder>', 'draw the sheet into this folder, as PDF')
    .option('--force', 'write over a file that halfpin did not make');
  addPaperOptions(command).option(...FONT_OPTION);
  addJointOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  halfpin compare examples/haberdashery-chest.yaml
  halfpin compare --widths 60,90,140,200 --tail-board 11 --pin-board 20
`,
    )
    .action(async (plan: string | undefined, options: CompareOptions) => {
      const { compareSet } = await import('../actions/compareSet.ts');
      await compareSet(plan, options);
    });
};
