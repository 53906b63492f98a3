import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadPrinters, savePrinter } from '../../src/files/printerStore.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'halfpin-printers-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const OFFICE = { error: { x: 0.996, y: 1.001, skew: 0.002 }, paper: 'A4', measured: '2026-05-31' };
const load = (value: unknown) => {
  writeFileSync(join(folder, 'printers.json'), JSON.stringify(value));
  return loadPrinters(folder);
};

describe('the printers that have been measured', () => {
  it('are none where nothing has been saved, and are read back as they were saved', async () => {
    expect(await loadPrinters(folder)).toEqual({});
    await savePrinter(folder, 'office', OFFICE);
    await savePrinter(folder, 'Kopierladen ü 2', { ...OFFICE, paper: '610xroll' });
    expect(await loadPrinters(folder)).toEqual({
      office: OFFICE,
      'Kopierladen ü 2': { ...OFFICE, paper: '610xroll' },
    });
  });

  it.each<[string, unknown]>([
    ['a list', [OFFICE]],
    ['no printer', { office: null }],
    ['no error', { office: { ...OFFICE, error: undefined } }],
    ['an error as text', { office: { ...OFFICE, error: { ...OFFICE.error, x: '1' } } }],
    ['an error of no printer', { office: { ...OFFICE, error: { ...OFFICE.error, y: 1e300 } } }],
    ['a lean of no printer', { office: { ...OFFICE, error: { ...OFFICE.error, skew: -1 } } }],
    ['no paper', { office: { ...OFFICE, paper: 'papyrus' } }],
    ['no day', { office: { ...OFFICE, measured: 'yesterday' } }],
    ['a day of no month', { office: { ...OFFICE, measured: '2026-99-31' } }],
    ['a day that its month has not', { office: { ...OFFICE, measured: '2026-02-30' } }],
    ['a leap day of no leap year', { office: { ...OFFICE, measured: '2100-02-29' } }],
    ['a name that cannot be typed', { 'a\u001b[2J': OFFICE }],
    ['a very long name', { ['x'.repeat(41)]: OFFICE }],
  ])('are damaged where there is %s, and are left as they are', async (_, value) => {
    const before = JSON.stringify(value);
    await expect(load(value)).rejects.toMatchObject({
      status: 1,
      lines: [expect.stringMatching(/this file of printers is damaged, and is unchanged/u)],
    });
    await expect(savePrinter(folder, 'office', OFFICE)).rejects.toMatchObject({ status: 1 });
    expect(readFileSync(join(folder, 'printers.json'), 'utf8')).toBe(before);
  });
});
