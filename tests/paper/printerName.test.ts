import { describe, expect, it } from 'vitest';
import { isPrinterName, readPrinterName } from '../../src/paper/printerName.ts';
import { sentence } from '../../src/units/complaint.ts';

const told = (typed: string): string => {
  const read = readPrinterName(typed);
  return read.ok ? read.value : read.complaints.map((each) => sentence(each, 'mm')).join();
};

describe('a printer’s name', () => {
  it.each(['office', 'Kopierladen ü 2', '2.nd-floor'])('may be %s', (name) => {
    expect(told(name)).toBe(name);
  });

  it.each(['', ' office', 'a/b', '-x', 'x'.repeat(41)])('is something to type again, unlike %j', (name) => {
    expect(told(name)).toBe(
      'a printer is named with letters, digits, spaces, dots and hyphens, 40 at the most; try office',
    );
  });

  it.each(['none', 'None', 'no ne'])('is not %j, which stands for printing without a correction', (name) => {
    expect(told(name)).toBe(
      `"${name}" stands for printing without a correction, so no printer can be called that; try office`,
    );
    // One that was saved so once is read still.
    expect(isPrinterName(name)).toBe(true);
  });
});
