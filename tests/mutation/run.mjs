// `npm run mutation [folder…]`: how many faults, put into each folder one at a time, its own tests find.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Stryker } from '@stryker-mutator/core';

const FOLDERS = ['joint', 'drawer', 'router', 'wood'];
/** The least part of the faults that a folder's tests must find. */
const LEAST = 0.9;

/**
 * What an earlier run found is not tried again, but what it left unfound is: Stryker itself does not see that a new test
 * meets a fault that acts as its file is loaded.
 */
const forgetUnfound = (path) => {
  if (!existsSync(path)) return;
  const report = JSON.parse(readFileSync(path, 'utf8'));
  for (const file of Object.values(report.files))
    file.mutants = file.mutants.filter(({ status }) => status === 'Killed');
  writeFileSync(path, JSON.stringify(report));
};

const asked = process.argv.slice(2);
const scores = [];
for (const folder of asked.length > 0 ? asked : FOLDERS) {
  const incrementalFile = `.mutation/${folder}-incremental.json`;
  forgetUnfound(incrementalFile);
  const mutants = await new Stryker({
    testRunner: 'vitest',
    vitest: { configFile: 'tests/mutation/vitest.config.ts', dir: `tests/${folder}`, related: false },
    mutate: [`src/${folder}/**/*.ts`],
    // It takes long: a core is kept free for other work.
    concurrency: Math.max(1, availableParallelism() - 1),
    reporters: ['clear-text', 'json'],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: true },
    jsonReporter: { fileName: `.mutation/${folder}.json` },
    incremental: true,
    incrementalFile,
    // Stryker would rewrite it with a compiler's interface that TypeScript 7 no longer has; Vite needs no rewriting.
    tsconfigFile: 'none',
    tempDirName: '.mutation/sandbox',
  }).runMutationTest();
  const judged = mutants.filter(({ status }) => !['Ignored', 'CompileError'].includes(status));
  const found = judged.filter(({ status }) => ['Killed', 'Timeout', 'RuntimeError'].includes(status));
  scores.push({ folder, found: found.length, judged: judged.length });
}
for (const { folder, found, judged } of scores)
  console.log(`${folder}: ${found} of ${judged} faults found, ${((100 * found) / judged).toFixed(1)} %`);
if (scores.some(({ found, judged }) => found < LEAST * judged)) process.exitCode = 1;
