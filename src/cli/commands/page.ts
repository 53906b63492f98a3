import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Command } from 'commander';
import { Failure, WRONG_INPUT } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { openInBrowser } from '../../files/openInBrowser.ts';
import { writeWhole } from '../../files/writeWhole.ts';

interface PageOptions {
  readonly out: string;
  readonly open?: boolean;
  readonly force?: boolean;
}

/** As the build lays it beside the program. */
const PAGE = 'halfpin.html';

/** `page`: everything in a browser. */
export const addPage = (program: Command): void => {
  program
    .command('page')
    .summary('write the page that does all this in a browser')
    .description(
      'Writes one HTML file that sets out, draws and prints in a browser, without a network; it reads and saves the same plans.',
    )
    .option('--out <file>', 'where to write it', PAGE)
    .option('--open', 'open it in your browser')
    .option('--force', 'write over a file that halfpin did not make')
    .addHelpText('after', '\nExample:\n  halfpin page --out my-page.html\n')
    .action(async ({ out, open, force }: PageOptions) => {
      if (await isFolder(out))
        throw new Failure([`--out: ${out} is a folder; try ${join(out, PAGE)}`], WRONG_INPUT);
      await guardOverwrite([out], force === true);
      const page = await readFile(new URL(PAGE, import.meta.url));
      await writeWhole(out, (write) => write(page));
      process.stdout.write(
        `${out}: the page; it works without a network and keeps your plan in your browser\n`,
      );
      if (open) await openInBrowser(out, process.platform);
    });
};

const isFolder = async (path: string): Promise<boolean> => {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
};
