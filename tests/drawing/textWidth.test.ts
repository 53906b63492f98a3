import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { shownText } from '../../src/drawing/shownText.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../../src/drawing/textWidth.ts';

const open = (name: string): Font =>
  create(readFileSync(new URL(`../../node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`, import.meta.url)));
const FONTS = { regular: open('DejaVuSansCondensed'), bold: open('DejaVuSansCondensed-Bold') };
const WEIGHTS = ['regular', 'bold'] as const;

/** `adv` or `adv*count` for characters in a row, `.n` to leave n out; all numbers to base 36. */
const pack = (font: Font): string => {
  const codePoints = [...font.characterSet].sort((a, b) => a - b);
  const runs: string[] = [];
  let next = 0;
  for (let i = 0; i < codePoints.length; ) {
    const start = codePoints[i] ?? 0;
    const advance = font.glyphForCodePoint(start).advanceWidth;
    let count = 1;
    while (
      codePoints[i + count] === start + count &&
      font.glyphForCodePoint(start + count).advanceWidth === advance
    )
      count++;
    if (start > next) runs.push(`.${(start - next).toString(36)}`);
    runs.push(count === 1 ? advance.toString(36) : `${advance.toString(36)}*${count.toString(36)}`);
    next = start + count;
    i += count;
  }
  return runs.join(' ');
};

const table = (name: string, font: Font): string => `export const ${name} =\n  '${pack(font)}';\n`;

describe('textWidth', () => {
  // Run `npm run try -- tests/drawing/textWidth.test.ts -u` to write the table again for another font.
  it('keeps the table of advances that the fonts hold', async () => {
    const source = `// Advances of DejaVu Sans Condensed 2.37 and its Bold, written by textWidth.test.ts and read by textWidth.ts.\n${table('REGULAR', FONTS.regular)}${table('BOLD', FONTS.bold)}`;
    await expect(source).toMatchFileSnapshot('../../src/drawing/advances.ts');
  });

  it.each(WEIGHTS)('gives every character of the %s font the advance that fontkit reads', (weight) => {
    const font = FONTS[weight];
    const wrong = font.characterSet.filter((codePoint) => {
      const character = String.fromCodePoint(codePoint);
      if (shownText(character) !== character) return false;
      return textWidth(character, 2048, weight) !== font.glyphForCodePoint(codePoint).advanceWidth;
    });
    expect(font.characterSet.length).toBeGreaterThan(5000);
    expect(wrong).toEqual([]);
  });

  it.each(WEIGHTS)(
    'gives characters that the %s font lacks the width of the box drawn for them',
    (weight) => {
      const font = FONTS[weight];
      for (const character of ['漢', '\u{1FAB5}', '\u{10FFFF}']) {
        expect(font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)).toBe(false);
        expect(textWidth(character, 2048, weight)).toBe(font.glyphForCodePoint(0x10ffff).advanceWidth);
      }
    },
  );

  it('counts tabs and line ends as spaces, control characters and lone surrogates as U+FFFD', () => {
    expect(textWidth('a\tb\nc\r', 10, 'regular')).toBe(textWidth('a b c ', 10, 'regular'));
    expect(textWidth('a\u0000b\ud800\u009f', 10, 'bold')).toBe(textWidth('a\ufffdb\ufffd\ufffd', 10, 'bold'));
  });

  it('counts a letter and its accent as the one character that they make', () => {
    expect(textWidth('e\u0301', 3, 'regular')).toBe(textWidth('é', 3, 'regular'));
  });

  it('grows in proportion to the size and adds up over the text, without kerning', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-ascii' }), fc.constantFrom(...WEIGHTS), (text, weight) => {
        const each = [...text].reduce((sum, character) => sum + textWidth(character, 2048, weight), 0);
        expect(textWidth(text, 2048, weight)).toBe(each);
        expect(textWidth(text, 3, weight)).toBeCloseTo((each / 2048) * 3, 9);
      }),
    );
    expect(textWidth('AVAT', 2, 'regular')).toBe(textWidth('VAAT', 2, 'regular'));
  });

  it.each(WEIGHTS)('knows the heights of the %s font', (weight) => {
    const font = FONTS[weight];
    const capital = font.glyphForCodePoint(0x48).path.commands.flatMap(({ args }) => args[1] ?? []);
    expect(CAP_HEIGHT).toBe(Math.max(...capital) / font.unitsPerEm);
    expect(ASCENT).toBe(font.ascent / font.unitsPerEm);
    expect(DESCENT).toBe(-font.descent / font.unitsPerEm);
  });
});
