import { describe, expect, it } from 'vitest';
import { fitTable } from '../../src/cli/report/fitTable.ts';
import { CHEST, GUIDED_CHEST, halfpin, TRINKET_BOX } from './program.ts';

const widest = (lines: readonly string[]): number => Math.max(...lines.map((line) => [...line].length));

describe('what is printed', () => {
  it.each([
    ['lay', CHEST],
    ['lay', CHEST, '--units', 'in'],
    ['lay', TRINKET_BOX],
    ['lay', GUIDED_CHEST],
    ['lay', GUIDED_CHEST, '--units', 'in'],
    [
      'trial',
      GUIDED_CHEST,
      '--joint',
      'Cloth front',
      '--loose',
      '0.2mm',
      '--short',
      '0.1mm',
      '--units',
      'in',
    ],
    ['lay', '--width', '3000', '--tail-board', '19', '--pin-board', '19', '--tails', '2'],
    [
      'lay',
      '--width',
      '118in',
      '--tail-board',
      '19mm',
      '--pin-board',
      '19mm',
      '--tails',
      '3',
      '--units',
      'in',
    ],
    ['parts', CHEST],
    ['parts', CHEST, '--units', 'in'],
    ['compare', CHEST, '--units', 'in'],
    ['--help'],
  ])('is nowhere wider than 80 columns: %s %s %s', (...args) => {
    const { status, out } = halfpin(args);
    expect(status).toBe(0);
    expect(widest(out.split('\n'))).toBeLessThanOrEqual(80);
  });
});

describe('fitTable', () => {
  const heading = ['drawer', 'length', 'width'];
  const numeric = [false, true, true];

  it('is one table where that fits', () => {
    expect(fitTable(heading, [['Buttons', '279', '75']], numeric, 1)).toEqual([
      'drawer   length  width',
      'Buttons     279     75',
    ]);
  });

  it('continues in a further table, the first columns repeated, where it does not', () => {
    const [long, short] = ['9'.repeat(60), '9'.repeat(30)];
    expect(fitTable(heading, [['Buttons', long, short]], numeric, 1)).toEqual([
      `drawer   ${'length'.padStart(60)}`,
      `Buttons  ${long}`,
      '',
      `drawer   ${'width'.padStart(30)}`,
      `Buttons  ${short}`,
    ]);
  });

  it('gives a column that fits nowhere a table of its own', () => {
    const long = 'x'.repeat(100);
    expect(fitTable(['a', 'b', 'c'], [['1', long, '2']], [false, false, false], 1)).toEqual([
      'a  b',
      `1  ${long}`,
      '',
      'a  c',
      '1  2',
    ]);
  });
});
