import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

const RELATIVE = /(from '|import\(')(\.[^']+?)\.ts(')/gu;

/** Writes the library's types to dist/types: its own files only, whose imports lead to what is there. */
export const writeDeclarations = () => {
  execFileSync('npx', ['tsc', '-p', 'src/build'], { stdio: 'inherit' });
  const root = resolve('dist/types');
  const needed = new Set();
  const keep = (path) => {
    if (needed.has(path)) return;
    needed.add(path);
    const text = readFileSync(path, 'utf8');
    for (const [, , module] of text.matchAll(RELATIVE)) keep(resolve(dirname(path), `${module}.d.ts`));
    writeFileSync(path, text.replace(RELATIVE, '$1$2.js$3'));
  };
  keep(join(root, 'index.d.ts'));
  for (const entry of readdirSync(root, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    if (entry.isFile() && !needed.has(path)) rmSync(path);
  }
  for (const entry of readdirSync(root, { withFileTypes: true })) {
    const path = join(root, entry.name);
    if (entry.isDirectory() && readdirSync(path).length === 0) rmSync(path, { recursive: true });
  }
  for (const path of needed) if (!existsSync(path)) throw new Error(`${path} is not there`);
};
