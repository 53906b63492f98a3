import type { Command } from 'commander';
import { addJointOptions, type JointOptions } from '../options/jointOptions.ts';

/** The options of `set-out`, as typed. */
export interface LayOptions extends JointOptions {
  readonly json?: boolean;
}

/** `lay`: the numbers to mark out from. */
export const addLay = (program: Command): void => {
  const command = program
    .command('set-out')
    .alias('lay')
    .summary('the numbers to mark out from, without a printer')
    .description(
      'Prints every line of a joint, measured from the reference edge, and the settings to mark it with.',
    )
    .argument('[plan]', 'a plan file, or - for standard input')
    .option('--json', 'print one JSON object, lengths in mm');
  addJointOptions(command)
    .addHelpText(
      'after',
      '\nExample:\n  halfpin set-out --width 96 --tail-board 11 --pin-board 20 --lap 5 --slope 1:7\n',
    )
    .action(async (plan: string | undefined, options: LayOptions) => {
      const { setOutCorners } = await import('../actions/setOutCorners.ts');
      await setOutCorners(plan, options);
    });
};
