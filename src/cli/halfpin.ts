import { Command, CommanderError } from 'commander';
import { DEVICE_FAILED, Failure, WRONG_INPUT } from '../files/failure.ts';
import { addCompare } from './compare.ts';
import { addDraw } from './draw.ts';
import { addLay } from './lay.ts';
import { addParts } from './parts.ts';
import { addPrinters } from './printers.ts';
import { addProof } from './proof.ts';
import { addSchema } from './schema.ts';
import { addStart } from './start.ts';
import { VERSION } from './version.ts';

const program = new Command('halfpin')
  .description('Sets out dovetailed drawers, and prints full-size templates for them.')
  .version(VERSION)
  .configureOutput({ outputError: (text, write) => write(text.replace(/^error: /u, 'halfpin: ')) })
  .showSuggestionAfterError()
  .exitOverride();
for (const add of [addDraw, addLay, addCompare, addParts, addProof, addPrinters, addStart, addSchema])
  add(program);
for (const command of program.commands) command.copyInheritedSettings(program);

const fail = (error: unknown): number => {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : WRONG_INPUT;
  if (error instanceof Failure) {
    process.stderr.write(error.lines.map((line) => `${line}\n`).join(''));
    return error.status;
  }
  const { code, path, message } = error as NodeJS.ErrnoException;
  if (code === 'EPIPE') return 0;
  process.stderr.write(`halfpin: ${path === undefined ? message : `${path}: ${message}`}\n`);
  return DEVICE_FAILED;
};

// A reader that has seen enough closes the pipe; that is no failure.
process.stdout.on('error', (error) => process.exit(fail(error)));
try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = fail(error);
}
