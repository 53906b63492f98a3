import { spawnSync } from 'node:child_process';

export interface Ended {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the built program to its end, with more in its environment. */
export const halfpin = (args: readonly string[], environment: NodeJS.ProcessEnv = {}): Ended =>
  spawnSync(process.execPath, ['dist/halfpin.js', ...args], {
    env: { ...process.env, ...environment },
    encoding: 'utf8',
  });
