#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { shownText } from '../drawing/shownText.ts';
import { DEVICE_FAILED, Failure, WRONG_INPUT } from '../files/failure.ts';
import { deviceFault } from '../files/ioMessage.ts';
import { elsewhere } from '../files/suggestOutFolder.ts';
import { dropUnfinished } from '../files/tempFiles.ts';
import { addCompare } from './commands/compare.ts';
import { addDraw } from './commands/draw.ts';
import { addLay } from './commands/lay.ts';
import { addPage } from './commands/page.ts';
import { addParts } from './commands/parts.ts';
import { addPrinters } from './commands/printers.ts';
import { addProof } from './commands/proof.ts';
import { addSchema } from './commands/schema.ts';
import { addSeason } from './commands/season.ts';
import { addStart } from './commands/start.ts';
import { addTrial } from './commands/trial.ts';
import { VERSION } from './version.ts';

/** What commander says of a slip of the pen, as all else is said: one line, with what to try at its end. */
const onOneLine = (text: string): string =>
  text.replace(/^error: /u, 'halfpin: ').replace(/\n\(Did you mean (.+)\?\)/u, '; try $1');

const program = new Command('halfpin')
  .description('Sets out dovetailed drawers, and prints full-size templates for them.')
  .version(VERSION)
  .configureOutput({ outputError: (text, write) => write(onOneLine(text)) })
  .showSuggestionAfterError()
  .exitOverride();
for (const add of [
  addDraw,
  addLay,
  addCompare,
  addParts,
  addSeason,
  addTrial,
  addProof,
  addPrinters,
  addPage,
  addStart,
  addSchema,
])
  add(program);
for (const command of program.commands) command.copyInheritedSettings(program);

const fail = (error: unknown): number => {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : WRONG_INPUT;
  if (error instanceof Failure) {
    // Names of files may hold anything, a line end too.
    process.stderr.write(error.lines.map((line) => `${shownText(line)}\n`).join(''));
    return error.status;
  }
  const fault = error as NodeJS.ErrnoException;
  const running = program.commands.find((command) => command.name() === program.args[0]);
  process.stderr.write(`${shownText(`${deviceFault(fault)}${elsewhere(fault, running?.opts().out)}`)}\n`);
  return DEVICE_FAILED;
};

// A reader that has seen enough closes the pipe; that is no failure, and what goes into files is still written.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  dropUnfinished();
  process.exit(fail(error));
});
// Where nobody listens to complaints, the exit status still tells.
process.stderr.on('error', () => {});
/** What the shell gives a program that a signal ended: 128 and the signal's number. */
const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
for (const [signal, status] of Object.entries(SIGNALS))
  process.on(signal, () => {
    dropUnfinished();
    process.stderr.write('halfpin: broken off; nothing is left half written\n');
    process.exit(status);
  });
/** One command line, without the program's name → the exit status. What it says goes to this process's output. */
export const run = (words: readonly string[]): Promise<number> =>
  program.parseAsync(words, { from: 'user' }).then(() => 0, fail);

// Not awaited: what a command loads on demand waits for this module to have run.
void run(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
