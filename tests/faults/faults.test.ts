import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  BOARDS,
  ended,
  environment,
  filesIn,
  GUIDED,
  type Outcome,
  PLAN,
  PROGRAM,
  restore,
  run,
  runResident,
  type Scene,
  SEASONS,
  scene,
  started,
  stepsOf,
} from './scene.ts';

/** `npm run faults` tries every step; `npm test` some of them. */
const EVERY = process.env.HALFPIN_EVERY === 'yes';
/** Every test has folders of its own, and waits for the disk more than for anything else. */
const AT_ONCE = { timeout: EVERY ? 3_600_000 : 60_000, concurrent: true };

/** So many of the steps, first and last included; one alone lies in the middle, where something is half written. */
const some = (steps: number, most: number): number[] => {
  const all = Array.from({ length: steps }, (_, i) => i + 1);
  if (EVERY || steps <= most) return all;
  if (most === 1) return [Math.ceil(steps / 2)];
  return Array.from({ length: most }, (_, i) => 1 + Math.round(((steps - 1) * i) / (most - 1)));
};

/** Keeps a printer without an error. */
const SAVE_PRINTER = ['proof', '--measured-x', '150', '--measured-y', '200', '--save', 'office'];

/** One line that says what is wrong, and no trace of the program's inside. */
const mustSayInOneLine = ({ stderr }: Outcome, what: RegExp): void => {
  expect(stderr).toMatch(/^[^\n]+\n$/u);
  expect(stderr).toMatch(what);
  expect(stderr).not.toMatch(/ at .*:\d+:\d+|node:|\.part/u);
};

/** What writes: the command, and what a run before it left. */
const WRITERS: readonly {
  readonly name: string;
  readonly first?: (at: Scene) => string[];
  readonly args: (at: Scene) => string[];
  /** What is the user's once it is written, so that the same run again does not leave it as it is. */
  readonly once?: string;
  readonly kills: number;
  readonly full: number;
}[] = [
  {
    name: 'draw over older templates and guides',
    first: ({ out }) => ['draw', GUIDED, '--as', 'pdf,svg,dxf', '--bush', '15', '--out', out],
    args: ({ out }) => ['draw', GUIDED, '--as', 'pdf,svg,dxf', '--rods', '--out', out],
    kills: 3,
    full: 2,
  },
  {
    name: 'trial after an earlier one',
    first: ({ out }) => trial(out, '--slope', '1:8', '--loose', '0.3'),
    args: ({ out }) => trial(out, '--slope', '1:8', '--at', '1.2', '--tight', '0.1'),
    once: 'trials.log',
    kills: 2,
    full: 2,
  },
  {
    name: 'proof over an older proof',
    first: ({ out }) => ['proof', '--paper', 'A4', '--units', 'in', '--out', out],
    args: ({ out }) => ['proof', '--out', out],
    kills: 1,
    full: 1,
  },
  {
    name: 'proof --save',
    first: () => ['proof', '--measured-x', '149.4', '--measured-y', '200.6', '--save', 'office'],
    args: () => ['proof', '--measured-x', '150.3', '--measured-y', '199.7', '--save', 'copy shop'],
    kills: 3,
    full: 1,
  },
  {
    name: 'start',
    args: ({ out }) => ['start', join(out, 'plan.yaml')],
    once: 'plan.yaml',
    kills: 3,
    full: 1,
  },
  {
    name: 'compare over an older sheet',
    first: ({ out }) => ['compare', '--widths', '60,90', '--out', out],
    args: ({ out }) => ['compare', '--widths', '60,90,140', '--out', out],
    kills: 1,
    full: 1,
  },
  {
    name: 'season over an older sheet',
    first: ({ out }) => ['season', SEASONS, '--out', out, '--paper', 'A3'],
    args: ({ out }) => ['season', SEASONS, '--out', out],
    kills: 1,
    full: 1,
  },
  {
    name: 'breakout over older board sheets',
    first: ({ out }) => ['breakout', BOARDS, '--out', out, '--paper', 'A3'],
    args: ({ out }) => ['breakout', BOARDS, '--out', out],
    kills: 1,
    full: 1,
  },
  {
    name: 'page',
    args: ({ out }) => ['page', '--out', join(out, 'page.html')],
    kills: 1,
    full: 1,
  },
  {
    name: 'page as a site',
    args: ({ out }) => ['page', '--site', out],
    kills: 1,
    full: 1,
  },
];

