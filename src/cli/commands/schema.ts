import type { Command } from 'commander';

/** `schema`: what a plan may hold, for editors. */
export const addSchema = (program: Command): void => {
  program
    .command('schema')
    .summary('print the JSON Schema of a plan')
    .description('Prints the JSON Schema of a plan, for editors that complete and check as one types.')
    .addHelpText('after', '\nExample:\n  halfpin schema > plan.schema.json\n')
    .action(async () => {
      const { planJsonSchema } = await import('../../plan/planJsonSchema.ts');
      process.stdout.write(`${JSON.stringify(planJsonSchema(), null, 2)}\n`);
    });
};
