import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
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

/** Runs the program to its end. */
export const halfpin = (
  args: readonly string[],
  cwd?: string,
  env?: Readonly<Record<string, string>>,
): Run => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    ...(cwd !== undefined && { cwd }),
    ...(env !== undefined && { env: { ...process.env, ...env } }),
  });
  return { status, out: stdout, err: stderr };
};

/** An empty folder that is gone when the test is. */
export const folder = (): string => {
  const path = mkdtempSync(join(tmpdir(), 'halfpin-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
};