const trial = (out: string, ...how: string[]): string[] => [
  'trial',
  ...how,
  '--log',
  join(out, 'trials.log'),
  '--out',
  out,
];

/** Both folders that a run may write to. */
const kept = ({ out, config }: Scene) => ({ out: filesIn(out), config: filesIn(config) });
type Kept = ReturnType<typeof kept>;

const sceneOf = ({ out, config }: Kept): Scene => {
  const at = scene();
  restore(at.out, out);
  restore(at.config, config);
  return at;
};

const mustBeOldOrNew = (now: Kept, old: Kept, next: Kept): void => {
  for (const key of ['out', 'config'] as const) {
    for (const [name, bytes] of now[key])
      expect([old[key].get(name), next[key].get(name)], `${name} is neither old nor new`).toContain(bytes);
    for (const name of old[key].keys()) expect(now[key].has(name), `${name} is lost`).toBe(true);
  }
};

/** What each of them finds, what it leaves, and in how many steps. */
const prepared = await Promise.all(
  WRITERS.map(async ({ first, ...writer }) => {
    const at = scene();
    if (first !== undefined) expect((await runResident(at, first(at))).stderr).toBe('');
    const old = kept(at);
    const steps = await stepsOf(at, writer.args(at));
    return { ...writer, old, steps, next: kept(at) };
  }),
);

describe.each(prepared)('$name', AT_ONCE, ({ args, once, kills, full, old, steps, next }) => {
  it('makes files, in steps that can be counted', () => {
    expect(steps).toBeGreaterThan(3);
    expect(next).not.toEqual(old);
  });

  it.each(some(steps, kills))(
    'killed at step %i leaves every file old or new, and does not stop the next run',
    async (step) => {
      const at = sceneOf(old);
      const env = { HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'kill' };
      expect((await run(at, args(at), { env })).signal).toBe('SIGKILL');
      mustBeOldOrNew(kept(at), old, next);
      const lock = join(at.config, 'printers.json.lock');
      // Left by a run that was killed some time ago.
      if (existsSync(lock)) utimesSync(lock, 0, 0);
      if (once !== undefined && kept(at).out.get(once) === next.out.get(once)) return;
      expect(await runResident(at, args(at))).toMatchObject({ status: 0, stderr: '' });
      expect(kept(at)).toEqual(next);
      // What the killed run left is cleared away by the run that succeeds.
      expect(hidden(at)).toEqual([]);
    },
  );

  it.each(some(steps, full))(
    'on a disk that is full from step %i on keeps the old files and says so',
    async (step) => {
      const at = sceneOf(old);
      const env = { HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'ENOSPC' };
      const outcome = await run(at, args(at), { env });
      mustBeOldOrNew(kept(at), old, next);
      if (outcome.status === 0) expect(kept(at)).toEqual(next);
      else {
        expect(outcome.status).toBe(1);
        mustSayInOneLine(outcome, /: the disk is full(?:; nothing that was kept before is changed)?$/mu);
      }
      expect(hidden(at)).toEqual([]);
    },
  );
});

/** What a run should have taken away again. */
const hidden = ({ out, config }: Scene): string[] =>
  [out, config].flatMap((folder) =>
    existsSync(folder) ? readdirSync(folder).filter((name) => /^\.|\.lock$/u.test(name)) : [],
  );

