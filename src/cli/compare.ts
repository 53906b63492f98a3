import type { Command } from 'commander';
import { addJointOptions, type JointOptions } from './jointOptions.ts';

export interface CompareOptions extends JointOptions {
  readonly widths?: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly paper?: string;
  readonly margin?: string;
}

/** `compare`: the set as it will be seen. */
export const addCompare = (program: Command): void => {
  const command = program
    .command('compare')
    .summary('see a whole set together, narrow and wide')
    .description(
      'Compares the front corners of a set: a table here, and with --out a sheet on which they are stacked as in the cabinet.',
    )
    .argument('[plan]', 'a plan file')
    .option('--widths <lengths>', 'bare widths instead of a plan: 60,90,140,200')
    .option('--json', 'print one JSON object, lengths in mm')
    .option('--out <folder>', 'draw the sheet into this folder, as PDF')
    .option('--paper <size>', 'A5 to A0, Letter, Legal, Tabloid or WxH (A4; Letter where you read in inches)')
    .option('--margin <length>', 'what the printer leaves blank, at least 5 mm (6 mm)');
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
      const { compareSet } = await import('./compareSet.ts');
      await compareSet(plan, options);
    });
};
