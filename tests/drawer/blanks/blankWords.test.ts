import { expect, it } from 'vitest';
import { blankLetters } from '../../../src/drawer/blanks/blankWords.ts';

it('every blank has letters of its own, none of them the name of a corner or like a number', () => {
  const all = Array.from({ length: 10_000 }, (_, i) => blankLetters(i));
  expect(new Set(all).size).toBe(10_000);
  expect(all.slice(0, 21).join(' ')).toBe('E F G H J K L M N P Q R S T U V W X Y Z EE');
  expect(all.filter((letters) => /[A-DIO]/u.test(letters))).toEqual([]);
});
