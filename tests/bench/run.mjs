// `npm run bench`: how long things take, beside floors that are measured in the same run and in turn with them. Ends with
// status 1 where anything is over its budget. Whole processes are timed by the clock on the wall, all else by the time
// that processors worked for it, the page by the clock too. `--quick` takes fewer rounds and smaller sets.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { BUNDLING } from '../../src/build/bundling.mjs';
import { measureHeap, measurePage } from '../page/speed.mjs';
import { measureBoards } from './boards.mjs';
import { chestOf } from './chest.mjs';
import { conclude, heading, line, mb, ms, report } from './report.mjs';
import { median } from './timing.mjs';

const QUICK = process.argv.includes('--quick');
const root = new URL('../..', import.meta.url);
const scratch = mkdtempSync(join(tmpdir(), 'halfpin-bench-'));
process.on('exit', () => rmSync(scratch, { recursive: true }));
const inScratch = (name) => join(scratch, name);

const run = (...args) => {
  const started = performance.now();
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  if (status !== 0) throw new Error(`node ${args.join(' ')}: ${stderr}`);
  return { ms: performance.now() - started, stdout, stderr };
};
/** How long a whole process takes. */
const cold = (...args) => ({ ms: run(...args).ms });
/** What a process finds out about itself. */
const inside = (...args) => JSON.parse(run('tests/bench/inside.mjs', ...args).stdout);
/** The most memory that a whole process takes, in MB. */
const peak = (...args) =>
  Number(
    run('--import', './tests/bench/peak.mjs', ...args)
      .stderr.split('\n')
      .at(-1),
  );
const raw = (...args) => JSON.parse(run('tests/bench/rawPdfkit.mjs', ...args).stdout);

/** Every measurement's median figures; they run in turn, so that a busy spell of the machine meets them all. */
const inTurn = (rounds, measurements) => {
  const found = measurements.map(() => []);
  for (let round = 0; round < rounds; round++)
    measurements.forEach((measure, i) => {
      found[i].push(measure());
    });
  return found.map((runs) =>
    Object.fromEntries(Object.keys(runs[0]).map((key) => [key, median(runs.map((each) => each[key]))])),
  );
};

run('src/build/build.mjs');
await build({
  ...BUNDLING,
  absWorkingDir: root.pathname,
  entryPoints: { engine: 'tests/bench/engine.ts' },
  outdir: 'tests/bench/dist',
});
writeFileSync(inScratch('ten.yaml'), JSON.stringify(chestOf(10)));

const CORNER = '--kind lapped --width 96 --tail-board 11 --pin-board 20'.split(' ');
const TEN = inScratch('ten.yaml');
const OUT = ['--out', inScratch('out')];
const COMMANDS = {
  'lay, one corner': ['lay', ...CORNER],
  'lay, ten drawers': ['lay', TEN],
  'parts, ten drawers': ['parts', TEN],
  'compare, bare widths': ['compare', '--widths', '60,90,140,200'],
  'compare, ten drawers': ['compare', TEN],
  start: ['start'],
  schema: ['schema'],
  'draw, one corner, PDF': ['draw', ...CORNER, ...OUT],
  'draw, one corner, SVG': ['draw', ...CORNER, '--as', 'svg', ...OUT],
  'draw, ten drawers, PDF': ['draw', TEN, ...OUT],
  'draw, the example chest, PDF': ['draw', 'examples/haberdashery-chest.yaml', ...OUT],
};
const halfpin = (args) => () => cold('dist/halfpin.js', ...args);
const [bare, ...colds] = inTurn(QUICK ? 5 : 11, [
  () => cold('-e', '0'),
  ...Object.values(COMMANDS).map(halfpin),
]);
heading('Cold start', 'node -e 0', 'ratio');
Object.keys(COMMANDS).forEach((name, i) => {
  report(name, ms(colds[i].ms), ms(bare.ms), colds[i].ms / bare.ms);
});

inside('corner', inScratch('corner.jsonl'));
const bareDraw = (...fonts) =>
  cold('tests/bench/rawPdfkit.mjs', inScratch('corner.jsonl'), inScratch('raw.pdf'), ...fonts);
const [corner, embedded, builtin] = inTurn(QUICK ? 5 : 11, [
  halfpin(COMMANDS['draw, one corner, PDF']),
  () => bareDraw(),
  () => bareDraw('builtin'),
]);
heading('Cold start of draw, one corner to PDF', 'bare pdfkit', 'ratio');
report('against the same embedded fonts', ms(corner.ms), ms(embedded.ms), corner.ms / embedded.ms);
report('against built-in fonts', ms(corner.ms), ms(builtin.ms), corner.ms / builtin.ms);

