import { describe, expect, it } from 'vitest';
import { nameNumbers, numbersByName } from '../../src/sheets/nameNumbers.ts';
import { shortNames } from '../../src/units/shortNames.ts';
import { AREAS } from './anyDrawer.ts';
import { sheetFaults, wordsOf } from './sheetFaults.ts';

const drawers = (count: number) =>
  Array.from({ length: count }, (_, i) => `Drawer ${i + 1} of the left-hand pedestal under the bench`);

describe('the numbers of names', () => {
  it('are explained where names need them', () => {
    const [one = '', two = ''] = drawers(2);
    const names = shortNames([[one], [two], [one, two], ['Cloth']]);
    expect(nameNumbers('Desk', names, AREAS.A4).map(wordsOf)).toEqual([
      `Desk: numbers in place of names no.\u00A01 ${one} no.\u00A02 ${two}`,
    ]);
    expect([...numbersByName(names)]).toEqual([
      [one, ['no. 1']],
      [two, ['no. 2']],
    ]);
    expect(nameNumbers('Desk', shortNames([['Cloth'], ['Thread']]), AREAS.A4)).toEqual([]);
  });

  it('are on as many pages as they need, nothing over anything else', () => {
    const all = drawers(90);
    const pages = nameNumbers('Desk', shortNames(all.map((name) => [name])), AREAS.A5);
    expect(pages.flatMap(sheetFaults)).toEqual([]);
    const words = pages.map(wordsOf).join(' ');
    for (const name of all) expect(words.split(name).length).toBe(2);
  });
});
