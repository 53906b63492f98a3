import { type ChildProcess, fork, type SpawnOptions, spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';

export const PROGRAM = resolve('dist/halfpin.js');
export const PLAN = resolve('examples/trinket-box.yaml');
/** A plan with a cutter and a bush. */
export const GUIDED = resolve('tests/faults/guided.yaml');
/** A plan with two boards. */
export const BOARDS = resolve('tests/faults/boards.yaml');
export const SEASONS = resolve('examples/haberdashery-chest-seasons.yaml');

/** Folders of their own for one test: where output goes, and the user's settings. */
export interface Scene {
  readonly root: string;
  readonly out: string;
  readonly config: string;
}

export const scene = (): Scene => {
  const root = mkdtempSync(join(tmpdir(), 'halfpin-faults-'));
  return { root, out: join(root, 'out'), config: join(root, 'config') };
};

export interface Outcome {
  readonly status: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
}

export const environment = ({ config }: Scene, more: NodeJS.ProcessEnv = {}): NodeJS.ProcessEnv => ({
  PATH: process.env.PATH,
  HOME: config,
  HALFPIN_CONFIG_DIR: config,
  ...more,
});

/** How a program is to be run. */
export interface Running extends SpawnOptions {
  readonly env?: NodeJS.ProcessEnv;
  /** What runs it, where that is not this Node. */
  readonly node?: string;
}

/** Starts the program as it was built, with or without a fault. */
export const started = (
  at: Scene,
  args: readonly string[],
  { env, node = process.execPath, ...options }: Running = {},
): ChildProcess => {
  const preload =
    env?.HALFPIN_FAULT_STEP === undefined ? [] : ['--import', resolve('tests/faults/inject.mjs')];
  return spawn(node, [...preload, PROGRAM, ...args], {
    cwd: at.root,
    env: environment(at, env),
    ...options,
  });
};

export const ended = (child: ChildProcess): Promise<Outcome> =>
  new Promise((resolve, reject) => {
    let [stdout, stderr] = ['', ''];
    child.stdout?.setEncoding('utf8').on('data', (chunk) => (stdout += chunk));
    child.stderr?.setEncoding('utf8').on('data', (chunk) => (stderr += chunk));
    child.on('error', reject);
    child.on('close', (status, signal) => resolve({ status, signal, stdout, stderr }));
  });

/** Runs the program to its end. */
export const run = (at: Scene, args: readonly string[], how: Running = {}): Promise<Outcome> =>
  ended(started(at, args, how));

let resident: ChildProcess | undefined;
let earlier: Promise<unknown> = Promise.resolve();

const startResident = (): ChildProcess => {
  const child = fork(resolve('tests/cli/residentProgram.mjs'), [PROGRAM], {
    execArgv: [],
    env: { ...process.env, TZ: 'UTC', LC_ALL: 'C' },
  });
  child.unref();
  child.channel?.unref();
  return child;
};

/** Runs the program to its end in a process that is kept, one run after the other: for what no process is needed to show. */
export const runResident = (at: Scene, args: readonly string[]): Promise<Outcome> => {
  const outcome = earlier.then(
    () =>
      new Promise<Outcome>((done) => {
        resident ??= startResident();
        resident.once('message', ({ status, out, err }: { status: number; out: string; err: string }) =>
          done({ status, signal: null, stdout: out, stderr: err }),
        );
        resident.send({ args, cwd: at.root, env: environment(at) });
      }),
  );
  earlier = outcome;
  return outcome;
};

/** How many steps a run takes by which it changes the disk. */
export const stepsOf = async (at: Scene, args: readonly string[]): Promise<number> => {
  const counted = join(at.root, 'steps');
  const { status, stderr } = await run(at, args, {
    env: { HALFPIN_FAULT_STEP: '0', HALFPIN_FAULT_COUNT: counted },
  });
  if (status !== 0) throw new Error(stderr);
  const steps = Number(readFileSync(counted, 'utf8'));
  rmSync(counted);
  return steps;
};

/** Every file under a folder with its bytes; what is hidden is what a killed run could not take away. */
export const filesIn = (folder: string): ReadonlyMap<string, string> => {
  const files = new Map<string, string>();
  const look = (path: string): void => {
    for (const name of readdirSync(path)) {
      const inner = join(path, name);
      if (statSync(inner).isDirectory()) look(inner);
      else if (!name.startsWith('.') && !name.endsWith('.lock'))
        files.set(relative(folder, inner), readFileSync(inner).toString('base64'));
    }
  };
  if (existsSync(folder)) look(folder);
  return files;
};

/** Lays a folder out as it was. */
export const restore = (folder: string, files: ReadonlyMap<string, string>): void => {
  rmSync(folder, { recursive: true, force: true });
  for (const [name, bytes] of files) {
    const path = join(folder, name);
    mkdirSync(join(path, '..'), { recursive: true });
    writeFileSync(path, Buffer.from(bytes, 'base64'));
  }
};