const [layouts, pdf, words, svg] = ['layouts', 'pdf', 'words', 'svg'].map((name) => inside(name));
const [first, empty] = inTurn(QUICK ? 1 : 5, [() => inside('firstSvg'), () => inside('firstSvg', 'empty')]);
heading('In process', 'floor', 'figure');
report('layouts a second', ms(layouts.ours), '', 1000 / layouts.ours);
report('a layout, to its bare formulas', ms(layouts.ours), ms(layouts.floor), layouts.ours / layouts.floor);
report('a piece as PDF, to bare pdfkit', ms(pdf.ours), ms(pdf.floor), pdf.ours / pdf.floor);
report('its words as PDF, to bare pdfkit', ms(words.ours), ms(words.floor), words.ours / words.floor);
report('a piece as SVG, to plain strings', ms(svg.ours), ms(svg.floor), svg.ours / svg.floor);
report('the first piece as SVG, to an empty one', ms(first.ms), ms(empty.ms), first.ms / empty.ms);

const SIZES = [10, 100, 1000, 2000];
const sets = inTurn(
  QUICK ? 1 : 3,
  SIZES.map((size) => () => inside('set', size)),
);
heading('Layout and parts of a set', 'its corners', 'ratio');
SIZES.forEach((size, i) => {
  report(
    `${size} drawers, to their corners`,
    ms(sets[i].ours),
    ms(sets[i].floor),
    sets[i].ours / sets[i].floor,
  );
});
const [, , thousand, twoThousand] = sets;
report('2000 drawers, to 1000', ms(twoThousand.ours), ms(thousand.ours), twoThousand.ours / thousand.ours);

const templates = (size) => inside('templates', size, inScratch('templates.pdf'));
const floorOf = (size) => {
  const pages = inScratch(`${size}.jsonl`);
  inside('pages', size, pages);
  return () => raw(pages, inScratch('raw.pdf'));
};
heading('Templates of a set as PDF', 'bare pdfkit', 'ratio');
let largest;
for (const size of QUICK ? [10, 100] : [10, 100, 1000]) {
  const [ours, floor] = inTurn(QUICK ? 1 : 3, [() => templates(size), floorOf(size)]);
  report(`${size} drawers, time`, ms(ours.ms), ms(floor.ms), ours.ms / floor.ms);
  report(
    `${size} drawers, memory`,
    mb(ours.megabytes),
    mb(floor.megabytes),
    ours.megabytes / floor.megabytes,
  );
  largest = { size, ...ours };
}
heading('The same, as a set grows', 'smaller set', 'ratio');
{
  const size = QUICK ? 200 : 2000;
  const more = templates(size);
  const name = `${size} drawers, to ${largest.size}`;
  report(`${name}, time`, ms(more.ms), ms(largest.ms), more.ms / largest.ms);
  report(`${name}, memory`, mb(more.megabytes), mb(largest.megabytes), more.megabytes / largest.megabytes);
}

heading('The whole program, a large plan', 'drawers', 'MB');
{
  const size = QUICK ? 250 : 2000;
  const plan = inScratch('large.yaml');
  writeFileSync(plan, JSON.stringify(chestOf(size)));
  for (const format of ['pdf', 'svg']) {
    const most = peak('dist/halfpin.js', 'draw', plan, '--as', format, '--out', inScratch(`large-${format}`));
    report(`draw --as ${format}, memory in MB`, '', `${size}`, most);
  }
}

// A browser is many processes, and what else the machine does can only slow it: the best of some visits counts.
for (const drawers of [12, 60]) {
  const visits = [];
  for (let round = 0; round < (QUICK ? 1 : 3); round++) visits.push(await measurePage(drawers));
  const best = (figureOf) => Math.min(...visits.map(figureOf));
  heading(`The page in Chromium, ${drawers} drawers`, '', 'figure');
  if (drawers === 12) {
    report(
      'first paint, in ms',
      '',
      '',
      best(({ firstPaint }) => firstPaint),
    );
    report(
      'kB gzipped, before sheets',
      '',
      '',
      best(({ kilobytes }) => kilobytes),
    );
  }
  report(
    `${drawers} drawers, longest freeze in ms`,
    '',
    '',
    best(({ freeze }) => freeze),
  );
  const { hundred, thousand } = await measureHeap(drawers);
  report(`${drawers} drawers, heap after 1000 edits`, mb(thousand), mb(hundred), thousand / hundred);
  for (const [pace, of] of Object.entries({ 'full speed': 'gestures', 'a fourth': 'slowed' })) {
    heading(`${drawers} drawers, at ${pace}: a move, painted`, 'half under', '95 % under');
    const names = Object.keys(visits[0][of]);
    const least = (name, key) => best((visit) => visit[of][name][key]);
    for (const name of names) line(name, '', ms(least(name, 'p50')), ms(least(name, 'p95')), '');
    const worst = (key) => Math.max(...names.map((name) => least(name, key)));
    report(`${drawers} drawers, at ${pace}, ms`, '', '', worst('p95'));
    report(`${drawers} drawers, at ${pace}, processor`, '', '', worst('worked'));
  }
}

await measureBoards(QUICK);

conclude();
