// `npm run abuse [inputs] [seed] [words]`: every interface under abuse, or those with the words in their name; so many inputs to
// the quickest of them (30,000), and what became of them. Ends with status 1 where one was answered otherwise than it should be.
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { BUNDLING } from '../../src/build/bundling.mjs';

const inputs = Number(process.argv[2] ?? 30_000);
const seed = Number(process.argv[3] ?? Date.now() % 2 ** 31);
const words = process.argv[4] ?? '';
const root = fileURLToPath(new URL('../..', import.meta.url));
// Where the tests' own paths hold, and what is not bundled is found.
const scratch = mkdtempSync(join(root, 'tests/.abuse-'));
process.on('exit', () => rmSync(scratch, { recursive: true }));
await build({
  ...BUNDLING,
  minify: false,
  entryPoints: { all: join(root, 'tests/abuse/all.ts') },
  outdir: scratch,
  external: ['@resvg/resvg-js', 'fast-check'],
});
const { ALL } = await import(pathToFileURL(join(scratch, 'all.js')));

const row = (name, ...cells) =>
  console.log(name.padEnd(62) + cells.map((cell) => String(cell).padStart(10)).join(''));
const figure = (value) => value.toLocaleString('en');
console.log(`seed ${seed}`);
row('interface', 'tried', 'valid', 'refused', 'failures');
const sum = { valid: 0, refused: 0, failures: 0 };
for (const { name, share, run } of ALL.filter((each) => each.name.includes(words))) {
  let counts = { valid: 0, refused: 0 };
  let failures = 0;
  try {
    counts = await run(Math.ceil(inputs * share), seed);
  } catch (error) {
    failures = 1;
    console.error(`${name}: ${error.message}\n${error.cause?.stack ?? ''}`.slice(0, 4000));
    process.exitCode = 1;
  }
  row(name, figure(counts.valid + counts.refused), figure(counts.valid), figure(counts.refused), failures);
  sum.valid += counts.valid;
  sum.refused += counts.refused;
  sum.failures += failures;
}
row('in all', figure(sum.valid + sum.refused), figure(sum.valid), figure(sum.refused), sum.failures);
