import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkFont, LARGEST_FONT } from '../../../src/render/letters/checkFont.ts';
import { speak } from '../../../src/units/phrase.ts';
import { fontWith } from './fontWith.ts';

const says = (bytes: Uint8Array): string => {
  const wrong = checkFont(bytes);
  return wrong === undefined ? '' : speak(wrong, 'mm');
};
const SERIF = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSerif.ttf');

/** Whether a byte is in one of the font's tables, but for the sum of the whole file (OpenType, `head`). */
const isInTable = (at: number): boolean =>
  Array.from({ length: SERIF.readUInt16BE(4) }, (_, i) => 12 + 16 * i).some((entry) => {
    const [from, length] = [SERIF.readUInt32BE(entry + 8), SERIF.readUInt32BE(entry + 12)];
    const isHead = SERIF.toString('latin1', entry, entry + 4) === 'head';
    return at >= from && at < from + length && !(isHead && at >= from + 8 && at < from + 12);
  });

describe('checkFont', () => {
  it('takes TrueType files', () => {
    expect(says(SERIF)).toBe('');
    expect(says(fontWith('布'))).toBe('');
  });

  it.each([
    ['nothing', '', /^this is no font/u],
    ['a plan', 'name: Chest\n', /^this is no font/u],
    ['a web font', 'wOF2 and more', /^this is a font packed for web pages/u],
    ['a signature alone', '\0\u0001\0\0', /^this font is damaged/u],
  ])('refuses %s', (_, text, words) => {
    expect(says(Buffer.from(text, 'latin1'))).toMatch(words);
  });

  it('refuses what is too large for a font', () => {
    expect(says(new Uint8Array(LARGEST_FONT + 1))).toBe('this holds more than 64 MB, so it is not a font');
  });

  it('refuses a font whose tables of placing begin elsewhere than they do: read as those, they would fill all memory', () => {
    const bytes = Buffer.from(SERIF);
    // The entry of GPOS is the third of the directory; its offset its third word (OpenType, "Table Directory").
    expect(bytes.toString('latin1', 44, 48)).toBe('GPOS');
    bytes[54] = 0;
    expect(says(bytes)).toMatch(/^this font is damaged/u);
  });

  it('refuses a font of which one byte in any table is another', () => {
    fc.assert(
      fc.property(fc.nat(SERIF.length - 1), fc.integer({ min: 1, max: 255 }), (at, change) => {
        const bytes = Buffer.from(SERIF);
        bytes[at] = (bytes[at] ?? 0) ^ change;
        // Before the first table's entry lies what only helps to search; between tables, what fills them up to words.
        if (at >= 12 && isInTable(at)) expect(says(bytes)).not.toBe('');
      }),
      { numRuns: 40 },
    );
  });

  it('never throws, wherever a font is cut or changed', () => {
    const small = SERIF.subarray(0, 400);
    fc.assert(
      fc.property(fc.nat(399), fc.nat(255), (at, value) => {
        const bytes = Buffer.from(SERIF);
        bytes[at] = value;
        says(bytes);
        says(small.subarray(0, at));
      }),
      { numRuns: 40 },
    );
  });
});
