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
