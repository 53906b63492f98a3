import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readInput } from '../../src/files/readInput.ts';

let where = '';
beforeAll(() => {
  where = mkdtempSync(join(tmpdir(), 'halfpin-'));
});
afterAll(() => rmSync(where, { recursive: true }));

const refusal = (...lines: string[]) => expect.objectContaining({ lines, status: 2 });

describe('readInput', () => {
  it('reads a file to its last byte', async () => {
    const bytes = Uint8Array.from({ length: 200_000 }, (_, i) => i % 251);
    writeFileSync(join(where, 'bytes'), bytes);
    expect(Buffer.from(bytes).equals(await readInput(join(where, 'bytes'), 'a plan'))).toBe(true);
    writeFileSync(join(where, 'empty'), '');
    expect(await readInput(join(where, 'empty'), 'a plan')).toHaveLength(0);
  });

  it('refuses a name that leads to no file, and says what it was to be', async () => {
    const path = join(where, 'nowhere');
    await expect(readInput(path, 'a plan')).rejects.toEqual(
      refusal(`${path}: there is no such file to read as a plan`),
    );
    writeFileSync(join(where, 'file'), '');
    const under = join(where, 'file', 'under');
    await expect(readInput(under, 'a plan')).rejects.toEqual(
      refusal(`${under}: there is no such file to read as a plan`),
    );
    await expect(readInput(where, 'a plan')).rejects.toEqual(
      refusal(`${where}: this is a folder, not a plan`),
    );
  });

  it('refuses what is larger than anyone writes', async () => {
    const large = join(where, 'large');
    writeFileSync(large, Buffer.alloc(16 * 1024 * 1024));
    const lengthOf = async (path: string) => (await readInput(path, 'a plan')).length;
    expect(await lengthOf(large)).toBe(16 * 1024 * 1024);
    writeFileSync(large, Buffer.alloc(16 * 1024 * 1024 + 1));
    await expect(lengthOf(large)).rejects.toEqual(
      refusal(`${large}: this holds more than 16 MB, so it is not a plan`),
    );
  });

  it('refuses a named pipe and a device at once, through a link too', async () => {
    const [pipe, link] = [join(where, 'pipe'), join(where, 'link')];
    spawnSync('mkfifo', [pipe]);
    symlinkSync('pipe', link);
    for (const path of [pipe, link])
      await expect(readInput(path, 'a plan')).rejects.toEqual(
        refusal(`${path}: this is a named pipe, not a plan`),
      );
    await expect(readInput('/dev/zero', 'a plan')).rejects.toEqual(
      refusal('/dev/zero: this is a device, not a plan'),
    );
  });

  it('names the folder that is not there', async () => {
    const path = join(where, 'no', 'such', 'plan.yaml');
    await expect(readInput(path, 'a plan')).rejects.toEqual(
      refusal(`${path}: there is no folder ${join(where, 'no')}, so no such file to read as a plan`),
    );
    await expect(readInput('', 'a plan')).rejects.toEqual(
      refusal('"": there is no such file to read as a plan'),
    );
  });
});