describe('draw', AT_ONCE, () => {
  const drawInto = (out: string): string[] => ['draw', GUIDED, '--as', 'pdf,svg,dxf', '--out', out];

  it('says in one line that its folder went away', async () => {
    const at = scene();
    const steps = await stepsOf(at, drawInto(at.out));
    for (const step of some(steps, 2)) {
      const outcome = await run(at, drawInto(at.out), {
        env: { HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'vanish', HALFPIN_FAULT_FOLDER: at.out },
      });
      // A folder that goes before it is needed again is made again.
      if (outcome.status !== 0) {
        expect(outcome.status).toBe(1);
        mustSayInOneLine(outcome, /: its folder does not exist$/mu);
      }
      expect(hidden(at)).toEqual([]);
    }
  });

  it('says in one line that its folder can only be read', async () => {
    const at = scene();
    mkdirSync(at.out, { mode: 0o555 });
    // What may be read only binds everyone but root.
    const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    spawnSync('chmod', ['755', at.root]);
    const outcome = await run(at, drawInto(at.out), nobody);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(
      outcome,
      /out\/button-box-templates\.pdf: this may not be read or written here; choose another --out$/mu,
    );
    expect(readdirSync(at.out)).toEqual([]);
  });

  it('says in one line that what should be its folder is a file, and leaves it', async () => {
    const at = scene();
    writeFileSync(at.out, 'mine');
    const outcome = await runResident(at, drawInto(at.out));
    expect(outcome.status).toBe(1);
    mustSayInOneLine(
      outcome,
      /(?:what should be a folder on the way is a file|a file where a folder should be); choose another --out$/mu,
    );
    expect(readFileSync(at.out, 'utf8')).toBe('mine');
  });

  it('twice at once into one folder leaves the files of one run', async () => {
    const at = scene();
    await runResident(at, drawInto(at.out));
    const alone = kept(at);
    restore(at.out, new Map());
    const both = await Promise.all([started(at, drawInto(at.out)), started(at, drawInto(at.out))].map(ended));
    expect(both.map(({ status, stderr }) => ({ status, stderr }))).toEqual([
      { status: 0, stderr: '' },
      { status: 0, stderr: '' },
    ]);
    expect(kept(at)).toEqual(alone);
    expect(hidden(at)).toEqual([]);
  });

  it('with its input closed draws as ever', async () => {
    const at = scene();
    const { status } = await shell(at, `draw "${PLAN}" --out "${at.out}" <&-`);
    expect(status).toBe(0);
    expect([...kept(at).out.keys()]).toEqual(['trinket-box-bench.pdf', 'trinket-box-templates.pdf']);
  });

  it('whose reader goes away still writes every file', async () => {
    const at = scene();
    await runResident(at, drawInto(at.out));
    const alone = kept(at);
    restore(at.out, new Map());
    const { stdout, stderr } = await shell(
      at,
      `draw "${GUIDED}" --as pdf,svg,dxf --out "${at.out}" | true; echo "status \${PIPESTATUS[0]}"`,
    );
    expect(stderr).toBe('');
    expect(stdout).toBe('status 0\n');
    expect(kept(at)).toEqual(alone);
  });

  it.each(EVERY ? (['SIGINT', 'SIGTERM', 'SIGHUP'] as const) : (['SIGINT'] as const))(
    'on %s takes away what is half written',
    async (signal) => {
      const at = scene();
      // Large enough to be still drawing when the signal comes.
      const plan = join(at.root, 'large.yaml');
      const corner = (i: number) =>
        `{name: C${i}, kind: through, width: ${200 + i}, tailBoard: 19, pinBoard: 19}`;
      writeFileSync(plan, `joints: [${Array.from({ length: 60 }, (_, i) => corner(i)).join(', ')}]\n`);
      const child = started(at, ['draw', plan, '--out', at.out]);
      while (!existsSync(at.out) || hidden(at).length === 0)
        await new Promise((resolve) => setTimeout(resolve, 5));
      child.kill(signal);
      const outcome = await ended(child);
      expect(outcome.signal).toBe(signal);
      mustSayInOneLine(outcome, /^halfpin: stopped\. No unfinished file was left\.$/mu);
      expect(readdirSync(at.out)).toEqual([]);
    },
  );
});

