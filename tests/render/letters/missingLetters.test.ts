import { describe, expect, it } from 'vitest';
import { missingLetters } from '../../../src/render/letters/missingLetters.ts';
import { wordsOf } from '../../../src/render/letters/words.ts';
import { sentence } from '../../../src/units/complaint.ts';
import { say } from '../../../src/units/phrase.ts';
import { FONTS } from '../fonts.ts';
import { fontWith } from './fontWith.ts';

const complaints = (text: string, fonts = FONTS) =>
  missingLetters([{ at: ['name'], text }], fonts, say`try --font`).map((each) => sentence(each, 'mm'));

describe('missingLetters', () => {
  it.each(['Buttons', 'Пуговицы', 'Κουμπιά', 'أزرار', 'כפתורים', 'لֶ', 'نمی‌خواهم', 'Fächer ½″'])(
    'has all of %s',
    (text) => {
      expect(complaints(text)).toEqual([]);
    },
  );

  it.each([
    ['布袋', '布', 'Chinese characters, U+5E03'],
    ['ボタン', 'ボ', 'Japanese, Katakana, U+30DC'],
    ['단추', '단', 'Korean, Hangul, U+B2E8'],
    ['बटन', 'ब', 'Devanagari, U+092C'],
    ['ปุ่ม', 'ปุ่', 'Thai, U+0E1B'],
    ['Wood 🪵', '🪵', 'a sign, U+1FAB5'],
  ])('names the first letter of %s and its script', (text, letter, script) => {
    expect(complaints(text)).toEqual([
      `the fonts of the sheets lack the letter "${letter}" (${script}) of "${text}"; try --font`,
    ]);
  });

  it('asks another font for what the sheets lack', () => {
    const other = { ...FONTS, other: fontWith('布') };
    expect(complaints('布 Sack', other)).toEqual([]);
    expect(complaints('布袋', other)).toEqual([
      'the chosen font lacks the letter "袋" (Chinese characters, U+888B) of "布袋"; try --font',
    ]);
  });
});

describe('wordsOf', () => {
  it('finds texts and keys of a plan, with their places', () => {
    expect(wordsOf({ name: '布', drawers: [{ name: 'A', count: 2 }], none: null })).toEqual([
      { at: ['name'], text: 'name' },
      { at: ['name'], text: '布' },
      { at: ['drawers'], text: 'drawers' },
      { at: ['drawers', 0, 'name'], text: 'name' },
      { at: ['drawers', 0, 'name'], text: 'A' },
      { at: ['drawers', 0, 'count'], text: 'count' },
      { at: ['none'], text: 'none' },
    ]);
  });
});
