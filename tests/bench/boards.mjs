// Breaking parts out of boards: how long it takes, and how good the layouts are, beside strips over whole boards and beside an
// exact recursion. Run by itself: node tests/bench/boards.mjs
import { spawn } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { BUNDLING, fromRoot } from '../../src/build/bundling.mjs';
import { conclude, heading, line, mb, ms, report } from './report.mjs';

/** What a process of its own finds out. */
const inside = (...args) =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['tests/bench/dist/boards.js', ...args], {
      cwd: fromRoot('.'),
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let text = '';
    child.stdout.on('data', (data) => {
      text += data;
    });
    child.on('close', (status) => {
      if (status === 0) resolve(JSON.parse(text));
      else reject(new Error(`boards ${args.join(' ')}: status ${status}`));
    });
  });

const sumOf = (some) =>
  Object.fromEntries(
    Object.keys(some[0]).map((key) => [key, some.reduce((sum, each) => sum + each[key], 0)]),
  );

/** A figure with no floor beside it. */
const tell = (name, value, ours = '') => report(name, ours, '', value);

export const measureBoards = async (quick) => {
  await build({
    ...BUNDLING,
    absWorkingDir: fromRoot('.'),
    entryPoints: { boards: 'tests/bench/boards.ts' },
    outdir: 'tests/bench/dist',
  });

  heading('Parts out of boards', '', 'figure');
  const chest = await inside('chest');
  tell('the example chest, first layout, in ms', chest.first);
  tell('the example chest, final layout, in ms', chest.all, `${chest.parts} parts`);

  heading('So many drawers from as many boards', 'memory', 'ms');
  const counts = quick ? [10, 20] : [5, 10, 20, 40, 80];
  const tables = [];
  for (const count of counts) {
    const found = await inside('drawers', count);
    tables.push(found);
    report(
      `${count} drawers from ${count} boards, in ms`,
      `${found.parts} parts`,
      mb(found.megabytes),
      found.all,
    );
    line('  boards cut into, and at least needed', '', `${found.boards}`, `${found.bound || '-'}`, '');
    line('  parts missing, and missing by strips', '', `${found.missing}`, `${found.plain}`, '');
  }

  // Two at a time: what is measured is the work of the processor.
  const [sets, many] = quick ? [10, 10] : [100, 100];
  const half = sets / 2;
  const [some, others, small] = await Promise.all([
    inside('floor', 1, half),
    inside('floor', half + 1, sets),
    inside('small', many),
  ]);
  const floor = sumOf([some, others]);
  heading('Random boards, against strips over whole boards', '', 'figure');
  line('sets, and milliseconds each', `${floor.sets}`, '', ms(floor.all / sets), '');
  tell('sets with more boards than strips', floor.worse);
  tell('boards fewer than by strips, in %', (100 * floor.fewer) / floor.sets);
  tell('points of yield over strips', (100 * floor.points) / floor.sets);
  line('sets proved, and boards over the proof', `${floor.proved}`, `${floor.above}`, '', '');
  tell('layouts that cannot be sawn', floor.faults + tables.reduce((sum, { faults }) => sum + faults, 0));
  const lacking = tables.reduce((sum, { missing, plain }) => sum + Math.max(0, missing - plain), 0);
  tell('parts missing that strips would give', lacking);

  heading('Small sets, against an exact recursion', '', 'figure');
  line('sets, and milliseconds each', `${small.sets}`, '', ms(small.all / small.sets), '');
  const share = 100 / small.sets;
  tell('small sets with as few boards as can be', small.same * share);
  tell('small sets with two boards too many', small.above);
  tell('small sets that lack a part', small.missed);
  tell('small sets proved', small.proved * share);
  tell('proofs that are wrong', small.wrong);
};

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  await measureBoards(process.argv.includes('--quick'));
  conclude();
}
