import { type SpawnSyncOptions, spawnSync } from 'node:child_process';
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
export const SEASONS = resolve('examples/haberdashery-chest-seasons.yaml');

/** Folders of their own for one test: where output goes, and the user's settings. */
export interface Scene {
  readonly root: string;
  readonly out: string;
  readonly config: string;
}

const scenes: string[] = [];
process.on('exit', () => {
  for (const root of scenes) rmSync(root, { recursive: true, force: true });
});

export const scene = (): Scene => {
  const root = mkdtempSync(join(tmpdir(), 'halfpin-faults-'));
  scenes.push(root);
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

/** Runs the program as it was built, with or without a fault. */
export const run = (
  at: Scene,
  args: readonly string[],
  { env, ...options }: SpawnSyncOptions & { readonly env?: NodeJS.ProcessEnv } = {},
): Outcome => {
  const preload =
    env?.HALFPIN_FAULT_STEP === undefined ? [] : ['--import', resolve('tests/faults/inject.mjs')];
  const { status, signal, stdout, stderr } = spawnSync(process.execPath, [...preload, PROGRAM, ...args], {
    cwd: at.root,
    encoding: 'utf8',
    env: environment(at, env),
    ...options,
  });
  return { status, signal, stdout: String(stdout ?? ''), stderr: String(stderr ?? '') };
};

/** How many steps a run takes by which it changes the disk. */
export const stepsOf = (at: Scene, args: readonly string[]): number => {
  const counted = join(at.root, 'steps');
  const { status, stderr } = run(at, args, {
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
