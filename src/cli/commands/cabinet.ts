import type { Command } from 'commander';
import { FRACTIONS_OPTION, type NotationOptions } from '../options/notationOptions.ts';

/** The options of `cabinet`, as typed. */
export interface CabinetOptions extends NotationOptions {
  readonly json?: boolean;
}

/** `cabinet`: the opening of every drawer, from the cabinet that the plan gives. */
export const addCabinet = (program: Command): void => {
  program
    .command('cabinet')
    .summary('find the openings of a planned cabinet')
    .description(
      'Lists the opening of every drawer of a planned cabinet: where it lies from the lower left corner of the clear inside, and its size.',
    )
    .argument('<plan>', 'a plan file, or - for standard input')
    .option('--json', 'one JSON object, lengths in mm')
    .option('--units <unit>', 'mm or in: what is shown')
    .option(...FRACTIONS_OPTION)
    .addHelpText('after', '\nExample:\n  halfpin cabinet examples/haberdashery-chest-cabinet.yaml\n')
    .action(async (plan: string, options: CabinetOptions) => {
      const { listOpenings } = await import('../actions/listOpenings.ts');
      await listOpenings(plan, options);
    });
};
