import { spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { CHEST, folder, halfpin, PROGRAM } from './program.ts';

const CORNER = ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--kind', 'lapped'];

/** The files of a folder with what they hold. */
const filesOf = (path: string): Map<string, string> =>
  new Map(readdirSync(path).map((name) => [name, readFileSync(join(path, name), 'latin1')]));

describe('what is written', () => {
  it('is complete though nobody reads the messages about it', () => {
    const where = folder();
    const { status, stdout, stderr } = spawnSync(
      'sh',
      [
        '-c',
        '"$0" "$@" | head -n 1',
        process.execPath,
        PROGRAM,
        'draw',
        ...CORNER,
        '--as',
        'pdf,svg',
        '--out',
        where,
      ],
      { encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout.split('\n')).toHaveLength(2);
    expect(readdirSync(where).sort()).toEqual([
      'corner-bench.pdf',
      'corner-pin-board-a.svg',
      'corner-pin-board-b.svg',
      'corner-tail-board-a.svg',
      'corner-tail-board-b.svg',
      'corner-templates.pdf',
    ]);
  });

  it('fails with exit 1 and one line where the disk does not accept it', () => {
    const where = folder();
    writeFileSync(join(where, 'file'), 'mine');
    const { status, err } = halfpin(['draw', ...CORNER, '--out', join('file', 'deeper')], where);
    expect(err).toMatch(/^file\/deeper: [^\n]+; choose another --out\n$/);
    expect(status).toBe(1);
    expect([...filesOf(where)]).toEqual([['file', 'mine']]);
    const full = spawnSync(
      'sh',
      ['-c', '"$0" "$@" > /dev/full', process.execPath, PROGRAM, 'lay', ...CORNER],
      {
        encoding: 'utf8',
      },
    );
    expect([full.status, full.stderr]).toEqual([1, 'halfpin: the disk is full\n']);
  });

  it('never overwrites a file that somebody else made, unless forced to', () => {
    const where = folder();
    const path = join(where, 'corner-templates.pdf');
    writeFileSync(path, 'my own notes');
    const { status, err } = halfpin(['draw', ...CORNER, '--out', where]);
    expect(status).toBe(2);
    expect(err).toBe(
      `${path}: this file was not made by halfpin, so it is unchanged; choose another --out, or add --force\n`,
    );
    expect(readFileSync(path, 'utf8')).toBe('my own notes');
    expect(halfpin(['draw', ...CORNER, '--out', where, '--force']).status).toBe(0);
    expect(readFileSync(path, 'latin1').slice(0, 5)).toBe('%PDF-');
    // Its own it draws anew.
    expect(halfpin(['draw', ...CORNER, '--out', where]).status).toBe(0);
    expect(readdirSync(where)).toEqual(['corner-bench.pdf', 'corner-templates.pdf']);
  });

  it('goes to templates-out where no folder is named', () => {
    const where = folder();
    const { out } = halfpin(['draw', ...CORNER, '--name', 'Tray & lid'], where);
    expect(out).toContain('templates-out/tray-lid-templates.pdf: 1 page of A4');
    expect(readdirSync(join(where, 'templates-out'))).toEqual([
      'tray-lid-bench.pdf',
      'tray-lid-templates.pdf',
    ]);
  });
});

/** The commands that a help text shows. */
const examplesIn = (help: string): string[] =>
  [...help.matchAll(/^ {2}(halfpin .+)$/gm)].map(([, line]) => line ?? '');

describe('the help', () => {
  const commands = [...halfpin(['--help']).out.matchAll(/^ {2}([a-z-]+)[ |]/gm)]
    .map(([, name]) => name ?? '')
    .filter((name) => name !== 'help');

  it('names every command', () => {
    expect(commands).toEqual(
      expect.arrayContaining(['draw', 'set-out', 'parts', 'movement', 'start', 'schema']),
    );
  });

  it.each(commands)('of %s has an example that runs as it stands', (command) => {
    const where = folder();
    cpSync('examples', join(where, 'examples'), { recursive: true });
    const { status, out } = halfpin([command, '--help']);
    expect(status).toBe(0);
    const examples = examplesIn(out);
    expect(examples.length).toBeGreaterThan(0);
    for (const example of examples) {
      // As a shell takes it: words, some in quotes, and perhaps a file for what is said.
      const [typed = ''] = example.split(/ > \S+$/u);
      const [, ...words] = [...typed.matchAll(/"([^"]*)"|\S+/gu)].map(([word, quoted]) => quoted ?? word);
      const { status, err } = halfpin(words, where, { HALFPIN_CONFIG_DIR: join(where, 'settings') });
      expect({ example, status, err }).toEqual({ example, status: 0, err: '' });
    }
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
});

describe('a closed pipe', () => {
  it('is no failure', () => {
    for (const args of [['lay', CHEST], ['parts', CHEST, '--json'], ['schema'], ['start']]) {
      const { status, stderr } = spawnSync(
        'bash',
        ['-c', '"$0" "$@" | head -n 1 > /dev/null; exit "$PIPESTATUS"', process.execPath, PROGRAM, ...args],
        { encoding: 'utf8' },
      );
      expect([args, status, stderr]).toEqual([args, 0, '']);
    }
  });
});

describe('start', () => {
  it.each(['mm', 'in'])('writes a plan in %s that can be drawn as it is', (units) => {
    const where = folder();
    expect(halfpin(['start', 'plan.yaml', '--units', units], where).status).toBe(0);
    const laid = halfpin(['lay', 'plan.yaml', '--json'], where);
    expect(laid.err).toBe('');
    expect(JSON.parse(laid.out).joints.length).toBeGreaterThan(0);
    expect(halfpin(['start', '--units', units], where).out).toBe(
      readFileSync(join(where, 'plan.yaml'), 'utf8'),
    );
  });
});

describe('a run that is broken off', () => {
  /** Starts a long run and ends it with a signal as soon as something is half written. */
  const brokenOff = async (where: string, signal: 'SIGTERM' | 'SIGKILL') => {
    const drawers = Array.from(
      { length: 20 },
      (_, i) => `  - {name: D${i}, opening: {width: 300, height: ${80 + i}, depth: 420}}`,
    );
    const stock =
      'front: {thickness: 20}, side: {thickness: 11}, back: {thickness: 11}, bottom: {thickness: 5}';
    writeFileSync(join(where, 'plan.yaml'), [`stock: {${stock}}`, 'drawers:', ...drawers, ''].join('\n'));
    const run = spawn(process.execPath, [PROGRAM, 'draw', 'plan.yaml', '--out', 'out'], { cwd: where });
    const out = join(where, 'out');
    const ended = new Promise<string | null>((resolve) => run.on('exit', (_, by) => resolve(by)));
    let err = '';
    run.stderr.on('data', (chunk) => {
      err += chunk;
    });
    while (
      !(existsSync(out) && readdirSync(out).some((name) => name.endsWith('.part'))) &&
      run.exitCode === null
    )
      await setTimeout(2);
    run.kill(signal);
    return { by: await ended, err };
  };

  it('removes what is half written, where it is asked to end', async () => {
    const where = folder();
    const { by, err } = await brokenOff(where, 'SIGTERM');
    expect([by, err]).toEqual(['SIGTERM', 'halfpin: stopped. No unfinished file was left.\n']);
    expect(readdirSync(join(where, 'out')).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('leaves nothing that looks whole and is not, where it is killed', async () => {
    const where = folder();
    const { by } = await brokenOff(where, 'SIGKILL');
    expect(by).toBe('SIGKILL');
    for (const [name, content] of filesOf(join(where, 'out')))
      if (!name.startsWith('.')) expect(content.trimEnd().endsWith('%%EOF')).toBe(true);
  });
});
