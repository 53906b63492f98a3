import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const newest = (path: string): number =>
  statSync(path).isDirectory()
    ? Math.max(...readdirSync(path).map((name) => newest(join(path, name))))
    : statSync(path).mtimeMs;

/** What the build reads, libraries as far as they are named. */
const SOURCES = [
  'src',
  'examples/haberdashery-chest.yaml',
  'LICENSE',
  'build.mjs',
  'buildPage.mjs',
  'bundling.mjs',
  'declarations.mjs',
  'fonts.mjs',
  'licences.mjs',
  'startup.mjs',
  'unused.mjs',
  'package.json',
  'package-lock.json',
];

/** Made after the program; where it is newer than its sources, both are. */
const BUILT = 'dist/halfpin.html';

/** Builds the program and the page that tests run, where their sources are newer than they are. */
export default (): void => {
  const sources = Math.max(...SOURCES.map(newest));
  if (!existsSync(BUILT) || statSync(BUILT).mtimeMs < sources)
    execFileSync('node', ['build.mjs'], { stdio: 'inherit' });
};
