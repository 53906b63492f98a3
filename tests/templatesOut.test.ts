import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const drawn = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(drawn, { recursive: true }));

describe('templates-out', () => {
  it('holds what the program draws of the first example, byte for byte; npm start draws it anew', () => {
    execFileSync(process.execPath, [
      'dist/halfpin.js',
      ...['draw', 'examples/haberdashery-chest.yaml', '--as', 'pdf,svg', '--out', drawn],
    ]);
    expect(readdirSync('templates-out').sort()).toEqual(readdirSync(drawn).sort());
    const differing = readdirSync(drawn).filter(
      (file) => !readFileSync(join(drawn, file)).equals(readFileSync(join('templates-out', file))),
    );
    expect(differing).toEqual([]);
  });
});