const shell = (at: Scene, line: string): Promise<Outcome> =>
  ended(
    spawn('bash', ['-c', `"${process.execPath}" "${PROGRAM}" ${line}`], {
      cwd: at.root,
      env: environment(at),
    }),
  );

/** Runs a line of bash, in which the program is `HALFPIN` and a plan `PLAN`. */
const script = (at: Scene, line: string): Promise<Outcome> =>
  ended(
    spawn(
      'bash',
      ['-c', line.replaceAll('HALFPIN', `"${process.execPath}" "${PROGRAM}"`).replaceAll('PLAN', PLAN)],
      { cwd: at.root, env: environment(at) },
    ),
  );

describe('numbers that cannot be shown', AT_ONCE, () => {
  it.each(['lay', 'parts', 'compare'])('of %s: a reader that goes away is no failure', async (command) => {
    const plan = 'examples/haberdashery-chest.yaml';
    const { stdout, stderr } = await shell(
      { ...scene(), root: process.cwd() },
      `${command} ${plan} | true; echo "status \${PIPESTATUS[0]}"`,
    );
    expect(stderr).toBe('');
    expect(stdout).toBe('status 0\n');
  });

  it.runIf(existsSync('/dev/full'))('on a full device are a failure of the device', async () => {
    const outcome = await shell(scene(), `schema > /dev/full`);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, /^halfpin: the disk is full$/mu);
  });

  it('leave the status where nobody listens to complaints', async () => {
    const { status, stdout } = await shell(scene(), 'lay nowhere.yaml 2>&-');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  });
});

describe('printers saved by many runs at once', AT_ONCE, () => {
  it('are all kept', async () => {
    const at = scene();
    const names = ['a', 'b', 'c', 'd'];
    const outcomes = await Promise.all(
      names.map((name) =>
        ended(started(at, ['proof', '--measured-x', '150', '--measured-y', '200', '--save', name])),
      ),
    );
    expect(outcomes.map(({ stderr }) => stderr)).toEqual(names.map(() => ''));
    const saved = JSON.parse(readFileSync(join(at.config, 'printers.json'), 'utf8'));
    expect(Object.keys(saved).sort()).toEqual(names);
  });
});

describe('what is read', AT_ONCE, () => {
  it.each([
    ['standard input', 'cat "PLAN" | HALFPIN lay -'],
    ['a file as standard input', 'HALFPIN lay - < "PLAN"'],
    ['standard input by its device', 'cat "PLAN" | HALFPIN lay /dev/stdin'],
    ['a pipe that is open already', 'HALFPIN lay <(cat "PLAN")'],
  ])('may be %s', async (_, line) => {
    const at = scene();
    const { status, stdout, stderr } = await script(at, line);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toBe((await runResident(at, ['lay', PLAN])).stdout);
  });

  it.each([
    ['a plan', ['lay', 'pipe'], /^pipe: this is a named pipe, not a plan; try /mu],
    ['a log', ['trial', '--slope', '1:8', '--loose', '0.3', '--log', 'pipe'], /pipe, not a log of trials$/mu],
    ['the printers', ['printers'], /printers\.json: this is a named pipe, not a file of printers$/mu],
  ])('is never a named pipe that nobody writes to, as %s', async (_, args, what) => {
    const at = scene();
    mkdirSync(at.config);
    spawnSync('mkfifo', [join(at.root, 'pipe'), join(at.config, 'printers.json')]);
    const outcome = await run(at, args);
    expect(outcome.status).toBe(2);
    mustSayInOneLine(outcome, what);
  });

  it.each(EVERY ? (['SIGINT', 'SIGTERM', 'SIGHUP'] as const) : (['SIGTERM'] as const))(
    'and never comes leaves the run to be ended by %s',
    async (signal) => {
      const child = started(scene(), ['lay', '-'], { stdio: ['pipe', 'pipe', 'pipe'] });
      await new Promise((resolve) => setTimeout(resolve, 1000));
      child.kill(signal);
      expect(await ended(child)).toEqual({ status: null, signal, stdout: '', stderr: '' });
    },
  );
});

