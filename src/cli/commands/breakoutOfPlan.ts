import type { Command } from 'commander';
import { FRACTIONS_OPTION, type NotationOptions } from '../options/notationOptions.ts';
import { addPaperOptions, type PaperOptions } from '../options/paperOptions.ts';

/** The options of `breakout`, as typed. */
export interface BreakoutOptions extends NotationOptions, PaperOptions {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly effort?: string;
  readonly out?: string;
  readonly force?: boolean;
}

/** `breakout`: which part comes out of which board, and how it is sawn. */
export const addBreakout = (program: Command): void => {
  const command = program
    .command('breakout')
    .summary('which part comes out of which board, and the saw cuts in order')
    .description(
      "Breaks a plan's boards out into its parts: clear of their defects, in as few boards as it finds, with every saw cut in order.",
    )
    .argument('<plan>', 'a plan file with boards, or - for standard input')
    .option('--effort <times>', 'how long it searches: 0.1 to 100 times as long as usual (1)')
    .option('--csv', 'CSV, a table for spreadsheets: one part a line')
    .option('--json', 'one JSON object, lengths in mm')
    .option('--units <unit>', 'mm or in: what is shown')
    .option(...FRACTIONS_OPTION)
    .option('--out <folder>', 'draw board sheets into this folder, as PDF and SVG')
    .option('--force', 'write over files that halfpin did not make');
  addPaperOptions(command)
    .addHelpText(
      'after',
      `
Exit status 3: the boards are not enough; it names what would do.

Examples:
  halfpin breakout examples/haberdashery-chest-boards.yaml
  halfpin breakout examples/haberdashery-chest-boards.yaml --out boards
  halfpin breakout examples/haberdashery-chest-boards.yaml --csv > breakout.csv
`,
    )
    .action(async (plan: string, options: BreakoutOptions) => {
      const { breakOutBoards } = await import('../actions/breakOutBoards.ts');
      await breakOutBoards(plan, options);
    });
};
