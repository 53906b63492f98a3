import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { halfpin } from './program.ts';

const EXAMPLE = readFileSync('examples/haberdashery-chest-boards.yaml', 'utf8');
const README = readFileSync('README.md', 'utf8');
const [SECTION = ''] = /^## From your boards$[\s\S]*?(?=^## )/mu.exec(README) ?? [];
/** What the section shows as printed or typed, line by line. */
const shown = [...SECTION.matchAll(/^ {4}(.+)$/gmu)].map(([, line = '']) => line);

const where = mkdtempSync(join(tmpdir(), 'halfpin-'));
afterAll(() => rmSync(where, { recursive: true }));
const breakout = (plan: string) => {
  writeFileSync(join(where, 'plan.yaml'), plan);
  return halfpin(['breakout', 'plan.yaml', '--effort', '0.3'], where);
};

describe('what the README shows of boards', () => {
  it('is printed of figure that runs over two rows', () => {
    const [, list] = /`(runThrough: .*?)`/u.exec(SECTION) ?? [];
    const { status, out } = breakout(EXAMPLE.replace(/runThrough: .*/u, list ?? ''));
    expect(status).toBe(0);
    const rows = shown.filter((line) => line.startsWith('Row of'));
    expect(rows).toHaveLength(1);
    for (const row of rows) expect(out.split('\n')).toContain(row);
  });

  it('is said where boards are missing', () => {
    expect(SECTION).toContain('as without Cherry 2 and 3');
    const without = EXAMPLE.replace(/ {2}- name: Cherry 2[\s\S]*?(?= {2}- name: Ash 1)/u, '');
    const { status, err } = breakout(without);
    expect(status).toBe(3);
    const [first, ...rest] = err.trimEnd().split('\n');
    const at = shown.indexOf(first ?? '');
    expect(at).toBeGreaterThanOrEqual(0);
    expect(shown.slice(at, at + 1 + rest.length)).toEqual([first, ...rest]);
  });

  it('is taken as what has been cut', () => {
    const cut = shown.find((line) => line.startsWith('cut: '));
    const { status, out } = breakout(EXAMPLE.replace('    figure: left\n', `    figure: left\n    ${cut}\n`));
    expect(cut).toContain('cuts: [{');
    expect(status).toBe(0);
    // 77 from the left end of Cherry 1, whose check reaches to 80.
    expect(out).toContain('1  crosscut the board 77 from its left end');
  });
});