describe('a print queue', AT_ONCE, () => {
  /** A scene with an `lp` of its own. */
  const withQueue = (text: string): readonly [Scene, NodeJS.ProcessEnv] => {
    const at = scene();
    mkdirSync(join(at.root, 'bin'));
    writeFileSync(join(at.root, 'bin', 'lp'), `#!/bin/sh\n${text}\n`, { mode: 0o755 });
    return [at, { PATH: `${join(at.root, 'bin')}:${process.env.PATH}` }];
  };

  it('that refuses is told last, when every file is written', async () => {
    const [at, env] = withQueue('echo "lp: Error - The printer does not exist." >&2; exit 1');
    const args = ['draw', GUIDED, '--as', 'pdf,svg,dxf', '--out', at.out];
    const { stdout } = await runResident(at, args);
    const written = kept(at);
    const outcome = await run(at, [...args, '--send', 'office'], { env });
    expect(outcome.status).toBe(1);
    expect(outcome.stdout).toBe(stdout);
    expect(
      outcome.stderr.match(/^--send: the queue "office" did not take .*\.pdf: The printer/gmu),
    ).toHaveLength([...written.out.keys()].filter((name) => name.endsWith('.pdf')).length);
    expect(kept(at)).toEqual(written);
  });

  it('that does not answer leaves the run to be ended', async () => {
    const [at, env] = withQueue('exec sleep 20');
    const child = started(at, ['draw', PLAN, '--out', at.out, '--send', 'office'], { env });
    await new Promise((resolve) =>
      child.stdout?.on('data', (text) => /at\s+100 %/u.test(text) && resolve(text)),
    );
    await new Promise((resolve) => setTimeout(resolve, 300));
    child.kill('SIGTERM');
    expect(await new Promise((resolve) => child.on('exit', (_, signal) => resolve(signal)))).toBe('SIGTERM');
    expect(hidden(at)).toEqual([]);
  });
});

describe('an output that is closed', AT_ONCE, () => {
  it.runIf(process.platform === 'linux').each(['lay "PLAN"', 'draw "PLAN"', '--help'])(
    'is a failure of %s',
    async (args) => {
      const outcome = await script(scene(), `HALFPIN ${args} >&-; exit $?`);
      expect(outcome.status).toBe(1);
      mustSayInOneLine(outcome, /^halfpin: the output is closed, so nothing could be shown$/mu);
    },
  );

  it('that may only be read is one too', async () => {
    const outcome = await script(scene(), 'HALFPIN lay "PLAN" 1< "PLAN"');
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, /^halfpin: the output is closed, or may only be read$/mu);
  });

  it.each([
    ['ignored', ['pipe', 'ignore', 'pipe'] as const],
    ['ignored, like the input', ['ignore', 'ignore', 'pipe'] as const],
  ])('is not one that is %s', async (_, stdio) => {
    const at = scene();
    expect(await run(at, ['lay', PLAN], { stdio: [...stdio] })).toMatchObject({ status: 0, stderr: '' });
    const below = spawn('sh', ['-c', `"${process.execPath}" "${PROGRAM}" lay "${PLAN}"; exit $?`], {
      stdio: [...stdio],
    });
    expect(await ended(below)).toMatchObject({ status: 0, stderr: '' });
    expect(await script(at, 'HALFPIN lay "PLAN" > /dev/null; exit $?')).toMatchObject({ status: 0 });
  });
});

