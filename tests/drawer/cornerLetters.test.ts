import { expect, it } from 'vitest';
import { CORNERS, type CornerLetter, cornerLetter } from '../../src/drawer/cornerLetters.ts';

it('letters the corners clockwise from the front left', () => {
  const letters = Object.keys(CORNERS) as CornerLetter[];
  expect(letters).toEqual(['A', 'B', 'C', 'D']);
  expect(cornerLetter('front', 'left')).toBe('A');
  expect(cornerLetter('back', 'right')).toBe('C');
  for (const letter of letters) {
    const { end, hand } = CORNERS[letter];
    expect(cornerLetter(end, hand)).toBe(letter);
  }
});
