import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csv } from '../../src/render/csv.ts';

const python = spawnSync('python3', ['-c', 'import csv']).status === 0;

/** Rows as the csv module of Python's standard library reads them. */
const readBack = (text: string): string[][] => {
  const read = spawnSync(
    'python3',
    [
      '-c',
      'import csv, io, json, sys; print(json.dumps(list(csv.reader(io.TextIOWrapper(sys.stdin.buffer, "utf-8", newline="")))))',
    ],
    { input: text, encoding: 'utf8' },
  );
  return JSON.parse(read.stdout);
};

describe.skipIf(!python)('comma-separated values, read by another reader', () => {
  it('have an apostrophe before whatever a spreadsheet would run', () => {
    const run = [
      '=1+1',
      '+1+1',
      '-2+3+cmd|" /C calc"!A0',
      '-1e5x',
      '+44 20',
      '@SUM(1)',
      '\t=1',
      '\r=1',
      '\n=1',
      '＝1+1',
      '＋1',
      '－1',
      '＠SUM(1)',
      '-',
      '+',
      '-3/4',
      '=',
    ];
    expect(readBack(csv(run.map((text) => [text])))).toEqual(run.map((text) => [`'${text}`]));
  });

  it('have numbers as numbers', () => {
    const numbers = ['-1', '+1', '-0.5', '-.008', '+12.25', '0', '18.5', '.797', '27/32', '5 11/16'];
    expect(readBack(csv([numbers]))).toEqual([numbers]);
  });

  it('have any field as it was, or after one apostrophe', () => {
    const begins = fc.constantFrom('', '=', '+', '-', '@', '\t', '\r', '\n', '＝', '"', ',', "'", '-1');
    const fieldOf = fc.tuple(begins, fc.string({ unit: 'grapheme' })).map((parts) => parts.join(''));
    const rows = fc.sample(fc.array(fieldOf, { minLength: 2, maxLength: 5 }), { numRuns: 300, seed: 1 });
    const back = readBack(csv(rows));
    expect(back).toHaveLength(rows.length);
    back.forEach((row, i) => {
      expect(row.map((text, j) => (text === `'${rows[i]?.[j]}` ? text.slice(1) : text))).toEqual(rows[i]);
      for (const text of row)
        if (/^[=+\-@＝＋－＠\t\r\n]/u.test(text)) expect(Number.isFinite(Number(text))).toBe(true);
    });
  });
});
