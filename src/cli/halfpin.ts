#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { shownText } from '../drawing/shownText.ts';
import { outputWasClosed } from '../files/closedOutput.ts';
import { DEVICE_FAILED, Failure, WRONG_INPUT } from '../files/failure.ts';
import { ioMessage, suggestOutFolder } from '../files/ioMessage.ts';
import { removeTempFiles, takeFolders } from '../files/unfinished.ts';
import { addBreakout } from './commands/breakoutOfPlan.ts';
import { addCabinet } from './commands/cabinet.ts';
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
import { refuseMeaningless } from './options/meaning.ts';

declare const HALFPIN_VERSION: string | undefined;
/** Defined by the build; the sources run without it. */
const VERSION = typeof HALFPIN_VERSION === 'string' ? HALFPIN_VERSION : 'unbuilt';

/** Commander's message about a wrong option in the form of all others: one line, its suggestion at the end. */
const onOneLine = (text: string): string =>
  text
    .replace(/^error: /u, 'halfpin: ')
    .replace(/missing required argument 'plan'/u, 'a plan file is missing; give its name')
    .replace(/\n\(Did you mean (.+)\?\)/u, '; try $1');

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
  addCabinet,
  addParts,
  addBreakout,
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
refuseMeaningless(program);

const fail = (error: unknown): number => {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : WRONG_INPUT;
  if (error instanceof Failure) {
    // Names of files may hold anything, a line end too.
    process.stderr.write(error.lines.map((line) => `${shownText(line)}\n`).join(''));
    return error.status;
  }
  const fault = error as NodeJS.ErrnoException;
  const running = program.commands.find((command) =>
    [command.name(), ...command.aliases()].includes(program.args[0] ?? ''),
  );
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
/**
 * One command line, without the program's name → the exit status. What it says goes to this process's output. A success
 * clears up after runs that were killed, and is none where nobody could be told of it.
 */
export const run = async (words: readonly string[]): Promise<number> => {
  const status = await program.parseAsync(words, { from: 'user' }).then(() => 0, fail);
  if (status !== 0) return status;
  const folders = takeFolders();
  if (folders.length > 0) await (await import('../files/tempFiles.ts')).clearLeftovers(folders);
  return outputWasClosed()
    ? fail(new Failure(['halfpin: the output is closed, so nothing could be shown'], DEVICE_FAILED))
    : 0;
};

// Not awaited: what a command loads on demand waits for this module to have run.
void run(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