describe('a lock that is never released', AT_ONCE, () => {
  it.runIf(EVERY)('is given up after half a minute', async () => {
    const at = scene();
    mkdirSync(at.config);
    const lock = join(at.config, 'printers.json.lock');
    // Whoever holds it is alive.
    const held = setInterval(() => writeFileSync(lock, 'mine'), 500);
    writeFileSync(lock, 'mine');
    const outcome = await run(at, SAVE_PRINTER);
    clearInterval(held);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, /^--save: another run has kept .*printers\.json\.lock for too long; remove /mu);
    expect(readFileSync(lock, 'utf8')).toBe('mine');
  });
});

describe('what is no file', AT_ONCE, () => {
  it.each(EVERY ? [[], ['--force']] : [['--force']])('is never written over, with %j', async (...force) => {
    const at = scene();
    mkdirSync(at.out);
    const [device, pipe] = [join(at.out, 'device'), join(at.out, 'pipe')];
    spawnSync('mkfifo', [pipe]);
    // Only root makes devices.
    const made = spawnSync('mknod', [device, 'c', '1', '3']).status === 0;
    if (!made) console.warn('no device could be made to try to write over');
    for (const path of made ? [device, pipe] : [pipe]) {
      const before = statSync(path).mode;
      const outcome = await run(at, ['page', '--out', path, ...force]);
      expect(outcome.status).toBe(2);
      mustSayInOneLine(outcome, /: this is a (?:device|named pipe), which is never written over; choose /mu);
      expect(statSync(path).mode).toBe(before);
    }
  });
});

describe('a limit of the system', AT_ONCE, () => {
  it.each([
    [
      'the size of a file',
      'ulimit -f 8; HALFPIN page --out page.html',
      /^page\.html: the file is larger than /mu,
    ],
    ['a name', `HALFPIN page --out ${'x'.repeat(300)}.html`, /: the name is too long for this disk$/mu],
    ['links', 'ln -s round round; HALFPIN lay round', /^round: the links on the way lead back /mu],
  ])('on %s is told in words', async (_, line, what) => {
    const at = scene();
    const outcome = await script(at, line);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, what);
    expect(readdirSync(at.root).filter((name) => /\.html$|\.part$/u.test(name))).toEqual([]);
  });

  it.each([
    ['EMFILE', 'too many files are open'],
    ['EDQUOT', 'your share of the disk is full'],
    ['EROFS', 'this disk can only be read; choose another --out'],
  ])('is told as it is where the system says %s', async (code, words) => {
    const at = scene();
    const env = { HALFPIN_FAULT_STEP: '2', HALFPIN_FAULT: code };
    const outcome = await run(at, ['draw', PLAN, '--out', at.out], { env });
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, new RegExp(`^${at.out}(?:/[^:]+)?: ${words}$`, 'mu'));
    expect(hidden(at)).toEqual([]);
  });
});

