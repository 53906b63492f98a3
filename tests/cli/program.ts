import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { onTestFinished } from 'vitest';

export const PROGRAM = resolve('dist/halfpin.js');
export const CHEST = resolve('examples/haberdashery-chest.yaml');
export const GUIDED_CHEST = resolve('examples/haberdashery-chest-guided.yaml');
export const TRINKET_BOX = resolve('examples/trinket-box.yaml');

export interface Run {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** The built program in a process that is kept: to start Node and load it anew takes longer than most commands. */
const resident = () => {
  const { port1: port, port2 } = new MessageChannel();
  const done = new Int32Array(new SharedArrayBuffer(4));
  new Worker(new URL('resident.mjs', import.meta.url), {
    workerData: { program: PROGRAM, port: port2, done },
    transferList: [port2],
    execArgv: [],
  }).unref();
  port.unref();
  return { port, done };
};
let kept: ReturnType<typeof resident> | undefined;

/** Runs a command to its end, in a folder. */
export const halfpin = (
  args: readonly string[],
  cwd = process.cwd(),
  env: Readonly<Record<string, string>> = {},
): Run => {
  kept ??= resident();
  const { port, done } = kept;
  Atomics.store(done, 0, 0);
  port.postMessage({ args, cwd, env });
  Atomics.wait(done, 0, 0, 60_000);
  return receiveMessageOnPort(port)?.message ?? { status: null, out: '', err: 'no answer within a minute' };
};

/** What a command says that must work: it has no complaints. */
export const said = (...args: readonly string[]): string => {
  const { status, out, err } = halfpin(args);
  if (status !== 0 || err !== '') throw new Error(`exit ${status}: ${err}`);
  return out;
};

/** An empty folder that is gone when the test is. */
export const folder = (): string => {
  const path = mkdtempSync(join(tmpdir(), 'halfpin-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
};

/** Options and their values, two by two, with others in the place of those of the same name. */
export const replacing = (options: readonly string[], others: readonly string[]): string[] => [
  ...options.filter((_, i) => !others.includes(options[i - (i % 2)] ?? '')),
  ...others,
];
