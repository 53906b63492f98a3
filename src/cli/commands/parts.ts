import type { Command } from 'commander';
import { FRACTIONS_OPTION, type NotationOptions } from '../options/notationOptions.ts';

/** The options of `parts`, as typed. */
export interface PartsOptions extends NotationOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly cuttingList?: boolean;
}

/** `parts`: everything to cut, with spare length for a trial joint. */
export const addParts = (program: Command): void => {
  program
    .command('parts')
    .summary('list every part to cut, with spare for a trial joint')
    .description(
      'Lists every part of every drawer: its finished size, its rough length, its wood and what is worked on it.',
    )
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--cutting-list', 'instead, equal sizes together as they are sawn, and how much wood that is')
    .option('--csv', 'CSV, a table for spreadsheets')
    .option('--json', 'one JSON object, lengths in mm')
    .option('--units <unit>', 'mm or in: what is shown')
    .option(...FRACTIONS_OPTION)
    .addHelpText(
      'after',
      `
Examples:
  halfpin parts examples/haberdashery-chest.yaml --csv > parts.csv
  halfpin parts examples/haberdashery-chest.yaml --cutting-list
`,
    )
    .action(async (plan: string, options: PartsOptions) => {
      const { listParts } = await import('../actions/listParts.ts');
      await listParts(plan, options);
    });
};
