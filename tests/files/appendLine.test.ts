import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { appendLine } from '../../src/files/appendLine.ts';
import { folder } from '../cli/program.ts';

describe('appendLine', () => {
  it('makes the file and its folder where they are not there, and adds to it where it is', async () => {
    const path = join(folder(), 'deep', 'down', 'log');
    await appendLine(path, 'one\n');
    await appendLine(path, 'two\n');
    expect(readFileSync(path, 'utf8')).toBe('one\ntwo\n');
  });

  it('loses no line where several are added at once', async () => {
    const path = join(folder(), 'log');
    const lines = Array.from({ length: 40 }, (_, i) => `line ${i}\n`);
    await Promise.all(lines.map((line) => appendLine(path, line)));
    expect(readFileSync(path, 'utf8').split('\n').sort()).toEqual(
      ['', ...lines.map((line) => line.trimEnd())].sort(),
    );
  });
});