describe('draw --tidy', AT_ONCE, () => {
  const drawer = (name: string): string =>
    `  - {name: ${name}, opening: {width: 280, height: 76, depth: 420}}`;
  const plan = (...drawers: string[]): string =>
    [
      'name: A "set" & more',
      'stock: {front: {thickness: 20}, side: {thickness: 11}, back: {thickness: 11}, bottom: {thickness: 5}}',
      'groove: {offset: 11, width: 5, depth: 5}',
      'drawers:',
      ...drawers,
      '',
    ].join('\n');

  it('removes the pieces that the plan no longer makes; without it they are told', async () => {
    const at = scene();
    const path = join(at.root, 'plan.yaml');
    const draw = async (...options: string[]): Promise<string> => {
      const { status, stdout, stderr } = await runResident(at, [
        'draw',
        path,
        '--as',
        'svg',
        '--out',
        at.out,
        ...options,
      ]);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      return stdout;
    };
    const names = (): string[] => readdirSync(at.out).sort();
    writeFileSync(
      path,
      plan(drawer('Thread'), '  - {name: Tall, opening: {width: 280, height: 120, depth: 420}}'),
    );
    await draw();
    const all = names();
    const gone = all.filter((name) => name.startsWith('tall-'));
    expect(gone.length).toBeGreaterThan(3);
    // Another plan's piece, a copy by another name, one that is torn, and what only names the plan.
    expect((await runResident(at, ['draw', PLAN, '--as', 'svg', '--out', at.out])).status).toBe(0);
    const piece = readFileSync(join(at.out, gone[0] ?? ''), 'utf8');
    writeFileSync(join(at.out, 'copy.svg'), piece);
    writeFileSync(join(at.out, 'torn.svg'), piece.slice(0, 100));
    writeFileSync(join(at.out, 'notes.svg'), '<svg><desc>Written for plan "A \\"set\\" & more"</desc></svg>');
    const before = names();

    writeFileSync(path, plan(drawer('Thread')));
    // Drawn in part only, what the plan still makes is not told.
    const told = (await draw('--boards', 'pin')).match(/^.*or no longer.*$/gmu);
    expect(told).toEqual(
      gone.map(
        (name) =>
          `${join(at.out, name)}: this plan does not make this file, or no longer; add --tidy to remove it, unless another plan of this name made it`,
      ),
    );
    expect(names()).toEqual(before);
    const removed = (await draw('--tidy')).match(/^.*or no longer.*$/gmu);
    expect(removed).toEqual(
      gone.map((name) => `${join(at.out, name)}: removed; this plan does not make this file, or no longer`),
    );
    expect(names()).toEqual(before.filter((name) => !gone.includes(name)));
    expect(await draw('--tidy')).not.toMatch(/no longer/u);
  });

  it('removes the PDFs that a run leaves out of its set; without it they are told', async () => {
    const at = scene();
    const path = join(at.root, 'plan.yaml');
    writeFileSync(path, plan(drawer('Thread')));
    const draw = async (...options: string[]): Promise<string[]> => {
      const { status, stdout, stderr } = await run(at, ['draw', path, '--out', at.out, ...options]);
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
      return stdout.split('\n').filter((line) => line.includes('out of date'));
    };
    expect(await draw()).toEqual([]);
    // Neither those of a choice of its drawers, nor what somebody else calls so.
    expect(await draw('--only', 'Thread')).toEqual([]);
    const own = (kind: string): string => join(at.out, `a-set-more-${kind}.pdf`);
    writeFileSync(own('guides'), 'my own notes\n');
    const before = readdirSync(at.out).sort();
    const old = ['bench', 'comparison', 'cutting-list'].map(own);
    // What is drawn in another format leaves the PDFs as they are.
    expect(await draw('--as', 'svg', '--boards', 'pin')).toEqual([]);
    expect(await draw('--sheets', 'templates')).toEqual(
      old.map(
        (file) =>
          `${file}: this run did not draw it, so it may be out of date; add --tidy to remove it, unless another plan of this name made it`,
      ),
    );
    for (const name of before) expect(readdirSync(at.out)).toContain(name);
    expect(await draw('--sheets', 'templates', '--tidy')).toEqual(
      old.map((file) => `${file}: removed; this run did not draw it, so it may be out of date`),
    );
    for (const name of before) expect(existsSync(join(at.out, name))).toBe(!old.includes(join(at.out, name)));
    expect(readFileSync(own('guides'), 'utf8')).toBe('my own notes\n');
  });
});

