import type { Command } from 'commander';
import { readUnits } from '../options/notationOptions.ts';

/** `start`: a plan to begin from. */
export const addStart = (program: Command): void => {
  program
    .command('start')
    .summary('write a plan to begin from')
    .description('Writes a plan with notes on every key, ready to be changed; without a file, it is printed.')
    .argument('[file]', 'where to write it; never over a file that is there')
    .option('--units <unit>', 'mm or in')
    .addHelpText('after', '\nExample:\n  halfpin start my-chest.yaml\n')
    .action(async (file: string | undefined, options: { units?: string }) => {
      const unit = readUnits(options.units) ?? 'mm';
      const { starterPlan } = await import('../../plan/starterPlan.ts');
      if (file === undefined) {
        process.stdout.write(starterPlan(unit));
        return;
      }
      const { writeNew } = await import('../../files/writeWhole.ts');
      await writeNew(file, starterPlan(unit));
      process.stdout.write(`${file}: a plan to begin from. Change it, then: halfpin draw ${file}\n`);
    });
};
