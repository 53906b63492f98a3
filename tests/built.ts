import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const newest = (path: string): number =>
  statSync(path).isDirectory()
    ? Math.max(...readdirSync(path).map((name) => newest(join(path, name))))
    : statSync(path).mtimeMs;

const PROGRAM = 'dist/halfpin.js';

/** Builds the program that tests run, where its sources are newer than it is. */
export default (): void => {
  const sources = Math.max(...['src', 'build.mjs', 'package.json'].map(newest));
  if (!existsSync(PROGRAM) || statSync(PROGRAM).mtimeMs < sources)
    execFileSync('node', ['build.mjs'], { stdio: 'inherit' });
};
