// `npm test`: what the tests need from Debian, then the types, the linter, the build and every test.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Programs that judge the output from outside, or files of theirs, and the Debian packages that bring them. */
const JUDGES = {
  pdftoppm: 'poppler-utils',
  qpdf: 'qpdf',
  mutool: 'mupdf-tools',
  '/usr/share/ppd/cups-pdf/CUPS-PDF_opt.ppd': 'printer-driver-cups-pdf',
  chromium: 'chromium',
  'firefox-esr': 'firefox-esr',
};

const run = (command, args, options = {}) => {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', ...options });
  if (error) throw error;
  if (status !== 0) {
    console.error(`npm test: ${[command, ...args].join(' ')} failed`);
    process.exit(status ?? 1);
  }
};

const has = (judge) =>
  judge.startsWith('/') ? existsSync(judge) : spawnSync('sh', ['-c', `command -v ${judge}`]).status === 0;

const missing = Object.entries(JUDGES).filter(([judge]) => !has(judge));
if (missing.length > 0) {
  const packages = missing.map(([, name]) => name);
  const install = `apt-get install -y --no-install-recommends ${packages.join(' ')}`;
  const root = process.getuid?.() === 0 ? [] : ['sudo'];
  if (!has('apt-get') || (root.length > 0 && !has('sudo'))) {
    console.error(
      `npm test: the tests read the output back with ${packages.join(', ')}; install them first.`,
    );
    console.error(`On Debian, as root: ${install}`);
    process.exit(1);
  }
  console.log(`Installing what the tests need from Debian: ${packages.join(', ')}`);
  const apt = (...args) => {
    const [command, ...rest] = [...root, 'apt-get', ...args];
    run(command, rest, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  };
  apt('update', '-qq');
  apt('install', '-y', '-qq', '--no-install-recommends', ...packages);
}

run('npx', ['tsc', '--noEmit']);
run('npx', ['biome', 'check', '--error-on-warnings', '.']);
run('npm', ['run', '--silent', 'build']);
const report = join(tmpdir(), `halfpin-tests-${process.pid}.json`);
const { status } = spawnSync(
  'npx',
  [
    'vitest',
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ],
  { stdio: 'inherit' },
);
const { numPassedTests, numFailedTests, numTotalTests, success } = JSON.parse(readFileSync(report, 'utf8'));
rmSync(report);
// A file that fails before its tests run counts as a failure too.
const failed = Math.max(numFailedTests, success && status === 0 ? 0 : 1);
const skipped = numTotalTests - numPassedTests - numFailedTests;
console.log(`${numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exit(failed === 0 ? 0 : 1);
