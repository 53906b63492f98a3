import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { removeTempFiles } from '../../src/files/unfinished.ts';
import { ensureFolder, writeWhole } from '../../src/files/writeWhole.ts';

let where = '';
beforeEach(() => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
});
afterEach(() => rmSync(where, { recursive: true }));

describe('writeWhole', () => {
  it('writes what it is given, part by part, into folders that it makes', async () => {
    const path = join(where, 'a', 'b', 'plan.pdf');
    await writeWhole(path, async (write) => {
      await write('one ');
      await write(new TextEncoder().encode('two'));
    });
    expect(readFileSync(path, 'utf8')).toBe('one two');
    expect(readdirSync(join(where, 'a', 'b'))).toEqual(['plan.pdf']);
  });

  it('leaves what was there until all is written', async () => {
    const path = join(where, 'plan.pdf');
    writeFileSync(path, 'old');
    await writeWhole(path, async (write) => {
      await write('new');
      expect(readFileSync(path, 'utf8')).toBe('old');
      // What is half written is hidden, and no PDF.
      expect(readdirSync(where).filter((name) => name !== 'plan.pdf')).toEqual([
        expect.stringMatching(/^\..*\.part$/),
      ]);
    });
    expect(readFileSync(path, 'utf8')).toBe('new');
  });

  it('leaves nothing of its own where writing fails, and says why', async () => {
    const path = join(where, 'plan.pdf');
    writeFileSync(path, 'old');
    const fault = new Error('no more paper');
    await expect(
      writeWhole(path, async (write) => {
        await write('half');
        throw fault;
      }),
    ).rejects.toBe(fault);
    expect(readdirSync(where)).toEqual(['plan.pdf']);
    expect(readFileSync(path, 'utf8')).toBe('old');
  });

  it('does not replace a folder', async () => {
    mkdirSync(join(where, 'plan.pdf', 'mine'), { recursive: true });
    await expect(writeWhole(join(where, 'plan.pdf'), (write) => write('new'))).rejects.toMatchObject({
      code: 'EISDIR',
    });
    expect(readdirSync(where)).toEqual(['plan.pdf']);
  });
});

describe('removeTempFiles', () => {
  it('removes what is half written, and no more', async () => {
    await writeWhole(join(where, 'done.pdf'), (write) => write('done'));
    const broken = writeWhole(join(where, 'half.pdf'), async (write) => {
      await write('half');
      removeTempFiles();
      expect(readdirSync(where)).toEqual(['done.pdf']);
    });
    await expect(broken).rejects.toMatchObject({ code: 'ENOENT' });
    expect(readdirSync(where)).toEqual(['done.pdf']);
  });
});

describe('ensureFolder', () => {
  it('makes a folder and those above it, and is content with one that is there', async () => {
    await ensureFolder(join(where, 'a', 'b', 'c'));
    await ensureFolder(join(where, 'a', 'b'));
    expect(readdirSync(join(where, 'a', 'b'))).toEqual(['c']);
  });

  it('fails where a file is in the way', async () => {
    writeFileSync(join(where, 'file'), '');
    await expect(ensureFolder(join(where, 'file'))).rejects.toMatchObject({ code: 'EEXIST' });
    await expect(ensureFolder(join(where, 'file', 'deeper'))).rejects.toMatchObject({ code: 'ENOTDIR' });
  });
});
