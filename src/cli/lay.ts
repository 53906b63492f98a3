import type { Command } from 'commander';
import { jointRecord } from '../joint/record.ts';
import { printJson } from '../render/json.ts';
import { addJointOptions, type JointOptions } from './jointOptions.ts';
import { jointText } from './jointText.ts';
import { loadWork } from './work.ts';

interface LayOptions extends JointOptions {
  readonly json?: boolean;
}

/** `lay`: the numbers to mark out from. */
export const addLay = (program: Command): void => {
  const command = program
    .command('lay')
    .summary('the numbers to mark out from, without a printer')
    .description(
      'Prints every line of a joint, measured from the reference edge, and the settings to mark it with.',
    )
    .argument('[plan]', 'a plan file')
    .option('--json', 'print one JSON object, lengths in mm');
  addJointOptions(command)
    .addHelpText(
      'after',
      '\nExample:\n  halfpin lay --width 96 --tail-board 11 --pin-board 20 --kind lapped --slope 1:7\n',
    )
    .action(async (plan: string | undefined, options: LayOptions) => {
      const { units, corners } = await loadWork(plan, options);
      process.stdout.write(
        options.json
          ? printJson({ joints: corners.map(({ name, joint }) => jointRecord(name, joint, units)) })
          : `${corners.map(({ name, joint }) => jointText(name, joint, units).join('\n')).join('\n\n')}\n`,
      );
    });
};
