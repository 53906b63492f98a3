import { afterEach, describe, expect, it } from 'vitest';
import { measureShapedBy, textWidth } from '../../../src/drawing/textWidth.ts';
import type { Fonts } from '../../../src/render/fonts.ts';
import { measureWith, type SetLine, setText } from '../../../src/render/letters/setText.ts';
import { FONTS } from '../fonts.ts';
import { fontWith } from './fontWith.ts';

afterEach(() => measureShapedBy(undefined));

const read = ({ glyphs }: SetLine): string =>
  glyphs.map(({ codePoints }) => String.fromCodePoint(...codePoints)).join('');
/** The characters as they stand from left to right. */
const seen = ({ glyphs }: SetLine): string =>
  [...glyphs]
    .sort((a, b) => a.at[0] - b.at[0])
    .map(({ codePoints }) => String.fromCodePoint(...codePoints))
    .join('');
const set = (text: string, fonts: Fonts = FONTS): SetLine => setText(text, 'regular', fonts);

describe('setText', () => {
  it('sets Hebrew from right to left, and keeps the order in which it is read', () => {
    const line = set('סרט');
    expect(read(line)).toBe('סרט');
    expect(seen(line)).toBe('טרס');
  });

  it('joins the letters of Arabic: each has the form of its place, and lam and alef are one glyph', () => {
    const forms = (text: string) => set(text).glyphs.map(({ glyph }) => glyph.id);
    const [alone] = forms('ب');
    const three = forms('ببب');
    expect(new Set([alone, ...three]).size).toBe(4);
    const ligature = set('لا').glyphs;
    expect(ligature.map(({ codePoints }) => codePoints)).toEqual([[0x644, 0x627]]);
  });

  it('turns brackets round with the text, and leaves figures from left to right', () => {
    const line = set('מגירה (12)');
    expect(read(line)).toBe('מגירה (12)');
    // The bracket that is read as opening stands at the right of the figures.
    expect(seen(line)).toBe(')12( הריגמ');
  });

  it('orders by UAX 9 as a line of English', () => {
    expect(seen(set('front סרט left'))).toBe('front טרס left');
    expect(seen(set('סרט, 12'))).toBe('12 ,טרס');
  });

  it('orders a name by itself, so that a figure after it stays after it', () => {
    const named = { ...FONTS, names: ['מגירה 3'] };
    expect(seen(set('מגירה 3 280 × 76', named))).toBe('3 הריגמ 280 × 76');
    expect(read(set('מגירה 3 280 × 76', named))).toBe('מגירה 3 280 × 76');
  });

  it('stands points on their letters, without a width of their own', () => {
    const [base, point] = set('לֶ').glyphs;
    expect(point?.advance).toBe(0);
    const from = base?.at[0] ?? 0;
    expect(point?.at[0]).toBeGreaterThan(from - 0.3);
    expect(point?.at[0]).toBeLessThan(from + (base?.advance ?? 0));
    expect(set('לֶ').width).toBeCloseTo(set('ל').width, 9);
  });

  it('draws what the fonts lack in the other font, and all else in theirs', () => {
    const fonts = { ...FONTS, other: fontWith('布袋') };
    const line = set('Sack 布袋', fonts);
    expect(read(line)).toBe('Sack 布袋');
    const [first, ...rest] = line.glyphs.map(({ font }) => font);
    expect(rest.filter((font) => font !== first)).toHaveLength(2);
    expect(line.glyphs.at(-1)?.glyph.path.commands.length).toBeGreaterThan(0);
  });

  it('measures for textWidth as it draws', () => {
    const fonts = { ...FONTS, other: fontWith('布') };
    measureWith(fonts);
    for (const text of ['مجموعة أزرار', 'סרט', 'Sack 布', 'ببب'])
      for (const weight of ['regular', 'bold'] as const) {
        const { width, glyphs } = setText(text, weight, fonts);
        expect(textWidth(text, 5, weight)).toBeCloseTo(5 * width, 9);
        expect(width).toBeCloseTo(
          glyphs.reduce((sum, { advance }) => sum + advance, 0),
          9,
        );
      }
    // Forms that join are narrower than those that stand alone.
    expect(textWidth('ببب', 1, 'regular')).toBeLessThan(3 * textWidth('ب', 1, 'regular'));
  });
});
