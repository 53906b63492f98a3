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

/** What adds each command, by every name that it is typed by, in the order of the help. */
const COMMANDS: Readonly<Record<string, (program: Command) => void>> = {
  draw: addDraw,
  'set-out': addLay,
  lay: addLay,
  compare: addCompare,
  cabinet: addCabinet,
  parts: addParts,
  breakout: addBreakout,
  movement: addSeason,
  season: addSeason,
  trial: addTrial,
  proof: addProof,
  printers: addPrinters,
  page: addPage,
  start: addStart,
  schema: addSchema,
};

/** The program with the command that is typed; with all of them, for the help, where none is. */
const programFor = (typed: string | undefined): Command => {
  const program = new Command('halfpin')
    .description('Sets out dovetailed drawers, and prints full-size templates for them.')
    .version(VERSION)
    .configureOutput({ outputError: (text, write) => write(onOneLine(text)) })
    .showSuggestionAfterError()
    .exitOverride();
  const add = typed !== undefined && Object.hasOwn(COMMANDS, typed) ? COMMANDS[typed] : undefined;
  for (const each of add ? [add] : new Set(Object.values(COMMANDS))) each(program);
  for (const command of program.commands) command.copyInheritedSettings(program);
  refuseMeaningless(program);
  return program;
};

/** Says what went wrong, of a run that was to write into the folder `out` → the exit status. */
const fail = (error: unknown, out?: unknown): number => {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : WRONG_INPUT;
  if (error instanceof Failure) {
    // Names of files may hold anything, a line end too.
    process.stderr.write(error.lines.map((line) => `${shownText(line)}\n`).join(''));
    return error.status;
  }
  const fault = error as NodeJS.ErrnoException;
  process.stderr.write(`${shownText(`${ioMessage(fault)}${suggestOutFolder(fault, out)}`)}\n`);
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
  const program = programFor(words[0]);
  const status = await program.parseAsync(words, { from: 'user' }).then(
    () => 0,
    (error: unknown) => fail(error, program.commands[0]?.opts().out),
  );
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