describe('with a clock that is wrong', AT_ONCE, () => {
  it.each(EVERY ? ['1970-01-01', '2100-12-31'] : ['2100-12-31'])(
    'on %s printers and trials are kept',
    async (day) => {
      const at = scene();
      const env = { HALFPIN_FAULT_STEP: '0', HALFPIN_FAULT_DAY: day };
      mkdirSync(at.config);
      // A run that was killed left a lock, by a clock that was right.
      writeFileSync(join(at.config, 'printers.json.lock'), '');
      expect(await run(at, SAVE_PRINTER, { env })).toMatchObject({ status: 0, stderr: '' });
      const { stdout, status } = await run(at, ['printers'], { env });
      expect(status).toBe(0);
      expect(stdout).toContain(day);
      expect(stdout).toMatch(/ 0$/mu);
      // By a clock that is right again, the printer is as it was.
      expect((await run(at, ['printers'])).stdout).toContain(day);
      for (const args of [trial(at.out, '--slope', '1:8', '--loose', '0.3'), ['draw', PLAN, '--out', at.out]])
        expect(await run(at, args, { env })).toMatchObject({ status: 0, stderr: '' });
      expect(hidden(at)).toEqual([]);
    },
  );
});

describe('a file that halfpin did not make', AT_ONCE, () => {
  const MINE = 'my own notes\n';

  const mustLeaveMine = async (at: Scene, name: string, args: readonly string[]): Promise<void> => {
    mkdirSync(at.out);
    const path = join(at.out, name);
    writeFileSync(path, MINE);
    const refused = await runResident(at, [...args, '--out', at.out]);
    expect(refused.status).toBe(2);
    mustSayInOneLine(refused, /this file was not made by halfpin, so it is unchanged; choose .*--force$/mu);
    expect(readFileSync(path, 'utf8')).toBe(MINE);
    expect(readdirSync(at.out)).toEqual([name]);
  };

  it.each([
    ['draw', 'trinket-box-templates.pdf', ['draw', PLAN]],
    ['draw --as svg', 'box-corner-tail-board-a.svg', ['draw', PLAN, '--as', 'svg']],
    ['draw --as dxf', 'lid-guide-tails.dxf', ['draw', GUIDED, '--as', 'dxf']],
    ['trial', 'trial.svg', ['trial', '--slope', '1:8', '--loose', '0.3']],
  ])('is not written over by %s, unless it is forced', async (_, name, args) => {
    const at = scene();
    await mustLeaveMine(at, name, args);
    expect((await runResident(at, [...args, '--out', at.out, '--force'])).status).toBe(0);
    expect(readFileSync(join(at.out, name), 'utf8')).not.toBe(MINE);
    // Now it is halfpin's own.
    expect((await runResident(at, [...args, '--out', at.out])).status).toBe(0);
  });

  it.each([
    ['proof', 'proof-a4.pdf', ['proof']],
    ['compare', 'bare-widths-comparison.pdf', ['compare', '--widths', '60,90']],
    ['season', 'seasonal-haberdashery-chest-season.pdf', ['season', SEASONS]],
  ])('is not written over by %s', (_, name, args) => mustLeaveMine(scene(), name, args));

  it('is never written over by start, not even an empty one', async () => {
    const at = scene();
    const path = join(at.root, 'plan.yaml');
    writeFileSync(path, '');
    const refused = await runResident(at, ['start', path]);
    expect(refused.status).toBe(2);
    mustSayInOneLine(refused, /plan\.yaml: there is a file of this name already; choose another name$/mu);
    expect(readFileSync(path, 'utf8')).toBe('');
  });

  it('is not written over where the printers are kept, if it is damaged', async () => {
    const at = scene();
    mkdirSync(at.config);
    const path = join(at.config, 'printers.json');
    writeFileSync(path, '{"office": {');
    const refused = await runResident(at, SAVE_PRINTER);
    expect(refused.status).toBe(1);
    mustSayInOneLine(refused, /this file of printers is damaged, and is unchanged/u);
    expect(readFileSync(path, 'utf8')).toBe('{"office": {');
    expect(hidden(at)).toEqual([]);
  });
});
