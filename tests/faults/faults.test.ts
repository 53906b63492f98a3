import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  environment,
  filesIn,
  type Outcome,
  PLAN,
  PROGRAM,
  restore,
  run,
  type Scene,
  SEASONS,
  scene,
  stepsOf,
} from './scene.ts';

/** `npm run faults` tries every step; `npm test` some of them, first and last included. */
const EVERY = process.env.HALFPIN_EVERY === 'yes';
const PATIENCE = { timeout: EVERY ? 3_600_000 : 60_000 };

const some = (steps: number, most: number): number[] => {
  const all = Array.from({ length: steps }, (_, i) => i + 1);
  if (EVERY || steps <= most) return all;
  return all.filter((step) => step === steps || (step - 1) % Math.ceil(steps / (most - 1)) === 0);
};

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
  readonly tried: number;
}[] = [
  {
    name: 'draw over older templates',
    first: ({ out }) => ['draw', PLAN, '--as', 'pdf,svg', '--paper', 'A3', '--out', out],
    args: ({ out }) => ['draw', PLAN, '--as', 'pdf,svg', '--rods', '--out', out],
    tried: 4,
  },
  {
    name: 'proof over an older proof',
    first: ({ out }) => ['proof', '--paper', 'A4', '--units', 'in', '--out', out],
    args: ({ out }) => ['proof', '--out', out],
    tried: 2,
  },
  {
    name: 'proof --save',
    first: () => ['proof', '--measured-x', '179.3', '--measured-y', '240.7', '--save', 'office'],
    args: () => ['proof', '--measured-x', '180.3', '--measured-y', '239.7', '--save', 'copy shop'],
    tried: 4,
  },
  {
    name: 'start',
    args: ({ out }) => ['start', join(out, 'plan.yaml')],
    tried: 4,
  },
  {
    name: 'compare over an older sheet',
    first: ({ out }) => ['compare', '--widths', '60,90', '--out', out],
    args: ({ out }) => ['compare', '--widths', '60,90,140', '--out', out],
    tried: 2,
  },
  {
    name: 'season over an older sheet',
    first: ({ out }) => ['season', SEASONS, '--out', out, '--paper', 'A3'],
    args: ({ out }) => ['season', SEASONS, '--out', out],
    tried: 2,
  },
  {
    name: 'page',
    args: ({ out }) => ['page', '--out', join(out, 'page.html')],
    tried: 2,
  },
];

/** Both folders that a run may write to. */
const kept = ({ out, config }: Scene) => ({ out: filesIn(out), config: filesIn(config) });
type Kept = ReturnType<typeof kept>;

const mustBeOldOrNew = (now: Kept, old: Kept, next: Kept): void => {
  for (const key of ['out', 'config'] as const) {
    for (const [name, bytes] of now[key])
      expect([old[key].get(name), next[key].get(name)], `${name} is neither old nor new`).toContain(bytes);
    for (const name of old[key].keys()) expect(now[key].has(name), `${name} is lost`).toBe(true);
  }
};

