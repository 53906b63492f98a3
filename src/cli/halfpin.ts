#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { shownText } from '../drawing/shownText.ts';
import { DEVICE_FAILED, Failure, WRONG_INPUT } from '../files/failure.ts';
import { ioMessage, suggestOutFolder } from '../files/ioMessage.ts';
import { removeTempFiles } from '../files/tempFiles.ts';
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

declare const HALFPIN_VERSION: string | undefined;
/** Defined by the build; the sources run without it. */
const VERSION = typeof HALFPIN_VERSION === 'string' ? HALFPIN_VERSION : 'unbuilt';

/** Commander's message about a wrong option in the form of all others: one line, its suggestion at the end. */
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
  process.stderr.write(
    `${shownText(`${ioMessage(fault)}${suggestOutFolder(fault, running?.opts().out)}`)}\n`,
  );
  return DEVICE_FAILED;
};

// A reader may close the pipe early (`head`); that is no failure, and files are still written.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  removeTempFiles();
  process.exit(fail(error));
});
// Where stderr is closed, the exit status remains.
process.stderr.on('error', () => {});
/** Exit statuses of a run that a signal ended, by the shell's convention: 128 and the signal's number. */
const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
for (const [signal, status] of Object.entries(SIGNALS))
  process.on(signal, () => {
    removeTempFiles();
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
