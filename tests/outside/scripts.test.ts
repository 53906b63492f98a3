// Names in scripts that run from right to left, and in a font that the user chooses, read back by poppler and by mupdf.

import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folder, halfpin } from '../cli/program.ts';
import { fontWith } from '../render/letters/fontWith.ts';

const plan = (name: string, ...drawers: readonly string[]): string => `name: ${name}
stock: {front: {thickness: 20}, side: {thickness: 11}}
drawers:
${drawers.map((each, i) => `  - {name: ${each}, opening: {width: ${280 + 40 * i}, height: 110, depth: 420}}\n`).join('')}`;

/** Poppler wraps what runs from the right in marks of direction; lines without their blanks at the ends. */
const lines = (text: string): string[] =>
  text
    .replace(/[\u200E\u200F\u202A-\u202E\u2066-\u2069\f]/gu, '')
    .split('\n')
    .map((line) => line.trim());
const byPoppler = (file: string): string[] =>
  lines(execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }));
const byMupdf = (file: string): string[] =>
  lines(
    execFileSync('mutool', ['draw', '-F', 'txt', file], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }),
  );

const NAMES = ['أزرار', 'סרטים וחוטים', 'بطاقة لا', 'Нитки'];
/** Poppler takes a line that begins with a figure for one that runs from the left. */
const FIGURED = 'מגירה 3';

describe('names from right to left', () => {
  it('are read back in their own order by poppler and mupdf from bench sheets', () => {
    const where = folder();
    writeFileSync(join(where, 'plan.yaml'), plan('خزانة الخرداوات', ...NAMES, FIGURED));
    expect(halfpin(['draw', 'plan.yaml', '--as', 'pdf,svg', '--out', 'out'], where)).toMatchObject({
      status: 0,
      err: '',
    });
    const files = readdirSync(join(where, 'out'));
    const bench = join(where, 'out', files.find((name) => name.endsWith('-bench.pdf')) ?? '');
    const told = ['خزانة الخرداوات', ...NAMES];
    expect(byPoppler(bench)).toEqual(expect.arrayContaining(told));
    expect(byMupdf(bench)).toEqual(expect.arrayContaining([...told, FIGURED]));
    const labels = files
      .filter((name) => name.endsWith('.svg'))
      .map((name) => readFileSync(join(where, 'out', name), 'utf8'));
    for (const name of [...NAMES, FIGURED]) expect(labels.some((svg) => svg.includes(name))).toBe(true);
  });
});

describe('a font that the user chooses', () => {
  const HAN = plan('Chest', '布袋');

  it('is named by the plan, beside it, or by --font; and the name is read back', () => {
    const where = folder();
    mkdirSync(join(where, 'plans'));
    writeFileSync(join(where, 'plans', 'han.ttf'), fontWith('布袋'));
    writeFileSync(join(where, 'plans', 'own.yaml'), `font: han.ttf\n${HAN}`);
    writeFileSync(join(where, 'plan.yaml'), HAN);
    const own = ['draw', 'plans/own.yaml', '--out', 'out', '--sheets', 'bench'];
    const given = ['draw', 'plan.yaml', '--font', 'plans/han.ttf', '--out', 'other', '--sheets', 'bench'];
    for (const args of [own, given]) expect(halfpin(args, where)).toMatchObject({ status: 0, err: '' });
    const [one, two] = ['out', 'other'].map((name) => join(where, name, 'chest-bench.pdf'));
    expect(readFileSync(one ?? '').equals(readFileSync(two ?? ''))).toBe(true);
    expect(byPoppler(one ?? '')).toContain('布袋');
    expect(byMupdf(one ?? '')).toContain('布袋');
    const fonts = execFileSync('pdffonts', [one ?? ''], { encoding: 'utf8' });
    // Embedded, a subset of it, and readable.
    expect(fonts).toMatch(/DejaVuSerif +CID TrueType +Identity-H +yes yes yes/u);
  });

  it('is asked for where a letter is in none, by the place of the name; and nothing is written', () => {
    const where = folder();
    writeFileSync(join(where, 'plan.yaml'), HAN);
    expect(halfpin(['draw', 'plan.yaml', '--out', 'out'], where)).toEqual({
      status: 2,
      out: '',
      err: 'plan.yaml:4:6 drawers[0].name: the fonts of the sheets lack the letter "布" (Chinese characters, U+5E03) of "布袋"; give a font file that has it by --font, or by font: in the plan\n',
    });
    expect(readdirSync(where)).toEqual(['plan.yaml']);
    const corner = ['--width', '96', '--tail-board', '11', '--pin-board', '20', '--name', 'बटन'];
    expect(halfpin(['draw', ...corner, '--out', 'out'], where).err).toBe(
      '--name: the fonts of the sheets lack the letter "ब" (Devanagari, U+092C) of "बटन"; give a font file that has it by --font\n',
    );
    // Numbers need no font.
    expect(halfpin(['lay', 'plan.yaml'], where)).toMatchObject({ status: 0, err: '' });
  });

  it('is refused by its name where it is no font, is not there, or is too large', () => {
    const where = folder();
    writeFileSync(join(where, 'plan.yaml'), HAN);
    writeFileSync(join(where, 'huge.ttf'), '');
    truncateSync(join(where, 'huge.ttf'), 65 * 2 ** 20);
    const refused = (font: string) => {
      const { status, err } = halfpin(['draw', 'plan.yaml', '--font', font, '--out', 'out'], where);
      expect(status).toBe(2);
      return err;
    };
    expect(refused('plan.yaml')).toBe(
      '--font: plan.yaml: this is no font; a TrueType or OpenType file is needed (.ttf, .otf, .ttc)\n',
    );
    expect(refused('none.ttf')).toBe('--font: none.ttf: there is no such file to read as a font\n');
    expect(refused('.')).toBe('--font: .: this is a folder, not a font\n');
    expect(refused('huge.ttf')).toBe('--font: huge.ttf: this holds more than 64 MB, so it is not a font\n');
    writeFileSync(join(where, 'named.yaml'), `font: none.ttf\n${HAN}`);
    expect(halfpin(['draw', 'named.yaml'], where).err).toMatch(
      /^named\.yaml:1:1 font: \S*none\.ttf: there is no such file to read as a font\n$/u,
    );
    expect(readdirSync(where)).not.toContain('out');
  });
});
