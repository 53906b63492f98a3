import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { clearLeftovers, tempFileIn } from '../../src/files/tempFiles.ts';
import { takeFolders, withTempFile } from '../../src/files/unfinished.ts';
import { writeWhole } from '../../src/files/writeWhole.ts';

let where = '';
beforeEach(() => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
});
afterEach(() => rmSync(where, { recursive: true }));

/** The number of a process that has ended. */
const ended = (): number => spawnSync('true').pid;
const own = (): string => tempFileIn(where);
const ofProcess = (pid: number): string => own().replace(`-${process.pid}-`, `-${pid}-`);
const elsewhere = (): string => own().replace(/\.halfpin-[0-9a-f]{8}-/u, '.halfpin-00000000-');

describe('tempFileIn', () => {
  it('gives a name that is never the same, hidden and short', () => {
    const names = new Set(Array.from({ length: 100 }, own));
    expect(names.size).toBe(100);
    for (const name of names) expect(basename(name)).toMatch(/^\.halfpin-.{40,60}\.part$/u);
  });
});

describe('clearLeftovers', () => {
  const leave = (...paths: string[]): string[] => {
    for (const path of paths) writeFileSync(path, 'half');
    return paths.map((path) => basename(path)).sort();
  };

  it('clears away what processes left that are no longer there, and nothing else', async () => {
    leave(ofProcess(ended()), own());
    const kept = leave(ofProcess(process.ppid), elsewhere(), join(where, '.mine.part'), `${own()}.txt`);
    symlinkSync('mine', ofProcess(ended()));
    await writeWhole(join(where, 'done.pdf'), (write) => write('done'));
    await clearLeftovers(takeFolders());
    const left = readdirSync(where, { withFileTypes: true }).filter((entry) => entry.isFile());
    expect(left.map(({ name }) => name).sort()).toEqual([...kept, 'done.pdf'].sort());
  });

  it('clears away what other machines left, after a day by the clock of the disk', async () => {
    const [old = '', young = ''] = [elsewhere(), elsewhere()];
    leave(old, young);
    const now = Date.now() / 1000;
    utimesSync(old, now, now - 25 * 3600);
    utimesSync(young, now, now - 23 * 3600);
    await writeWhole(join(where, 'done.pdf'), (write) => write('done'));
    await clearLeftovers(takeFolders());
    expect(readdirSync(where).sort()).toEqual([basename(young), 'done.pdf'].sort());
  });

  it('leaves what this run is writing', async () => {
    const path = own();
    leave(path);
    await withTempFile(path, () => clearLeftovers(takeFolders()));
    expect(readdirSync(where)).toEqual([basename(path)]);
  });
});
