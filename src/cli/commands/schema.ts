import { readFile } from 'node:fs/promises';
import type { Command } from 'commander';

/** It is always the same; the build lays it beside the program. */
const SCHEMA = new URL('plan.schema.json', import.meta.url);

/** `schema`: what a plan may hold, for editors. */
export const addSchema = (program: Command): void => {
  program
    .command('schema')
    .summary('print the JSON Schema of a plan')
    .description('Prints the JSON Schema of a plan, for editors that complete and check as one types.')
    .addHelpText('after', '\nExample:\n  halfpin schema > plan.schema.json\n')
    .action(async () => {
      process.stdout.write(await readFile(SCHEMA));
    });
};
