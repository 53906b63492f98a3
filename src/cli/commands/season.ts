import type { Command } from 'commander';
import { FRACTIONS_OPTION, type NotationOptions } from '../options/notationOptions.ts';
import { addPaperOptions, FONT_OPTION, type PaperOptions } from '../options/paperOptions.ts';

/** The options of `season`, as typed. */
export interface SeasonOptions extends PaperOptions, NotationOptions {
  readonly species?: string;
  readonly shrinkage?: string;
  readonly coefficient?: string;
  readonly grain?: string;
  readonly size?: string;
  readonly from?: string;
  readonly to?: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly font?: string;
  readonly force?: boolean;
  readonly woods?: boolean;
}

/** `season`: how wood moves, and what that does to drawers. */
export const addSeason = (program: Command): void => {
  const command = program
    .command('movement')
    .alias('season')
    .summary('how the wood moves through the year, and the clearance to plan')
    .description(
      'Of a plan with a climate: every part when made, driest and dampest, the gaps round every drawer, and the clearance to plan today. Of one board: how much wider or narrower it becomes.',
    )
    .argument('[plan]', 'a plan file, or - for standard input')
    .option('--json', 'print one JSON object: lengths in mm, moisture contents in percent')
    .option('--woods', 'list every wood that is known by name')
    .option('--units <unit>', 'mm or in: what a bare number means, and what is shown')
    .option(...FRACTIONS_OPTION)
    .option('--out <folder>', "draw each drawer's gap through the year into this folder, as PDF and SVG")
    .option('--force', 'write over files that halfpin did not make');
  addPaperOptions(command)
    .option(...FONT_OPTION)
    .optionsGroup('One board, without a plan (conditions: 21C/45%, 70F/45%, or measured: 8%):')
    .option('--species <name>', 'the wood: "Cherry, black", or an everyday name')
    .option('--shrinkage <percents>', 'a wood of your own, green to oven-dry: radial,tangential')
    .option('--coefficient <numbers>', 'or its change for 1 % of moisture content: radial,tangential')
    .option('--grain <cut>', 'flatsawn or quartersawn (flatsawn)')
    .option('--size <length>', 'its width, measured in the first conditions')
    .option('--from <conditions>', 'where it was measured')
    .option('--to <conditions>', 'where it will be')
    .addHelpText(
      'after',
      `
Examples:
  halfpin movement examples/haberdashery-chest-seasons.yaml
  halfpin movement --woods
  halfpin movement --species cherry --size 180 --from 21C/45% --to 21C/70%
`,
    )
    .action(async (plan: string | undefined, options: SeasonOptions) => {
      if (options.woods) {
        const { seasonWoods } = await import('../actions/seasonWoods.ts');
        seasonWoods(options.json === true);
      } else if (plan === undefined) {
        const { seasonOfBoard } = await import('../actions/seasonOfBoard.ts');
        seasonOfBoard(options);
      } else {
        const { seasonOfPlan } = await import('../actions/seasonOfPlan.ts');
        await seasonOfPlan(plan, options);
      }
    });
};
