import type { Command } from 'commander';

/** The options of `page`, as typed. */
export interface PageOptions {
  readonly out: string;
  readonly site?: string;
  readonly open?: boolean;
  readonly force?: boolean;
}

/** `page`: everything in a browser. */
export const addPage = (program: Command): void => {
  program
    .command('page')
    .summary('write the page that does all this in a browser')
    .description(
      'Writes one HTML file that sets out, draws and prints in a browser, without a network; it reads and saves the same plans.',
    )
    .option('--out <file>', 'where to write it', 'halfpin.html')
    .option('--site <folder>', 'write it for a web server instead, so that a phone can install it')
    .option('--open', 'open it in your browser')
    .option('--force', 'write over files that halfpin did not make')
    .addHelpText(
      'after',
      '\nExamples:\n  halfpin page --out my-page.html\n  halfpin page --site public/halfpin\n',
    )
    .action(async (options: PageOptions) => {
      const { writePage } = await import('../actions/writePage.ts');
      await writePage(options);
    });
};