describe.each(WRITERS)('$name', PATIENCE, ({ first, args, tried }) => {
  const at = scene();
  if (first !== undefined) expect(run(at, first(at)).stderr).toBe('');
  const old = kept(at);
  const steps = stepsOf(at, args(at));
  const next = kept(at);
  const again = (env: NodeJS.ProcessEnv): Outcome => {
    restore(at.out, old.out);
    restore(at.config, old.config);
    return run(at, args(at), { env });
  };

  it('makes files, in steps that can be counted', () => {
    expect(steps).toBeGreaterThan(3);
    expect(next).not.toEqual(old);
  });

  it.each(some(steps, tried))(
    'killed at step %i leaves every file old or new, and does not stop the next run',
    (step) => {
      const { signal } = again({ HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'kill' });
      expect(signal).toBe('SIGKILL');
      mustBeOldOrNew(kept(at), old, next);
      const lock = join(at.config, 'printers.json.lock');
      // Left by a run that was killed some time ago.
      if (existsSync(lock)) utimesSync(lock, 0, 0);
      // What start wrote is the user's now.
      if (args(at)[0] === 'start' && kept(at).out.size > 0) return;
      expect(run(at, args(at))).toMatchObject({ status: 0, stderr: '' });
      expect(kept(at)).toEqual(next);
    },
  );

  it.each(some(steps, Math.ceil(tried / 2)))(
    'on a disk that is full from step %i on keeps the old files and says so',
    (step) => {
      const outcome = again({ HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'ENOSPC' });
      mustBeOldOrNew(kept(at), old, next);
      if (outcome.status === 0) expect(kept(at)).toEqual(next);
      else {
        expect(outcome.status).toBe(1);
        mustSayInOneLine(outcome, /: the disk is full$/mu);
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

describe('draw', PATIENCE, () => {
  const drawInto = (out: string): string[] => ['draw', PLAN, '--as', 'pdf,svg', '--out', out];

  it('says in one line that its folder went away', () => {
    const at = scene();
    const steps = stepsOf(at, drawInto(at.out));
    for (const step of some(steps, 4)) {
      const outcome = run(at, drawInto(at.out), {
        env: { HALFPIN_FAULT_STEP: String(step), HALFPIN_FAULT: 'vanish', HALFPIN_FAULT_FOLDER: at.out },
      });
      // A folder that goes before it is needed again is made again.
      if (outcome.status !== 0) {
        expect(outcome.status).toBe(1);
        mustSayInOneLine(outcome, /: its folder is not there, or no longer$/mu);
      }
      expect(hidden(at)).toEqual([]);
    }
  });

  it('says in one line that its folder can only be read', () => {
    const at = scene();
    mkdirSync(at.out, { mode: 0o555 });
    // What may be read only binds everyone but root.
    const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    spawnSync('chmod', ['755', at.root]);
    const outcome = run(at, drawInto(at.out), nobody);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, /out\/trinket-box-templates\.pdf: this may not be read or written here$/mu);
    expect(readdirSync(at.out)).toEqual([]);
  });

  it('says in one line that what should be its folder is a file, and leaves it', () => {
    const at = scene();
    writeFileSync(at.out, 'mine');
    const outcome = run(at, drawInto(at.out));
    expect(outcome.status).toBe(1);
    mustSayInOneLine(
      outcome,
      /what should be a folder on the way is a file|a file where a folder should be/u,
    );
    expect(readFileSync(at.out, 'utf8')).toBe('mine');
  });

  it('twice at once into one folder leaves the files of one run', async () => {
    const at = scene();
    run(at, drawInto(at.out));
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

  it('with its input closed draws as ever', () => {
    const at = scene();
    const { status } = shell(at, `draw "${PLAN}" --out "${at.out}" <&-`);
    expect(status).toBe(0);
    expect([...kept(at).out.keys()]).toEqual(['trinket-box-templates.pdf']);
  });

  it('whose reader goes away still writes every file', () => {
    const at = scene();
    run(at, drawInto(at.out));
    const alone = kept(at);
    restore(at.out, new Map());
    const { stdout, stderr } = shell(
      at,
      `draw "${PLAN}" --as pdf,svg --out "${at.out}" | true; echo "status \${PIPESTATUS[0]}"`,
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
      writeFileSync(plan, `joints: [${Array.from({ length: 300 }, (_, i) => corner(i)).join(', ')}]\n`);
      const child = started(at, ['draw', plan, '--out', at.out]);
      while (!existsSync(at.out) || hidden(at).length === 0)
        await new Promise((resolve) => setTimeout(resolve, 5));
      child.kill(signal);
      const outcome = await ended(child);
      expect(outcome.status).toBe({ SIGINT: 130, SIGTERM: 143, SIGHUP: 129 }[signal]);
      mustSayInOneLine(outcome, /^halfpin: broken off; nothing is left half written$/mu);
      expect(readdirSync(at.out)).toEqual([]);
    },
  );
});

const started = (at: Scene, args: readonly string[]): ChildProcess =>
  spawn(process.execPath, [PROGRAM, ...args], { cwd: at.root, env: environment(at) });

const ended = (child: ChildProcess): Promise<Outcome> =>
  new Promise((resolve) => {
    let [stdout, stderr] = ['', ''];
    child.stdout?.on('data', (chunk) => (stdout += chunk));
    child.stderr?.on('data', (chunk) => (stderr += chunk));
    child.on('close', (status, signal) => resolve({ status, signal, stdout, stderr }));
  });

const shell = (at: Scene, line: string): Outcome => {
  const { status, signal, stdout, stderr } = spawnSync(
    'bash',
    ['-c', `"${process.execPath}" "${PROGRAM}" ${line}`],
    { cwd: at.root, encoding: 'utf8', env: environment(at) },
  );
  return { status, signal, stdout, stderr };
};

describe('numbers that cannot be shown', PATIENCE, () => {
  it.each(['lay', 'parts', 'compare'])('of %s: a reader that goes away is no failure', (command) => {
    const plan = 'examples/haberdashery-chest.yaml';
    const { stdout, stderr } = shell(
      { ...scene(), root: process.cwd() },
      `${command} ${plan} | true; echo "status \${PIPESTATUS[0]}"`,
    );
    expect(stderr).toBe('');
    expect(stdout).toBe('status 0\n');
  });

  it.runIf(existsSync('/dev/full'))('on a full device are a failure of the device', () => {
    const outcome = shell(scene(), `schema > /dev/full`);
    expect(outcome.status).toBe(1);
    mustSayInOneLine(outcome, /^halfpin: the disk is full$/mu);
  });

  it('leave the status where nobody listens to complaints', () => {
    const { status, stdout } = shell(scene(), 'lay nowhere.yaml 2>&-');
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  });
});

describe('printers saved by many runs at once', PATIENCE, () => {
  it('are all kept', async () => {
    const at = scene();
    const names = ['a', 'b', 'c', 'd'];
    const outcomes = await Promise.all(
      names.map((name) =>
        ended(started(at, ['proof', '--measured-x', '180', '--measured-y', '240', '--save', name])),
      ),
    );
    expect(outcomes.map(({ stderr }) => stderr)).toEqual(names.map(() => ''));
    const saved = JSON.parse(readFileSync(join(at.config, 'printers.json'), 'utf8'));
    expect(Object.keys(saved).sort()).toEqual(names);
  });
});

describe('a file that halfpin did not make', PATIENCE, () => {
  const MINE = 'my own notes\n';

  it.each([
    ['draw', 'trinket-box-templates.pdf', ['draw', PLAN]],
    ['draw --as svg', 'box-corner-tail-board-a.svg', ['draw', PLAN, '--as', 'svg']],
    ['proof', 'proof-a4.pdf', ['proof']],
    ['compare', 'bare-widths-comparison.pdf', ['compare', '--widths', '60,90']],
    ['season', 'seasonal-haberdashery-chest-season.pdf', ['season', SEASONS]],
  ])('is not written over by %s, unless it is forced', (_, name, args) => {
    const at = scene();
    mkdirSync(at.out);
    const path = join(at.out, name);
    writeFileSync(path, MINE);
    const refused = run(at, [...args, '--out', at.out]);
    expect(refused.status).toBe(2);
    mustSayInOneLine(refused, /this file was not made by halfpin, so it is left as it is; try .*--force$/mu);
    expect(readFileSync(path, 'utf8')).toBe(MINE);
    expect(readdirSync(at.out)).toEqual([name]);
    expect(run(at, [...args, '--out', at.out, '--force']).status).toBe(0);
    expect(readFileSync(path, 'utf8')).not.toBe(MINE);
    // Now it is halfpin's own.
    expect(run(at, [...args, '--out', at.out]).status).toBe(0);
  });

  it('is never written over by start, not even an empty one', () => {
    const at = scene();
    const path = join(at.root, 'plan.yaml');
    writeFileSync(path, '');
    const refused = run(at, ['start', path]);
    expect(refused.status).toBe(2);
    mustSayInOneLine(refused, /plan\.yaml: there is a file of this name already; try another name$/mu);
    expect(readFileSync(path, 'utf8')).toBe('');
  });

  it('is not written over where the printers are kept, if it is damaged', () => {
    const at = scene();
    mkdirSync(at.config);
    const path = join(at.config, 'printers.json');
    writeFileSync(path, '{"office": {');
    const refused = run(at, ['proof', '--measured-x', '180', '--measured-y', '240', '--save', 'office']);
    expect(refused.status).toBe(1);
    mustSayInOneLine(refused, /this file of printers is damaged; it has been left as it is/u);
    expect(readFileSync(path, 'utf8')).toBe('{"office": {');
    expect(hidden(at)).toEqual([]);
  });
});
