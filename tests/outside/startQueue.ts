import { execFile, spawn } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { promisify } from 'node:util';

const execute = promisify(execFile);

const DRIVER = '/usr/share/ppd/cups-pdf/CUPS-PDF_opt.ppd';

export interface Queue {
  /** What programs need in their environment to find it. */
  readonly environment: Readonly<Record<string, string>>;
  /** Runs one of CUPS's programs; what it says. */
  readonly run: (program: string, ...args: string[]) => Promise<string>;
  /** Waits for every job to be done; the files that have come out so far, one a job, in the jobs' order. */
  readonly printed: () => Promise<string[]>;
  /** What CUPS says of its jobs. */
  readonly log: () => string;
  readonly stop: () => Promise<void>;
}

/**
 * Runs CUPS until standard input ends, and ends it by its id. The PDF queue's settings are read from `/etc/cups` only,
 * so they lie there for as long, under a name of their own; all else is in the folder.
 */
const RUN = `
set -e
folder=$1 settings=/etc/cups/cups-pdf-$2.conf
trap 'rm -rf "$folder" "$settings"' EXIT
cp "$folder/cups-pdf.conf" "$settings"
/usr/sbin/cupsd -t -c "$folder/cupsd.conf" -s "$folder/cups-files.conf" >&2
/usr/sbin/cupsd -f -c "$folder/cupsd.conf" -s "$folder/cups-files.conf" &
cat
kill $!
wait $!
`;

/** Everyone may do everything, through a socket in the folder: there is no port. */
const settingsOf = (folder: string): Readonly<Record<string, readonly string[]>> => ({
  'cupsd.conf': [
    `Listen ${folder}/cups.sock`,
    'LogLevel debug',
    'Browsing No',
    'WebInterface No',
    'DefaultAuthType None',
    '<Policy default>',
    '<Limit All>',
    'Order deny,allow',
    '</Limit>',
    '</Policy>',
  ],
  'cups-files.conf': [
    `ServerRoot ${folder}`,
    `CacheDir ${folder}/cache`,
    `StateDir ${folder}/state`,
    `RequestRoot ${folder}/spool`,
    `TempDir ${folder}/temporary`,
    `AccessLog ${folder}/access.log`,
    `ErrorLog ${folder}/error.log`,
    `PageLog ${folder}/page.log`,
  ],
  'cups-pdf.conf': [
    `Out ${folder}/printed`,
    `AnonDirName ${folder}/printed`,
    `Spool ${folder}/pdf-spool`,
    `Log ${folder}`,
    'UserUMask 0022',
  ],
});

/**
 * Starts a print queue of CUPS that prints to PDF files, for this process alone. It takes root, or sudo that asks
 * nothing, and Debian's printer-driver-cups-pdf, which `npm test` installs.
 */
export const startQueue = async (): Promise<Queue> => {
  const missing = ['/usr/sbin/cupsd', DRIVER].filter((file) => !existsSync(file));
  if (missing.length > 0)
    throw new Error(`${missing.join(' and ')} missing: npm test installs printer-driver-cups-pdf`);
  const folder = mkdtempSync(join(tmpdir(), 'halfpin-queue-'));
  // CUPS does its work as a user of its own.
  chmodSync(folder, 0o755);
  for (const name of ['printed', 'spool', 'temporary']) {
    mkdirSync(join(folder, name));
    chmodSync(join(folder, name), 0o777);
  }
  for (const [name, lines] of Object.entries(settingsOf(folder)))
    writeFileSync(join(folder, name), `${lines.join('\n')}\n`);

  const own = basename(folder);
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const [command = 'sh', ...rest] = [...asRoot, 'sh', '-c', RUN, 'sh', folder, own];
  const scheduler = spawn(command, rest, { stdio: ['pipe', 'ignore', 'pipe'] });
  let said = '';
  scheduler.stderr.on('data', (part) => {
    said += part;
  });
  const ended = new Promise<void>((resolve) => scheduler.on('close', () => resolve()));

  const environment = { CUPS_SERVER: join(folder, 'cups.sock') };
  const run: Queue['run'] = async (program, ...args) =>
    (await execute(program, args, { env: { ...process.env, ...environment } })).stdout;
  const patiently = async (what: string, done: () => Promise<boolean>): Promise<void> => {
    for (let tries = 0; !(await done()); tries++) {
      if (tries > 150 || scheduler.exitCode !== null) throw new Error(`${what}: ${said}`);
      await setTimeout(100);
    }
  };

  await patiently('CUPS does not start', async () => /is running/.test(await run('lpstat', '-r')));
  await run('/usr/sbin/lpadmin', '-p', 'PDF', '-E', '-v', `cups-pdf:/${own}`, '-P', DRIVER);

  const jobOf = (file: string): number => Number(/-job_(\d+)/.exec(file)?.[1]);
  return {
    environment,
    run,
    printed: async () => {
      await patiently('the jobs do not end', async () => (await run('lpstat', '-o')) === '');
      const files = readdirSync(join(folder, 'printed')).sort((a, b) => jobOf(a) - jobOf(b));
      return files.map((file) => join(folder, 'printed', file));
    },
    log: () => readFileSync(join(folder, 'error.log'), 'utf8'),
    stop: async () => {
      scheduler.stdin.end();
      await ended;
    },
  };
};
